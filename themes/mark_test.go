package themes

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"testing"
	"testing/fstest"
)

func decoded(t *testing.T, theme *Theme, name string) image.Image {
	t.Helper()
	img, err := png.Decode(bytes.NewReader(file(theme, name)))
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return img
}

// A square of red in the middle of blue: what lies where can be counted.
const square = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><path fill="#00f" d="M0 0h64v64H0z"/><path fill="#f00" d="M8 8h48v48H8z"/></svg>`

func TestMarkIsDrawn(t *testing.T) {
	red, blue := color.RGBA{255, 0, 0, 255}, color.RGBA{0, 0, 255, 255}
	theme := load(t, fstest.MapFS{"files/icon.svg": {Data: []byte(square)}})
	for _, tt := range []struct {
		name       string
		side, x, y int
		want       color.Color
	}{
		{"icon-192.png", 192, 23, 100, blue},
		{"icon-192.png", 192, 24, 100, red},
		{"icon-192.png", 192, 167, 167, red},
		{"icon-192.png", 192, 168, 167, blue},
		{"icon-512.png", 512, 63, 64, blue},
		{"icon-512.png", 512, 64, 64, red},
		// The corners of the square lie on the circle of 0.4 × 512 px = 204.8 px: 144.8 px from the middle each way.
		{"icon-maskable.png", 512, 110, 256, blue},
		{"icon-maskable.png", 512, 113, 256, red},
	} {
		img := decoded(t, theme, tt.name)
		if img.Bounds() != image.Rect(0, 0, tt.side, tt.side) {
			t.Errorf("%s: %v", tt.name, img.Bounds())
		}
		if got := color.RGBAModel.Convert(img.At(tt.x, tt.y)); got != tt.want {
			t.Errorf("%s at %d, %d: %v, want %v", tt.name, tt.x, tt.y, got, tt.want)
		}
	}
}

// TestMaskableMark holds the built-in mark to the circle of which a mask may
// cut nothing: W3C Web Application Manifest, 4.2.1, the safe zone.
func TestMaskableMark(t *testing.T) {
	img := decoded(t, load(t, nil), "icon-maskable.png")
	ground, inside := img.At(0, 0), 0
	for y := range 512 {
		for x := range 512 {
			if img.At(x, y) == ground {
				continue
			}
			if dx, dy := 2*x-511, 2*y-511; dx*dx+dy*dy > 411*411 { // 204.8 px, and half of a pixel that it only touches
				t.Fatalf("the mark reaches %d, %d", x, y)
			}
			inside++
		}
	}
	if inside < 512*512/5 {
		t.Errorf("only %d pixels are drawn on", inside)
	}
}

func TestThemeBringsItsPictures(t *testing.T) {
	theme := load(t, fstest.MapFS{"files/icon-512.png": {Data: []byte("own")}})
	if got := string(file(theme, "icon-512.png")); got != "own" {
		t.Errorf("icon-512.png = %q", got)
	}
	decoded(t, theme, "icon-192.png")
}

func TestReadMark(t *testing.T) {
	const begin, end = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 8 8">`, `</svg>`
	path := func(d string) string { return begin + `<path fill="#123456" d="` + d + `"/>` + end }
	for _, tt := range []struct {
		svg string
		ok  bool
	}{
		{path("M1 1 2 2-.5.5z"), true},
		{path("m1,1c1 1 2 2 3 3q1 1 2-2zL4 4"), true},
		{path("M1 1a1 1 0 0 1 2 2z"), false},
		{path("L1 1"), false},
		{path("M1"), false},
		{path("M1 1z2 2"), false},
		{path("M1 1l1e3 1"), false},
		{path("M1 1l1.2345 1"), false},
		{path("M1 1§"), false},
		{begin + end, false},
		{begin + `<circle r="4"/>` + end, false},
		{begin + `<path fill="red" d="M1 1h1v1z"/>` + end, false},
		{begin + `<path fill="#fff" opacity=".5" d="M1 1h1v1z"/>` + end, false},
		{`<svg viewBox="0 0 8 9"><path fill="#fff" d="M1 1h1v1z"/></svg>`, false},
		{`<svg viewBox="0 0 8 8"><path fill="#fff" d="M1 1h1v1z"/>`, false},
		{"", false},
	} {
		if _, err := readMark([]byte(tt.svg)); (err == nil) != tt.ok {
			t.Errorf("readMark(%q): error %v", tt.svg, err)
		}
	}
}

func BenchmarkDrawMark(b *testing.B) {
	files := []File{{Name: "icon.svg", Data: []byte(square)}}
	for b.Loop() {
		drawMark(files)
	}
}
