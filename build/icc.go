package build

import (
	"encoding/binary"
	"math"
)

// iccTag finds an element of a profile by its sign: ICC.1:2010, 7.3.
func iccTag(profile []byte, sign string) []byte {
	count := binary.BigEndian.Uint32(profile[128:])
	for rest := profile[132:]; count > 0 && len(rest) >= 12; count, rest = count-1, rest[12:] {
		if string(rest[:4]) != sign {
			continue
		}
		at, size := uint64(binary.BigEndian.Uint32(rest[4:])), uint64(binary.BigEndian.Uint32(rest[8:]))
		if at+size > uint64(len(profile)) {
			return nil
		}
		return profile[at : at+size]
	}
	return nil
}

// s15 is a number of 16 bits before and after the point: ICC.1:2010, 4.6.
func s15(b []byte) float64 { return float64(int32(binary.BigEndian.Uint32(b))) / 65536 }

// xyzOf reads the colour of a primary: ICC.1:2010, 10.27.
func xyzOf(tag []byte) (xyz [3]float64, ok bool) {
	if len(tag) < 20 || string(tag[:4]) != "XYZ " {
		return xyz, false
	}
	return [3]float64{s15(tag[8:]), s15(tag[12:]), s15(tag[16:])}, true
}

// curveOf reads how a value becomes light: a table or a gamma (ICC.1:2010,
// 10.5), or a formula (10.15).
func curveOf(tag []byte) func(float64) float64 {
	switch {
	case len(tag) < 12:
		return nil
	case string(tag[:4]) == "curv":
		return tableCurve(tag[8:])
	case string(tag[:4]) == "para":
		return formulaCurve(binary.BigEndian.Uint16(tag[8:]), tag[12:])
	}
	return nil
}

func tableCurve(b []byte) func(float64) float64 {
	n := uint64(binary.BigEndian.Uint32(b))
	b = b[4:]
	switch {
	case n == 0:
		return func(v float64) float64 { return v }
	case 2*n > uint64(len(b)):
		return nil
	case n == 1:
		gamma := float64(binary.BigEndian.Uint16(b)) / 256
		return func(v float64) float64 { return math.Pow(v, gamma) }
	}
	at := func(i int) float64 { return float64(binary.BigEndian.Uint16(b[2*i:])) / 65535 }
	return func(v float64) float64 {
		x := v * float64(n-1)
		i := min(int(x), int(n)-2)
		return at(i) + (x-float64(i))*(at(i+1)-at(i))
	}
}

// formulaCurve knows the five formulas, each one the last with terms left out.
func formulaCurve(kind uint16, b []byte) func(float64) float64 {
	counts := []int{1, 3, 4, 5, 7}
	if int(kind) >= len(counts) || len(b) < 4*counts[kind] {
		return nil
	}
	var p [7]float64 // g a b c d e f
	p[1] = 1
	for i := range counts[kind] {
		p[i] = s15(b[4*i:])
	}
	g, a, bb, c, d, e, f := p[0], p[1], p[2], p[3], p[4], p[5], p[6]
	switch kind {
	case 0:
		d = 0
	case 1, 2: // below -b/a there is nothing but the offset, the fourth number
		d, e, f, c = -bb/a, c, c, 0
	}
	return func(v float64) float64 {
		if v >= d {
			return math.Pow(a*v+bb, g) + e
		}
		return c*v + f
	}
}
