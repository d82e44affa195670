package build

import (
	"encoding/binary"
	"image"
	"slices"
	"testing"
)

// profile writes an ICC profile of three primaries and one curve: ICC.1:2010,
// 7.2 and 7.3.
func profile(xyz [3][3]float64, curve []byte) []byte {
	number := func(f float64) []byte { return binary.BigEndian.AppendUint32(nil, uint32(int32(f*65536+0.5))) }
	head := slices.Concat(make([]byte, 16), []byte("RGB XYZ "), make([]byte, 104))
	table := []byte{0, 0, 0, 6}
	var body []byte
	add := func(sign string, tag []byte) {
		table = append(table, sign...)
		table = binary.BigEndian.AppendUint32(table, uint32(128+4+6*12+len(body)))
		table = binary.BigEndian.AppendUint32(table, uint32(len(tag)))
		body = append(body, tag...)
	}
	for i, c := range []string{"r", "g", "b"} {
		add(c+"XYZ", slices.Concat([]byte("XYZ \x00\x00\x00\x00"), number(xyz[i][0]), number(xyz[i][1]), number(xyz[i][2])))
		add(c+"TRC", curve)
	}
	return slices.Concat(head, table, body)
}

func gamma(g float64) []byte { // of 8 bits before and after the point
	return binary.BigEndian.AppendUint16([]byte("curv\x00\x00\x00\x00\x00\x00\x00\x01"), uint16(g*256+0.5))
}

func formula(kind byte, p ...float64) []byte {
	b := []byte{'p', 'a', 'r', 'a', 0, 0, 0, 0, 0, kind, 0, 0}
	for _, f := range p {
		b = binary.BigEndian.AppendUint32(b, uint32(int32(f*65536+0.5)))
	}
	return b
}

var (
	srgbCurve = formula(3, 2.4, 1/1.055, 0.055/1.055, 1/12.92, 0.04045) // IEC 61966-2-1

	// The primaries under D50. B. Lindbloom, RGB working space matrices; those
	// of Display P3 are of Apple's profile. All from memory.
	srgb  = [3][3]float64{{0.4360747, 0.2225045, 0.0139322}, {0.3850649, 0.7168786, 0.0971045}, {0.1430804, 0.0606169, 0.7141733}}
	adobe = [3][3]float64{{0.6097559, 0.3111242, 0.0194811}, {0.2052401, 0.6256560, 0.0608902}, {0.1492240, 0.0632197, 0.7448387}}
	p3    = [3][3]float64{{0.51512, 0.2412, -0.00105}, {0.29198, 0.69225, 0.04189}, {0.1571, 0.06657, 0.78407}}
)

// The wider spaces' numbers for sRGB's own red, green and blue are well known:
// CSS Color 4 has color(display-p3 0.9175 0.2003 0.1386) for red; Adobe RGB has
// 219 of red alone, and 144, 255, 60 for green (from memory).
func TestColouring(t *testing.T) {
	tests := []struct {
		name    string
		profile []byte
		in      [3]uint8
		want    [3]int
	}{
		{"Display P3", profile(p3, srgbCurve), [3]uint8{234, 51, 35}, [3]int{255, 0, 0}},
		{"Display P3", profile(p3, srgbCurve), [3]uint8{117, 251, 76}, [3]int{0, 255, 0}},
		{"Display P3", profile(p3, srgbCurve), [3]uint8{0, 255, 0}, [3]int{0, 255, 0}}, // stronger than sRGB has it
		{"Display P3", profile(p3, srgbCurve), [3]uint8{128, 128, 128}, [3]int{128, 128, 128}},
		{"Adobe RGB", profile(adobe, gamma(2.19921875)), [3]uint8{219, 0, 0}, [3]int{255, 0, 0}},
		{"Adobe RGB", profile(adobe, gamma(2.19921875)), [3]uint8{144, 255, 60}, [3]int{0, 255, 0}},
		{"Adobe RGB", profile(adobe, gamma(2.19921875)), [3]uint8{255, 255, 255}, [3]int{255, 255, 255}},
		{"sRGB's primaries, light itself", profile(srgb, []byte("curv\x00\x00\x00\x00\x00\x00\x00\x00")), [3]uint8{55, 128, 0}, [3]int{128, 188, 0}},
		{"sRGB's primaries, a table", profile(srgb, []byte("curv\x00\x00\x00\x00\x00\x00\x00\x03\x00\x00\x80\x00\xff\xff")), [3]uint8{55, 128, 0}, [3]int{128, 188, 0}},
	}
	for _, test := range tests {
		c := colouringOf(test.profile)
		if c == nil {
			t.Errorf("%s: nothing to turn", test.name)
			continue
		}
		m := image.NewRGBA(image.Rect(0, 0, 1, 1))
		copy(m.Pix, append(test.in[:], 255))
		c.apply(m)
		for i, want := range test.want {
			if d := int(m.Pix[i]) - want; d < -3 || d > 3 {
				t.Errorf("%s: %v is %v, want %v", test.name, test.in, m.Pix[:3], test.want)
				break
			}
		}
	}
}

func TestNothingToColour(t *testing.T) {
	sound := profile(p3, srgbCurve)
	for name, p := range map[string][]byte{
		"none":               nil,
		"sRGB":               profile(srgb, srgbCurve),
		"almost sRGB":        profile(srgb, formula(4, 2.4, 1/1.055, 0.055/1.055, 1/12.92, 0.04045, 0, 0)),
		"no RGB":             slices.Concat(sound[:16], []byte("CMYK"), sound[20:]),
		"cut short":          sound[:len(sound)-1],
		"a curve of no sort": profile(p3, []byte("mft2\x00\x00\x00\x00\x00\x00\x00\x00")),
		"an endless table":   profile(p3, []byte("curv\x00\x00\x00\x00\xff\xff\xff\xff")),
	} {
		if colouringOf(p) != nil {
			t.Errorf("%s: colours would be turned", name)
		}
	}
}
