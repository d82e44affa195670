package build

import (
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
