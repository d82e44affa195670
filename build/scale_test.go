package build

import (
	"bytes"
	"image"
	"image/color"
	"image/jpeg"
	"io/fs"
	"math/rand/v2"
	"testing"

	"golang.org/x/image/draw"

	"stillroom/content"
)

// photo is a picture of the example, ready to be scaled.
func photo(t testing.TB) *image.RGBA {
	t.Helper()
	data, err := fs.ReadFile(content.Starter, "content/pictures/blackberry-jam.jpg")
	if err != nil {
		t.Fatal(err)
	}
	m, err := jpeg.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	dst := image.NewRGBA(m.Bounds())
	draw.Draw(dst, dst.Rect, m, image.Point{}, draw.Src)
	return dst
}

// TestScaleAgrees compares with x/image/draw, which works in fractions.
func TestScaleAgrees(t *testing.T) {
	glass := image.NewRGBA(image.Rect(0, 0, 97, 61))
	random := rand.New(rand.NewPCG(1, 2))
	for i := range glass.Rect.Dx() * glass.Rect.Dy() {
		a := random.IntN(256)
		copy(glass.Pix[4*i:], []uint8{uint8(random.IntN(a + 1)), uint8(random.IntN(a + 1)), uint8(random.IntN(a + 1)), uint8(a)})
	}
	tests := []struct {
		src  *image.RGBA
		part image.Rectangle
		w, h int
	}{
		{photo(t), image.Rect(0, 0, 1600, 1200), 640, 480},
		{photo(t), image.Rect(200, 0, 1400, 1200), 1000, 1000},
		{photo(t), image.Rect(0, 0, 1600, 1200), 1, 1},
		{photo(t), image.Rect(0, 0, 1600, 1200), 1600, 3},
		{glass, glass.Rect, 40, 40},
		{glass, image.Rect(3, 5, 90, 61), 86, 55},
		{glass, image.Rect(96, 0, 97, 61), 1, 30},
	}
	for _, test := range tests {
		got := scale(test.src, test.part, test.w, test.h)
		want := image.NewRGBA(image.Rect(0, 0, test.w, test.h))
		draw.CatmullRom.Scale(want, want.Rect, test.src, test.part, draw.Src, nil)
		if d := farthest(got, want); d > 1 {
			t.Errorf("%v to %d by %d: differs by %d", test.part, test.w, test.h, d)
		}
	}
}

// farthest is the largest difference between two pictures in any colour.
func farthest(a, b *image.RGBA) int {
	most := 0
	for i := range a.Pix {
		d := int(a.Pix[i]) - int(b.Pix[i])
		most = max(most, d, -d)
	}
	return most
}

func TestScaleToTheSameSize(t *testing.T) {
	src := photo(t)
	part := image.Rect(400, 300, 700, 500)
	got := scale(src, part, 300, 200)
	for _, p := range []image.Point{{0, 0}, {299, 199}, {150, 7}} {
		if got.RGBAAt(p.X, p.Y) != src.RGBAAt(p.X+400, p.Y+300) {
			t.Errorf("%v is %v, was %v", p, got.RGBAAt(p.X, p.Y), src.RGBAAt(p.X+400, p.Y+300))
		}
	}
}

// A plain picture stays plain to its edges, however it is scaled.
func TestScaleKeepsPlainColours(t *testing.T) {
	src := image.NewRGBA(image.Rect(0, 0, 53, 47))
	c := color.RGBA{R: 200, G: 3, B: 77, A: 255}
	draw.Draw(src, src.Rect, image.NewUniform(c), image.Point{}, draw.Src)
	for w := 1; w <= 53; w++ {
		got := scale(src, src.Rect, w, max(1, w-6))
		for i := range w * got.Rect.Dy() {
			if p := got.RGBAAt(i%w, i/w); p != c {
				t.Fatalf("at width %d pixel %d is %v", w, i, p)
			}
		}
	}
}

func BenchmarkScale(b *testing.B) {
	src := photo(b)
	b.Run("ours", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			scale(src, src.Rect, 960, 720)
		}
	})
	b.Run("x/image", func(b *testing.B) {
		b.ReportAllocs()
		dst := image.NewRGBA(image.Rect(0, 0, 960, 720))
		for b.Loop() {
			draw.CatmullRom.Scale(dst, dst.Rect, src, src.Rect, draw.Src, nil)
		}
	})
}
