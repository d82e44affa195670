package content

import (
	"bytes"
	"compress/zlib"
	"encoding/binary"
	"hash/crc32"
	"os"
	"strings"
	"testing"
)

// pngWith is a PNG of a size and some chunks, each a name and its bytes.
func pngWith(w, h uint32, chunks ...string) []byte {
	b := []byte("\x89PNG\r\n\x1a\n")
	add := func(name string, data []byte) {
		b = binary.BigEndian.AppendUint32(b, uint32(len(data)))
		b = append(append(b, name...), data...)
		b = binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE(append([]byte(name), data...)))
	}
	head := binary.BigEndian.AppendUint32(binary.BigEndian.AppendUint32(nil, w), h)
	add("IHDR", append(head, 8, 2, 0, 0, 0))
	for i := 0; i+1 < len(chunks); i += 2 {
		add(chunks[i], []byte(chunks[i+1]))
	}
	add("IEND", nil)
	return b
}

func deflated(n int) string {
	var b bytes.Buffer
	z := zlib.NewWriter(&b)
	z.Write(make([]byte, n))
	z.Close()
	return b.String()
}

func webpOf(chunks ...string) []byte {
	body := "WEBP"
	for i := 0; i+1 < len(chunks); i += 2 {
		size := binary.LittleEndian.AppendUint32(nil, uint32(len(chunks[i+1])))
		body += chunks[i] + string(size) + chunks[i+1] + strings.Repeat("\x00", len(chunks[i+1])%2)
	}
	return append(binary.LittleEndian.AppendUint32([]byte("RIFF"), uint32(len(body))), body...)
}

