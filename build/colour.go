package build

import (
	"encoding/binary"
	"image"
	"math"
	"sync"
)

// A colouring turns the colours of a picture into those of sRGB, which browsers
// take for granted. Cameras of telephones use a wider space, in which the same
// numbers are stronger colours.
type colouring struct {
	light  [3][256]int64 // how much light each value of red, green and blue is, in parts of lightOne
	matrix [3][3]int64   // from that light to sRGB's, in parts of lightOne
}

const lightOne = 1 << 16

// colouringOf reads an ICC profile of a matrix and three curves, which is what
// cameras and screens have: ICC.1:2010, 8.3. It gives nil if there is nothing
// to turn: for no profile, one of another sort, or sRGB itself.
func colouringOf(profile []byte) *colouring {
	if len(profile) < 132 || string(profile[16:20]) != "RGB " || string(profile[20:24]) != "XYZ " {
		return nil
	}
	var c colouring
	var to [3][3]float64 // from light to the profile's XYZ
	for i, channel := range []string{"r", "g", "b"} {
		xyz, ok := xyzOf(iccTag(profile, channel+"XYZ"))
		curve := curveOf(iccTag(profile, channel+"TRC"))
		if !ok || curve == nil {
			return nil
		}
		for row := range 3 {
			to[row][i] = xyz[row]
		}
		for v := range 256 {
			c.light[i][v] = fixed(curve(float64(v) / 255))
		}
	}
	for i := range 3 {
		for j := range 3 {
			c.matrix[i][j] = fixed(fromXYZ[i][0]*to[0][j] + fromXYZ[i][1]*to[1][j] + fromXYZ[i][2]*to[2][j])
		}
	}
	if c.changesNothing() {
		return nil
	}
	return &c
}

// fromXYZ turns XYZ under the light of profiles, D50, into sRGB's red, green
// and blue light. B. Lindbloom, RGB working space matrices (sRGB, D50), from
// memory; the test compares it with the profile of sRGB.
var fromXYZ = [3][3]float64{
	{3.1338561, -1.6168667, -0.4906146},
	{-0.9787684, 1.9161415, 0.0334540},
	{0.0719453, -0.2289914, 1.4052427},
}

// fixed is a number in parts of lightOne.
func fixed(f float64) int64 {
	if !(math.Abs(f) < 256) { // no profile means that
		return 0
	}
	return int64(math.Round(f * lightOne))
}

// changesNothing reports whether every colour of a wide net stays within one
// step of where it was.
func (c *colouring) changesNothing() bool {
	const step = 51
	for r := 0; r < 256; r += step {
		for g := 0; g < 256; g += step {
			for b := 0; b < 256; b += step {
				x, y, z := c.turn(uint8(r), uint8(g), uint8(b))
				if far(x, r) || far(y, g) || far(z, b) {
					return false
				}
			}
		}
	}
	return true
}

func far(a uint8, b int) bool { return int(a) > b+1 || int(a) < b-1 }

// turn turns one colour.
func (c *colouring) turn(r, g, b uint8) (x, y, z uint8) {
	light := [3]int64{c.light[0][r], c.light[1][g], c.light[2][b]}
	var out [3]uint8
	for i, m := range c.matrix {
		v := (m[0]*light[0] + m[1]*light[1] + m[2]*light[2] + lightOne/2) / lightOne
		out[i] = toSRGB()[min(max(v, 0), lightOne)]
	}
	return out[0], out[1], out[2]
}

// apply turns a whole picture.
func (c *colouring) apply(m *image.RGBA) {
	for i := 0; i+3 < len(m.Pix); i += 4 {
		p := m.Pix[i : i+4 : i+4]
		switch a := int(p[3]); a {
		case 0:
		case 255:
			p[0], p[1], p[2] = c.turn(p[0], p[1], p[2])
		default: // colours are held multiplied by alpha
			r, g, b := c.turn(uint8(int(p[0])*255/a), uint8(int(p[1])*255/a), uint8(int(p[2])*255/a))
			p[0], p[1], p[2] = uint8(int(r)*a/255), uint8(int(g)*a/255), uint8(int(b)*a/255)
		}
	}
}

// toSRGB gives sRGB's value for an amount of light: IEC 61966-2-1.
var toSRGB = sync.OnceValue(func() *[lightOne + 1]uint8 {
	var table [lightOne + 1]uint8
	for i := range table {
		v := float64(i) / lightOne
		if v <= 0.0031308 {
			v *= 12.92
		} else {
			v = 1.055*math.Pow(v, 1/2.4) - 0.055
		}
		table[i] = uint8(math.Round(255 * v))
	}
	return &table
})

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
