package webp

import (
	"bytes"
	"image"

	"golang.org/x/image/webp"
)

// Decode reads a picture that does not move.
func Decode(data []byte) (image.Image, error) {
	m, err := webp.Decode(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	switch m := m.(type) {
	case *image.YCbCr:
		stretch(m)
	case *image.NYCbCrA:
		stretch(&m.YCbCr)
	}
	return m, nil
}

// stretch makes black 0 and white 255. In a lossy WebP file they are 16 and 235
// (ITU-R BT.601; RFC 9649, 2.5), which x/image leaves so, while image.YCbCr has
// the whole range, as in JPEG.
func stretch(m *image.YCbCr) {
	var light, colour [256]uint8
	for i := range 256 {
		light[i] = clamp((2*(i-16)*255 + 219) / (2 * 219))
		colour[i] = clamp((2*(i*255+128*(224-255)) + 224) / (2 * 224))
	}
	for i, v := range m.Y {
		m.Y[i] = light[v]
	}
	for i := range m.Cb {
		m.Cb[i], m.Cr[i] = colour[m.Cb[i]], colour[m.Cr[i]]
	}
}

func clamp(v int) uint8 { return uint8(min(max(v, 0), 255)) }