// A picture that lies about itself is refused by its name, and what looks at
// its parts ends. PNG 3rd edition, 5; RFC 9649; ITU-T T.81, B.
func TestHostilePictures(t *testing.T) {
	many := make([]string, 0, 40_000)
	for range cap(many) / 2 {
		many = append(many, "tEXt", "a\x00b")
	}
	jpeg := "\xff\xd8\xff\xc0\x00\x11\x08\xff\xff\xff\xff\x03\x01\x22\x00\x02\x11\x01\x03\x11\x01\xff\xda"
	scan := "\xff\xda\x00\x0c\x03\x01\x00\x02\x11\x03\x11\x00\x00\x00\x7f"
	cases := []struct {
		file, want string
		data       []byte
	}{
		{"a.png", "more than 60 million", pngWith(60000, 60000)},
		{"a.png", "more than 60 million", pngWith(65535, 65535)},
		{"a.png", "40 or more times the other", pngWith(59_000_000, 1)},
		{"a.png", "40 or more times the other", pngWith(1, 59_000_000)},
		{"a.png", "", pngWith(39, 1)},
		{"a.png", "broken", pngWith(1<<31, 1)},
		{"a.png", "broken", pngWith(0, 0)},
		{"a.png", "", pngWith(9, 9, many...)},
		{"a.png", "", pngWith(9, 9, "iCCP", "a\x00\x00"+deflated(64<<20))},
		{"a.png", "", pngWith(9, 9, "iCCP", "a\x00\x00"+"no zlib")},
		{"a.png", "", pngWith(9, 9, "iCCP", "")},
		{"a.png", "cut short", pngWith(9, 9)[:40]},
		{"a.png", "named as PNG", []byte(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"/>`)},
		{"a.jpg", "cut short", []byte(jpeg + "\xff\xd9")},
		{"a.jpg", "more than 60 million", []byte(jpeg + scan[2:] + "\xff\xd9")},
		{"a.jpg", "more than 100 scans", []byte(jpeg[:len(jpeg)-2] + strings.Repeat(scan, mostScans+1) + "\xff\xd9")},
		{"a.jpg", "holds GIF", []byte("GIF89a\xff\xff\xff\xff\x00\x00\x00;")},
		{"a.jpg", "broken", []byte("II*\x00\x08\x00\x00\x00\xff\xff" + strings.Repeat("\xff", 100))}, // TIFF
		{"a.jpg", "broken", []byte("BM" + strings.Repeat("\xff", 100))},
		{"a.png", "broken", []byte("PK\x03\x04" + strings.Repeat("\xff", 100))},
		{"a.webp", "named as WebP but holds PNG", pngWith(9, 9)},
		{"a.webp", "more than 60 million", webpOf("VP8L", "\x2f\xff\xff\xff\x0f")},
		{"a.webp", "more than 60 million", webpOf("VP8 ", "\x10\x00\x00\x9d\x01\x2a\xff\x3f\xff\x3f")},
		{"a.jpg", "broken", []byte("\xff\xd8" + strings.Repeat("\xff\xe1\x00\x02", 100_000))},
		{"a.jpg", "broken", []byte("\xff\xd8\xff\xe1\xff\xffExif\x00\x00MM\x00*\xff\xff\xff\xff")},
		{"a.jpg", "broken", []byte("\xff\xd8" + strings.Repeat("\xff", 1<<20))},
		{"a.webp", "more than 60 million", webpOf("VP8X", "\x02\x00\x00\x00\xff\x3f\x00\xff\x3f\x00", "ANIM", "\x00\x00\x00\x00\x00\x00")},
		{"a.webp", "cut short", append(webpOf("VP8X", "\x00\x00\x00\x00\x09\x00\x00\x09\x00\x00")[:4], append([]byte("\xff\xff\xff\x7f"), webpOf("VP8X", "\x00\x00\x00\x00\x09\x00\x00\x09\x00\x00")[8:]...)...)},
		{"a.webp", "broken", webpOf("ICCP", strings.Repeat("a", 1<<20))},
		{"a.gif", "not named as", []byte("GIF89a\x09\x00\x09\x00\x00\x00\x00;")},
		{"a.svg", "broken", []byte("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">" + strings.Repeat("<!-- ", 100_000))},
		{"a.svg", "deep", []byte("<svg viewBox=\"0 0 9 9\">" + strings.Repeat("<g>", 1_000_000))},
		{"a.svg", "no picture", []byte(strings.Repeat("<", 1<<20))},
		{"a.svg", "shape", []byte(`<svg viewBox="0 0 1e999999 1e999999"/>`)},
		{"a.svg", "shape", []byte(`<svg viewBox="0 0 NaN -1"/>`)},
		{"a.svg", "million", []byte(`<svg viewBox="0 0 59999999 59999999"/>`)},
		{"a.svg", "broken", []byte(`<?xml version="1.0" encoding="utf-7"?><svg viewBox="0 0 9 9"/>`)},
		{"a.php.png", "style sheet", []byte("<?php system('id') ?>")},
		{"CON", "not named as", nil}, {"a.png ", "not named as", nil}, {"a.png:b", "not named as", nil},
	}
	t.Logf("%d cases of pictures", len(cases))
	for _, c := range cases {
		img, err := ReadImage(c.file, c.data)
		switch {
		case err != nil && !strings.Contains(err.Error(), c.want), err == nil && c.want != "":
			t.Errorf("%s of %d bytes (%.30q): %v, want %q", c.file, len(c.data), c.data, err, c.want)
		case err != nil && c.want == "":
			t.Errorf("%s of %d bytes: %v", c.file, len(c.data), err)
		case err == nil && len(ColourProfile(img.Format, c.data)) > maxProfile:
			t.Errorf("%s: a profile of more than is looked at", c.file)
		}
	}
}

func box(name string, inside ...string) string {
	body := strings.Join(inside, "")
	return string(binary.BigEndian.AppendUint32(nil, uint32(8+len(body)))) + name + body
}

// A recording that lies about itself is refused, or its length is one that it
// may have. ISO/IEC 14496-12, RFC 3533, ISO/IEC 11172-3.
func TestHostileRecordings(t *testing.T) {
	const ftyp = "\x00\x00\x00\x0cftypM4A "
	frame := "\xff\xfb\x90\x00" + strings.Repeat("\x00", 413)
	deep := strings.Repeat("\x00\x00\x00\x00moov", 100_000) // each goes on to the end
	opus, err := os.ReadFile(recordingsFolder + "/opus.opus")
	if err != nil {
		t.Fatal(err)
	}
	late := bytes.Clone(opus)
	page := bytes.LastIndex(late, []byte("OggS"))
	copy(late[page+6:], "\xff\xff\xff\xff\xff\xff\xff\x7f")
	for _, data := range []string{
		"", "OggS", "OggS" + strings.Repeat("\xff", 1<<20), strings.Repeat("OggS", 1<<18), string(late), string(opus[:len(opus)-9]),
		ftyp, ftyp + "\x00\x00\x00\x07moov", ftyp + "\xff\xff\xff\xffmoov", ftyp + "\x00\x00\x00\x01moov\xff\xff\xff\xff\xff\xff\xff\xff", ftyp + deep,
		ftyp + strings.Repeat("\x00\x00\x00\x08free", 100_000), ftyp + box("moov", box("mvhd", strings.Repeat("\xff", 100)), box("trak", box("mdia", box("hdlr", "\x00\x00\x00\x00\x00\x00\x00\x00soun")))),
		ftyp + box("moov", box("mvhd", "\x01"+strings.Repeat("\x00", 22)+"\x01\x7f"+strings.Repeat("\xff", 40))),
		"ID3\x04\x00\x00\x7f\x7f\x7f\x7f", strings.Repeat("ID3\x04\x00\x00\x00\x00\x00\x00", 100_000), "APETAGEX" + strings.Repeat("\xff", 24), strings.Repeat("APETAGEX"+strings.Repeat("\x00", 24), 10_000),
		frame, strings.Repeat(frame, 3) + frame[:9], strings.Repeat(frame+"x", 1000), frame[:36] + "Xing\x00\x00\x00\x03\xff\xff\xff\xff\x00\x00\x00\x00" + strings.Repeat(frame, 9),
		frame[:36] + "Xing\x00\x00\x00\x03\x00\x00\x00\x09\xff\xff\xff\xff" + strings.Repeat(frame, 9), strings.Repeat("\xff\xfb\x90", 1<<18), strings.Repeat("\xff", 1<<20), strings.Repeat("\x00", 1<<20),
	} {
		s, err := ReadSound(strings.NewReader(data))
		if err == nil && (s.Duration < 0 || s.Duration > 2*longestSound) {
			t.Errorf("%d bytes (%.30q): %v", len(data), data, s)
		}
	}
}
