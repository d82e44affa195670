package build

import (
	"bytes"
	"image"
	"image/draw"
	"image/jpeg"
	"image/png"

	"stillroom/build/webp"
	"stillroom/content"
)

// develop decodes a picture and makes it ready to be printed from: upright, in
// the colours of sRGB, and without any of its camera's notes. A picture that is
// several times as wide as widest is reduced, to no less than that.
func develop(format string, data []byte, widest int) (*image.RGBA, error) {
	m, err := decode(format, data)
	if err != nil {
		return nil, err
	}
	held := content.Orientation(format, data)
	width := m.Bounds().Dx()
	if held >= 5 {
		width = m.Bounds().Dy()
	}
	small := reduce(m, max(1, width/widest))
	if c := colouringOf(content.ColourProfile(format, data)); c != nil {
		c.apply(small)
	}
	return upright(small, held), nil
}

func decode(format string, data []byte) (image.Image, error) {
	switch format {
	case "PNG":
		return png.Decode(bytes.NewReader(data))
	case "WebP":
		return webp.Decode(data)
	}
	return jpeg.Decode(bytes.NewReader(data))
}

// reduce makes one pixel of each square of by times by. What is left over at
// the right and below is less than a pixel.
func reduce(m image.Image, by int) *image.RGBA {
	b := m.Bounds()
	if by == 1 {
		whole := image.NewRGBA(image.Rect(0, 0, b.Dx(), b.Dy()))
		draw.Draw(whole, whole.Rect, m, b.Min, draw.Src)
		return whole
	}
	small := image.NewRGBA(image.Rect(0, 0, max(1, b.Dx()/by), max(1, b.Dy()/by)))
	strip := image.NewRGBA(image.Rect(0, 0, b.Dx(), by)) // so that the whole is never held twice
	for y := range small.Rect.Dy() {
		clear(strip.Pix)
		draw.Draw(strip, strip.Rect, m, b.Min.Add(image.Pt(0, y*by)), draw.Src)
		for x := range small.Rect.Dx() {
			average(small.Pix[y*small.Stride+4*x:][:4], strip, x*by, by)
		}
	}
	return small
}

func average(dst []uint8, strip *image.RGBA, left, by int) {
	var sum [4]int
	for y := range by {
		row := strip.Pix[y*strip.Stride+4*left:][:4*by]
		for i, v := range row {
			sum[i%4] += int(v)
		}
	}
	for i, s := range sum {
		dst[i] = uint8((s + by*by/2) / (by * by))
	}
}

// upright turns a picture to stand as it was seen. Exif 2.32, 4.6.4, says where
// the first row and the first column of the file belong.
func upright(m *image.RGBA, held int) *image.RGBA {
	w, h := m.Rect.Dx(), m.Rect.Dy()
	size := image.Rect(0, 0, w, h)
	if held >= 5 {
		size = image.Rect(0, 0, h, w)
	}
	var from func(x, y int) (int, int)
	switch held {
	case 2: // top, right
		from = func(x, y int) (int, int) { return w - 1 - x, y }
	case 3: // bottom, right
		from = func(x, y int) (int, int) { return w - 1 - x, h - 1 - y }
	case 4: // bottom, left
		from = func(x, y int) (int, int) { return x, h - 1 - y }
	case 5: // left, top
		from = func(x, y int) (int, int) { return y, x }
	case 6: // right, top
		from = func(x, y int) (int, int) { return y, h - 1 - x }
	case 7: // right, bottom
		from = func(x, y int) (int, int) { return w - 1 - y, h - 1 - x }
	case 8: // left, bottom
		from = func(x, y int) (int, int) { return w - 1 - y, x }
	default:
		return m
	}
	turned := image.NewRGBA(size)
	for y := range size.Dy() {
		for x := range size.Dx() {
			sx, sy := from(x, y)
			copy(turned.Pix[y*turned.Stride+4*x:][:4], m.Pix[sy*m.Stride+4*sx:][:4])
		}
	}
	return turned
}
