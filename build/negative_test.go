package build

import (
	"bytes"
	"encoding/binary"
	"image"
	"image/color"
	"image/draw"
	"image/jpeg"
	"image/png"
	"slices"
	"testing"

	"stillroom/build/webp"
)

// corners is a picture with a colour of its own in each quarter: red, green;
// blue, white.
func corners(w, h int) *image.RGBA {
	m := image.NewRGBA(image.Rect(0, 0, w, h))
	for i, c := range []color.RGBA{{250, 10, 10, 255}, {10, 250, 10, 255}, {10, 10, 250, 255}, {250, 250, 250, 255}} {
		at := image.Pt(i%2*w/2, i/2*h/2)
		draw.Draw(m, image.Rectangle{at, at.Add(image.Pt(w/2, h/2))}, image.NewUniform(c), image.Point{}, draw.Src)
	}
	return m
}

// quarters names the colours of a picture's quarters.
func quarters(m *image.RGBA) string {
	var s []byte
	w, h := m.Rect.Dx(), m.Rect.Dy()
	for i := range 4 {
		c := m.RGBAAt(w/4+i%2*w/2, h/4+i/2*h/2)
		switch {
		case c.R > 200 && c.G > 200 && c.B > 200:
			s = append(s, 'w')
		case c.R > 200:
			s = append(s, 'r')
		case c.G > 200:
			s = append(s, 'g')
		case c.B > 200:
			s = append(s, 'b')
		}
	}
	return string(s)
}

func jpegOf(t testing.TB, m image.Image) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := jpeg.Encode(&b, m, &jpeg.Options{Quality: 95}); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// segment puts a segment into a JPEG, after SOI.
func segment(jpeg []byte, mark byte, body ...[]byte) []byte {
	all := slices.Concat(body...)
	head := binary.BigEndian.AppendUint16([]byte{0xff, mark}, uint16(len(all)+2))
	return slices.Concat(jpeg[:2], head, all, jpeg[2:])
}

// held says in a JPEG how the camera was held: Exif 2.32, 4.6.2.
func held(jpeg []byte, o byte) []byte {
	return segment(jpeg, 0xe1, []byte("Exif\x00\x00MM\x00\x2a\x00\x00\x00\x08\x00\x01\x01\x12\x00\x03\x00\x00\x00\x01\x00"), []byte{o, 0, 0, 0, 0, 0, 0})
}

// Exif 2.32, 4.6.4, gives for each value on which side of the picture as it is
// seen the first row and the first column of the file lie.
func TestUpright(t *testing.T) {
	data := jpegOf(t, corners(64, 32))
	tests := []struct {
		held byte
		seen string
	}{
		{1, "rgbw"}, // top, left
		{2, "grwb"}, // top, right
		{3, "wbgr"}, // bottom, right
		{4, "bwrg"}, // bottom, left
		{5, "rbgw"}, // left, top
		{6, "brwg"}, // right, top
		{7, "wgbr"}, // right, bottom
		{8, "gwrb"}, // left, bottom
	}
	for _, test := range tests {
		m, err := develop("JPEG", held(data, test.held), 2000)
		if err != nil {
			t.Fatal(err)
		}
		size := image.Pt(64, 32)
		if test.held >= 5 {
			size = image.Pt(32, 64)
		}
		if got := quarters(m); got != test.seen || m.Rect.Size() != size {
			t.Errorf("held %d: %q, %v; want %q, %v", test.held, got, m.Rect.Size(), test.seen, size)
		}
	}
}

// A picture much larger than its prints is reduced, to no less than they need,
// by its width as it is seen.
func TestDevelopReduces(t *testing.T) {
	wide := jpegOf(t, corners(640, 320))
	tests := []struct {
		data   []byte
		widest int
		want   image.Point
	}{
		{wide, 640, image.Pt(640, 320)},
		{wide, 321, image.Pt(640, 320)},
		{wide, 320, image.Pt(320, 160)},
		{wide, 100, image.Pt(106, 53)},
		{held(wide, 6), 160, image.Pt(160, 320)},
	}
	for _, test := range tests {
		m, err := develop("JPEG", test.data, test.widest)
		if err != nil || m.Rect.Size() != test.want || len(quarters(m)) != 4 {
			t.Errorf("for %d: %v, %q, %v; want %v", test.widest, m.Rect.Size(), quarters(m), err, test.want)
		}
	}
}

func TestDevelopFormats(t *testing.T) {
	var p bytes.Buffer
	if err := png.Encode(&p, corners(32, 32)); err != nil {
		t.Fatal(err)
	}
	m := corners(32, 32)
	w, err := webp.Encode(&image.NRGBA{Pix: m.Pix, Stride: m.Stride, Rect: m.Rect}, 95, 4)
	if err != nil {
		t.Fatal(err)
	}
	for format, data := range map[string][]byte{"PNG": p.Bytes(), "WebP": w} {
		if m, err := develop(format, data, 2000); err != nil || quarters(m) != "rgbw" {
			t.Errorf("%s: %v", format, err)
		}
	}
	grey := image.NewGray(image.Rect(0, 0, 8, 8))
	draw.Draw(grey, grey.Rect, image.White, image.Point{}, draw.Src)
	if m, err := develop("JPEG", jpegOf(t, grey), 2000); err != nil || quarters(m) != "wwww" {
		t.Errorf("grey: %v", err)
	}
}

func TestDevelopTurnsColours(t *testing.T) {
	m := image.NewRGBA(image.Rect(0, 0, 16, 16))
	draw.Draw(m, m.Rect, image.NewUniform(color.RGBA{234, 51, 35, 255}), image.Point{}, draw.Src)
	data := segment(jpegOf(t, m), 0xe2, []byte("ICC_PROFILE\x00\x01\x01"), profile(p3, srgbCurve))
	got, err := develop("JPEG", data, 2000)
	if err != nil {
		t.Fatal(err)
	}
	if c := got.RGBAAt(8, 8); c.R < 250 || c.G > 6 || c.B > 12 {
		t.Errorf("sRGB's red in Display P3 is %v", c)
	}
}
