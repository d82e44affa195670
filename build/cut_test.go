package build

import (
	"bytes"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"slices"
	"testing"
)

func TestWidths(t *testing.T) {
	tests := []struct {
		own  int
		want []int
	}{
		{1, []int{1}},
		{399, []int{399}},
		{400, []int{400}},
		{499, []int{400}}, // a hundred pixels more are not worth a file
		{500, []int{400, 500}},
		{720, []int{400, 680}},
		{1600, []int{400, 680, 1080, 1440}},
		{1800, []int{400, 680, 1080, 1440, 1800}},
		{2000, []int{400, 680, 1080, 1440, 2000}},
		{8000, []int{400, 680, 1080, 1440, 2000}},
	}
	for _, test := range tests {
		if got := widths(test.own); !slices.Equal(got, test.want) {
			t.Errorf("widths(%d) = %v, want %v", test.own, got, test.want)
		}
	}
}

// The middle is kept, and nothing is made larger: SD-02 and FI-08 of the table
// of standards.
func TestMiddle(t *testing.T) {
	tests := []struct {
		size, print image.Point
		part        image.Rectangle
		w, h        int
	}{
		{image.Pt(1600, 1200), image.Pt(1200, 1200), image.Rect(200, 0, 1400, 1200), 1200, 1200},
		{image.Pt(1600, 1200), image.Pt(1200, 900), image.Rect(0, 0, 1600, 1200), 1200, 900},
		{image.Pt(1600, 1200), image.Pt(1200, 675), image.Rect(0, 150, 1600, 1050), 1200, 675},
		{image.Pt(1600, 1200), image.Pt(1200, 630), image.Rect(0, 180, 1600, 1020), 1200, 630},
		{image.Pt(600, 1000), image.Pt(1200, 1200), image.Rect(0, 200, 600, 800), 600, 600},
		{image.Pt(3, 1000), image.Pt(1200, 630), image.Rect(0, 499, 3, 500), 3, 1},
		{image.Pt(5000, 4000), image.Pt(3000, 3000), image.Rect(500, 0, 4500, 4000), 3000, 3000},
	}
	for _, test := range tests {
		c := middle(aCrop, image.Rectangle{Max: test.size}, test.print)
		if c.part != test.part || c.w != test.w || c.h != test.h {
			t.Errorf("%v in the shape of %v: %v to %d by %d, want %v to %d by %d", test.size, test.print, c.part, c.w, c.h, test.part, test.w, test.h)
		}
	}
}

func TestCuts(t *testing.T) {
	count := func(o order, size image.Point, opaque bool) map[use]int {
		n := make(map[use]int)
		for _, c := range o.cuts(size, opaque) {
			n[c.use] += len(c.formats)
			if c.w > c.part.Dx() || c.h > c.part.Dy() {
				t.Errorf("%v is made larger: %+v", size, c)
			}
		}
		return n
	}
	size := image.Pt(1600, 1200)
	if n := count(forPages, size, true); n[aSize] != 8 || len(n) != 1 {
		t.Errorf("for pages: %v", n)
	}
	if n := count(forPages|forSearch, size, true); n[aSize] != 8 || n[aCrop] != 3 || n[aShare] != 1 || n[aCover] != 0 {
		t.Errorf("for pages and search: %v", n)
	}
	if n := count(forFeed, size, true); n[aCover] != 1 || len(n) != 1 {
		t.Errorf("for the feed: %v", n)
	}
	// RFC 9649, 2.6: a WebP file has at most 16,383 pixels on a side.
	if n := count(forPages, image.Pt(400, 20_000), true); n[aSize] != 1 {
		t.Errorf("a strip: %v", n)
	}
}

// What can be seen through stays so where the format can hold it, and stands on
// white where it cannot.
func TestEncodeGlass(t *testing.T) {
	m := image.NewRGBA(image.Rect(0, 0, 16, 16))
	for i := range 16 * 8 {
		m.SetRGBA(i%16, i/16, color.RGBA{64, 0, 0, 128})
	}
	data, err := asPNG.encode(m)
	if err != nil {
		t.Fatal(err)
	}
	if p, err := png.Decode(bytes.NewReader(data)); err != nil || p.At(3, 3) != (color.NRGBA{127, 0, 0, 128}) {
		t.Errorf("in PNG: %v, %v", p.At(3, 3), err)
	}
	if data, err = asJPEG.encode(m); err != nil {
		t.Fatal(err)
	}
	j, err := jpeg.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	for y, want := range map[int]color.RGBA{3: {191, 127, 127, 255}, 14: {255, 255, 255, 255}} {
		got := color.RGBAModel.Convert(j.At(3, y)).(color.RGBA)
		if d := int(got.R) - int(want.R); d < -4 || d > 4 || got.G < want.G-4 {
			t.Errorf("in JPEG at %d: %v, want %v", y, got, want)
		}
	}
}
