package webp

import (
	"bytes"
	"image"
	"image/color"
	"math"
	"slices"
	"sync"
	"testing"
)

// A field of soft colours, seen through at one end.
func field(w, h int) *image.NRGBA {
	m := image.NewNRGBA(image.Rect(0, 0, w, h))
	for i := range w * h {
		x, y := float64(i%w)/float64(w), float64(i/w)/float64(h)
		m.SetNRGBA(i%w, i/w, color.NRGBA{
			uint8(255 * x), uint8(255 * y), uint8(127 + 127*math.Sin(6*x*y)), uint8(255 * min(1, 2*y)),
		})
	}
	return m
}

// TestEncode reads the outcome with a reader that was written by others.
func TestEncode(t *testing.T) {
	for _, size := range []image.Point{{1, 1}, {160, 300}, {320, 241}} {
		m := field(size.X, size.Y)
		data, err := Encode(m, 90, 4)
		if err != nil {
			t.Fatal(err)
		}
		got, err := Decode(data)
		if err != nil {
			t.Fatal(err)
		}
		if got.Bounds() != m.Rect {
			t.Fatalf("%v became %v", m.Rect, got.Bounds())
		}
		var off float64
		for y := range size.Y {
			for x := range size.X {
				a, b := m.NRGBAAt(x, y), color.NRGBAModel.Convert(got.At(x, y)).(color.NRGBA)
				if d := int(a.A) - int(b.A); d < -3 || d > 3 {
					t.Fatalf("%v: alpha at %d,%d is %d, was %d", size, x, y, b.A, a.A)
				}
				if a.A == 255 {
					off += math.Abs(float64(a.R)-float64(b.R)) + math.Abs(float64(a.G)-float64(b.G)) + math.Abs(float64(a.B)-float64(b.B))
				}
			}
		}
		if off /= float64(3 * size.X * size.Y); off > 2 {
			t.Errorf("%v: colours are off by %.1f", size, off)
		}
	}
}

// A part of a picture is written as a picture of its own would be.
func TestEncodePart(t *testing.T) {
	part := field(40, 30).SubImage(image.Rect(5, 6, 25, 16)).(*image.NRGBA)
	alone := image.NewNRGBA(image.Rect(0, 0, 20, 10))
	for y := range 10 {
		copy(alone.Pix[y*alone.Stride:][:80], part.Pix[y*part.Stride:])
	}
	got, err1 := Encode(part, 75, 2)
	want, err2 := Encode(alone, 75, 2)
	if err1 != nil || err2 != nil || !bytes.Equal(got, want) {
		t.Errorf("%d bytes, %v; want %d, %v", len(got), err1, len(want), err2)
	}
}

func TestEncodeRepeats(t *testing.T) {
	m := field(64, 48)
	all := make([][]byte, 8)
	var group sync.WaitGroup
	for i := range all {
		group.Go(func() { all[i], _ = Encode(m, 72, 2) })
	}
	group.Wait()
	if len(all[0]) == 0 || len(slices.CompactFunc(all, bytes.Equal)) != 1 {
		t.Error("the same picture gave other bytes")
	}
}

func TestEncodeRefuses(t *testing.T) {
	for _, size := range []image.Point{{0, 0}, {MaxSide + 1, 1}, {1, MaxSide + 1}} {
		if _, err := Encode(image.NewNRGBA(image.Rectangle{Max: size}), 72, 2); err == nil {
			t.Errorf("%v was written", size)
		}
	}
}

// What a build keeps is found again by the version: another program, another version.
func TestVersion(t *testing.T) {
	if want := "bbcf68343d79d80b"; Version != want { // of lib/webp.wasm.gz in github.com/gen2brain/webp v0.5.5
		t.Errorf("Version = %s, want %s", Version, want)
	}
}

func BenchmarkEncode(b *testing.B) {
	m := field(960, 720)
	for b.Loop() {
		if _, err := Encode(m, 72, 2); err != nil {
			b.Fatal(err)
		}
	}
}

// Black is black and white is white when they come back.
func TestDecodeKeepsTheWholeRange(t *testing.T) {
	for _, c := range []color.NRGBA{{0, 0, 0, 255}, {255, 255, 255, 255}, {255, 0, 0, 255}, {10, 200, 90, 255}, {128, 128, 128, 255}} {
		m := image.NewNRGBA(image.Rect(0, 0, 32, 32))
		for i := range 32 * 32 {
			m.SetNRGBA(i%32, i/32, c)
		}
		data, err := Encode(m, 95, 4)
		if err != nil {
			t.Fatal(err)
		}
		back, err := Decode(data)
		if err != nil {
			t.Fatal(err)
		}
		got := color.NRGBAModel.Convert(back.At(9, 9)).(color.NRGBA)
		for _, d := range []int{int(got.R) - int(c.R), int(got.G) - int(c.G), int(got.B) - int(c.B)} {
			if d < -4 || d > 4 {
				t.Errorf("%v came back as %v", c, got)
				break
			}
		}
	}
}

func TestDecodeRefuses(t *testing.T) {
	data, err := Encode(field(64, 64), 72, 2)
	if err != nil {
		t.Fatal(err)
	}
	for _, bad := range [][]byte{nil, []byte("RIFF"), data[:len(data)/2]} {
		if _, err := Decode(bad); err == nil {
			t.Errorf("%d bytes of %d were read", len(bad), len(data))
		}
	}
}
