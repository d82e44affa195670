package content

import (
	"bytes"
	"compress/zlib"
	"encoding/binary"
	"slices"
	"testing"
)

func TestOrientation(t *testing.T) {
	j := jpegOf(t, 4, 3)
	for o := 1; o <= 8; o++ {
		if got := Orientation("JPEG", turned(j, binary.LittleEndian, uint16(o))); got != o {
			t.Errorf("Orientation = %d, want %d", got, o)
		}
	}
	for format, data := range map[string][]byte{"JPEG": j, "PNG": pngOf(t, 4, 3), "WebP": webp1x1(t)} {
		if got := Orientation(format, data); got != 1 {
			t.Errorf("Orientation of a %s without a word on it = %d", format, got)
		}
	}
}

func TestColourProfile(t *testing.T) {
	segment := func(number byte, body string) []byte {
		s := "ICC_PROFILE\x00" + string([]byte{number, 2}) + body
		return slices.Concat([]byte{0xff, 0xe2, 0, byte(len(s) + 2)}, []byte(s))
	}
	j, p, w := jpegOf(t, 4, 3), pngOf(t, 4, 3), webp1x1(t)
	var z bytes.Buffer
	zw := zlib.NewWriter(&z)
	zw.Write([]byte("a profile"))
	zw.Close()
	chunk := slices.Concat([]byte{0, 0, 0, byte(z.Len() + 6)}, []byte("iCCPname\x00\x00"), z.Bytes(), make([]byte, 4))
	tests := []struct {
		name, format string
		data         []byte
		want         string
	}{
		{"none", "JPEG", j, ""},
		{"none", "PNG", p, ""},
		{"none", "WebP", w, ""},
		{"none", "SVG", []byte("<svg/>"), ""},
		{"in two parts, the second first", "JPEG", slices.Concat(j[:2], segment(2, "file"), segment(1, "a pro"), j[2:]), "a profile"},
		{"packed", "PNG", slices.Concat(p[:33], chunk, p[33:]), "a profile"},
		{"packed badly", "PNG", slices.Concat(p[:33], []byte("\x00\x00\x00\x08iCCPname\x00\x00xx\x00\x00\x00\x00"), p[33:]), ""},
		{"of odd length", "WebP", append(slices.Clone(w), "ICCP\x09\x00\x00\x00a profile\x00"...), "a profile"},
	}
	for _, test := range tests {
		if got := string(ColourProfile(test.format, test.data)); got != test.want {
			t.Errorf("%s, %s: %q, want %q", test.format, test.name, got, test.want)
		}
	}
}
