package content

import (
	"bytes"
	"encoding/base64"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"slices"
	"strings"
	"testing"
)

func jpegOf(t testing.TB, w, h int) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := jpeg.Encode(&b, image.NewGray(image.Rect(0, 0, w, h)), nil); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func pngOf(t testing.TB, w, h int) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := png.Encode(&b, image.NewPaletted(image.Rect(0, 0, w, h), color.Palette{color.Black})); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// webp1x1 is one lossy pixel.
func webp1x1(t testing.TB) []byte {
	t.Helper()
	b, err := base64.StdEncoding.DecodeString("UklGRiIAAABXRUJQVlA4IBYAAAAwAQCdASoBAAEADsD+JaQAA3AAAAAA")
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// turned puts Exif data with the given orientation into a JPEG, after SOI.
// Exif 2.32, 4.6.2: a TIFF header, a directory of one entry, no second one.
func turned(jpeg []byte, order binary.AppendByteOrder, orientation uint16) []byte {
	tiff := []byte("MM\x00\x2a")
	if order == binary.LittleEndian {
		tiff = []byte("II\x2a\x00")
	}
	tiff = order.AppendUint32(tiff, 8)
	tiff = order.AppendUint16(tiff, 1)
	tiff = order.AppendUint16(tiff, 0x0112)
	tiff = order.AppendUint16(tiff, 3) // SHORT
	tiff = order.AppendUint32(tiff, 1)
	tiff = order.AppendUint16(tiff, orientation)
	tiff = order.AppendUint16(tiff, 0)
	tiff = order.AppendUint32(tiff, 0)
	seg := append([]byte("Exif\x00\x00"), tiff...)
	app1 := append([]byte{0xff, 0xe1}, binary.BigEndian.AppendUint16(nil, uint16(len(seg)+2))...)
	return slices.Concat(jpeg[:2], app1, seg, jpeg[2:])
}

func TestReadImage(t *testing.T) {
	j := jpegOf(t, 40, 30)
	p := pngOf(t, 20, 10)
	const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 16.4"><path d="M0 0"/></svg>`
	tests := []struct {
		file string
		data []byte
		want Image
	}{
		{"a.jpg", j, Image{"JPEG", 40, 30}},
		{"deep/a.JPEG", j, Image{"JPEG", 40, 30}},
		{"upright.jpg", turned(j, binary.BigEndian, 3), Image{"JPEG", 40, 30}},
		{"left.jpg", turned(j, binary.BigEndian, 6), Image{"JPEG", 30, 40}},
		{"right.jpg", turned(j, binary.LittleEndian, 8), Image{"JPEG", 30, 40}},
		{"film.jpg", append(slices.Clone(j), "a film after the picture"...), Image{"JPEG", 40, 30}},
		{"a.png", p, Image{"PNG", 20, 10}},
		{"a.webp", webp1x1(t), Image{"WebP", 1, 1}},
		{"a.svg", []byte(svg), Image{"SVG", 32, 16}},
		{"px.svg", []byte(`<svg width="12px" height="9"/>`), Image{"SVG", 12, 9}},
	}
	for _, test := range tests {
		got, err := ReadImage(test.file, test.data)
		if err != nil || got != test.want {
			t.Errorf("ReadImage(%q) = %v, %v; want %v", test.file, got, err, test.want)
		}
	}
}

func TestReadImageRefuses(t *testing.T) {
	j := jpegOf(t, 40, 30)
	p := pngOf(t, 20, 10)
	thumb := []byte{0xff, 0xe2, 0, 6, 0xff, 0xd8, 0xff, 0xd9} // a segment that holds a JPEG of its own
	tests := []struct {
		file string
		data []byte
		want string
	}{
		{"a.gif", []byte("GIF89a"), "a.gif is not named as a JPEG, PNG, WebP or SVG picture"},
		{"a.jpg", nil, "a.jpg is empty"},
		{"a.jpg", []byte("GIF89a\x01\x00\x01\x00\x00\x00\x00;"), "a.jpg holds GIF, not a JPEG, PNG, WebP or SVG picture"},
		{"a.jpg", []byte("\x00\x00\x00\x18ftypheic\x00\x00\x00\x00"), "a.jpg holds HEIC, not a JPEG, PNG, WebP or SVG picture"},
		{"a.jpg", []byte("\x00\x00\x00\x18ftypavif\x00\x00\x00\x00"), "a.jpg holds AVIF, not a JPEG, PNG, WebP or SVG picture"},
		{"a.jpg", []byte("plums"), "a.jpg is broken, or no picture at all"},
		{"a.jpg", p, "a.jpg is named as JPEG but holds PNG"},
		{"a.png", j, "a.png is named as PNG but holds JPEG"},
		{"a.png", []byte("<svg viewBox='0 0 1 1'/>"), "a.png is named as PNG but holds SVG"},
		{"a.svg", []byte("<html></html>"), "a.svg is broken, or no picture at all"},
		{"a.svg", []byte("<svg/>"), "a.svg is an SVG picture without a viewBox, so its shape is not known"},
		{"a.svg", []byte("<svg viewBox='0 0 1 1'>"), "a.svg is an SVG picture that is broken: line 1: unexpected EOF"},
		{"a.svg", []byte("<svg viewBox='0 0 1 1'><script/></svg>"), "a.svg is an SVG picture that holds a script"},
		{"a.svg", []byte("<svg viewBox='0 0 1 1'><g onload='x()'/></svg>"), "a.svg is an SVG picture that holds a script"},
		{"a.svg", []byte("<svg viewBox='0 0 1 1'><a href=' JavaScript:x()'/></svg>"), "a.svg is an SVG picture that holds a script"},
		{"a.jpg", j[:len(j)-9], "a.jpg is cut short: its end is missing"},
		{"thumb.jpg", slices.Concat(j[:2], thumb, j[2:len(j)-9]), "thumb.jpg is cut short: its end is missing"},
		{"a.png", p[:len(p)-12], "a.png is cut short: its end is missing"},
		{"hole.png", slices.Concat(p[:len(p)-17], p[len(p)-16:]), "hole.png is cut short: its end is missing"}, // a byte is lost, and the end is there
		{"a.webp", webp1x1(t)[:40], "a.webp is cut short: its end is missing"},
		{"big.png", headerOf(p, 10_000, 6_001), "big.png has 10000 by 6001 pixels, more than 60 million"},
	}
	for _, test := range tests {
		got, err := ReadImage(test.file, test.data)
		if err == nil || err.Error() != test.want {
			t.Errorf("ReadImage(%q) = %v, %v; want error %q", test.file, got, err, test.want)
		}
	}
	if _, err := ReadImage("big.png", headerOf(p, 10_000, 6_000)); err != nil {
		t.Errorf("a picture of just 60 megapixels: %v", err)
	}
}

// A picture's notes go, and what is seen stays.
func TestBare(t *testing.T) {
	note := []byte("\xff\xfe\x00\x09at home")
	j := jpegOf(t, 40, 30)
	noted := slices.Concat(j[:2], note, j[2:])
	chunk := append([]byte("\x00\x00\x00\x0btEXtPlace\x00 home"), 0, 0, 0, 0)
	p := pngOf(t, 20, 10)
	w := webp1x1(t)
	tests := []struct {
		format     string
		data, want []byte
	}{
		{"JPEG", j, j},
		{"JPEG", noted, j},
		{"JPEG", append(slices.Clone(j), "a film after the picture"...), j},
		{"JPEG", turned(noted, binary.LittleEndian, 1), j},
		{"JPEG", turned(noted, binary.LittleEndian, 6), turned(j, binary.BigEndian, 6)},
		{"PNG", p, p},
		{"PNG", slices.Concat(p[:33], chunk, p[33:], []byte("more")), p},
		{"WebP", w, w},
		{"WebP", append(slices.Clone(w), "EXIF\x03\x00\x00\x00abc\x00"...), w},
		{"SVG", []byte("<svg/>"), []byte("<svg/>")},
	}
	for i, test := range tests {
		if got := Bare(test.format, test.data); !bytes.Equal(got, test.want) {
			t.Errorf("%d: Bare(%q):\n%q\nwant\n%q", i, test.format, got, test.want)
		}
	}
}

// headerOf changes the size that a PNG's header gives, and its checksum.
// PNG 3rd edition, 11.2.1: IHDR comes first, with width and height.
func headerOf(p []byte, w, h uint32) []byte {
	p = slices.Clone(p)
	binary.BigEndian.PutUint32(p[16:], w)
	binary.BigEndian.PutUint32(p[20:], h)
	binary.BigEndian.PutUint32(p[29:], crc32.ChecksumIEEE(p[12:29]))
	return p
}

func FuzzReadImage(f *testing.F) {
	f.Add("a.svg", []byte("<svg viewBox='0 0 1 1'/>"))
	f.Add("a.png", pngOf(f, 2, 1))
	f.Add("a.webp", webp1x1(f))
	f.Add("a.jpg", turned(jpegOf(f, 2, 1), binary.BigEndian, 6))
	f.Fuzz(func(t *testing.T, file string, data []byte) {
		img, err := ReadImage(file, data)
		if err == nil && (img.Width < 1 || img.Height < 1 || img.Width > MaxPixels/img.Height) {
			t.Errorf("ReadImage(%q) = %v", file, img)
		}
		if err == nil {
			again, err := ReadImage(file, Bare(img.Format, data))
			if err != nil || again != img {
				t.Errorf("without notes %s is %v, %v; was %v", file, again, err, img)
			}
			if p := ColourProfile(img.Format, data); len(p) > maxProfile+len(data) {
				t.Errorf("a profile of %d bytes", len(p))
			}
			if o := Orientation(img.Format, data); o < 1 || o > 8 {
				t.Errorf("orientation %d", o)
			}
		}
		if err != nil && strings.TrimSpace(err.Error()) == "" {
			t.Errorf("ReadImage(%q): an error without a word", file)
		}
	})
}
