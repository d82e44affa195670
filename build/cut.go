package build

import (
	"bytes"
	"image"
	"image/draw"
	"image/jpeg"
	"image/png"
	"math"

	"stillroom/build/webp"
)

// An order says what the prints of a picture are for.
type order uint8

const (
	forPages  order = 1 << iota // the sizes that screens choose from
	forSearch                   // the shapes that search engines and previews ask for
	forFeed                     // the square that listeners' programs show
)

// A cut is a part of a picture in one size, of which prints are made.
type cut struct {
	use     use
	part    image.Rectangle // of the picture
	w, h    int
	formats []format
}

// A use is where a print is found again.
type use string

const (
	aSize  use = "size"
	aCrop  use = "crop"
	aShare use = "share"
	aCover use = "cover"
)

// A format is one that prints are made in, by the ending of their names.
type format string

const (
	asJPEG format = ".jpg"
	asPNG  format = ".png"
	asWebP format = ".webp"
)

var mediaTypes = map[format]string{asJPEG: "image/jpeg", asPNG: "image/png", asWebP: "image/webp"}

// pageWidths are those that screens choose from, each about one and a half times
// the one before: SP-04 of the table of standards. A phone shows a picture 331
// to 396 pixels wide: with less than two dots to each it gets 680, else 1080.
var pageWidths = []int{400, 680, 1080, 1440, 2000}

// widths are those that a picture is printed in. It is never made larger than
// it is; its own width is among them unless one that is little less is.
func widths(own int) []int {
	var all []int
	for _, w := range pageWidths {
		if w < own {
			all = append(all, w)
		}
	}
	const little = 1.25
	widest := pageWidths[len(pageWidths)-1]
	if len(all) == 0 || own <= widest && float64(own) >= little*float64(all[len(all)-1]) {
		all = append(all, own)
	}
	return all
}

// shapes are those in which search engines show a recipe: SD-02. Each keeps the
// middle of the picture.
var shapes = []image.Point{{1, 1}, {4, 3}, {16, 9}}

const (
	shapeWidth = 1200
	coverSide  = 3000 // PC-10: 1,400 to 3,000 pixels
	shareWidth = 1200 // FI-08: 1200 by 630
	shareHigh  = 630
)

// widest is how wide a picture has to be for all of an order.
func (o order) widest() int {
	if o&forFeed != 0 {
		return coverSide
	}
	return pageWidths[len(pageWidths)-1]
}

// cuts lists the prints of a picture of a size.
func (o order) cuts(size image.Point, opaque bool) []cut {
	all := image.Rectangle{Max: size}
	var list []cut
	if o&forPages != 0 {
		for _, w := range widths(size.X) {
			h := max(1, int(math.Round(float64(w)*float64(size.Y)/float64(size.X))))
			list = append(list, cut{aSize, all, w, h, pageFormats(w, h, opaque)})
		}
	}
	if o&forSearch != 0 {
		for _, s := range shapes {
			list = append(list, middle(aCrop, all, image.Pt(shapeWidth, shapeWidth*s.Y/s.X)))
		}
		list = append(list, middle(aShare, all, image.Pt(shareWidth, shareHigh)))
	}
	if o&forFeed != 0 {
		list = append(list, middle(aCover, all, image.Pt(coverSide, coverSide)))
	}
	return list
}

// pageFormats are those that browsers choose from: WebP, and one that everything
// can show.
func pageFormats(w, h int, opaque bool) []format {
	plain := asJPEG
	if !opaque {
		plain = asPNG
	}
	if w > webp.MaxSide || h > webp.MaxSide {
		return []format{plain}
	}
	return []format{plain, asWebP}
}

// middle cuts the middle out of a picture in the shape of a print, which
// becomes smaller where the picture is.
func middle(u use, all image.Rectangle, print image.Point) cut {
	w, h := all.Dx(), all.Dy()
	if w*print.Y > h*print.X {
		w = max(1, h*print.X/print.Y)
	} else {
		h = max(1, w*print.Y/print.X)
	}
	left, top := (all.Dx()-w)/2, (all.Dy()-h)/2
	c := cut{u, image.Rect(left, top, left+w, top+h), w, h, []format{asJPEG}}
	if w > print.X {
		c.w, c.h = print.X, print.Y
	}
	return c
}

// How much of a picture is kept. Line and texture show faults earlier than a
// photograph does, and these show none at reading distance.
const (
	jpegQuality = 78
	webpQuality = 50
	webpEffort  = 2 // half the time of 4, for files that are two parts in a hundred larger
)

// from makes the cut out of a picture.
func (c cut) from(m *image.RGBA) *image.RGBA {
	if c.part == m.Rect && c.w == m.Rect.Dx() && c.h == m.Rect.Dy() {
		return m
	}
	return scale(m, c.part, c.w, c.h)
}

// encode gives the bytes of a print.
func (f format) encode(m *image.RGBA) ([]byte, error) {
	var b bytes.Buffer
	switch f {
	case asWebP:
		return webp.Encode(apart(m), webpQuality, webpEffort)
	case asPNG:
		err := png.Encode(&b, apart(m))
		return b.Bytes(), err
	}
	err := jpeg.Encode(&b, onWhite(m), &jpeg.Options{Quality: jpegQuality})
	return b.Bytes(), err
}

// apart gives colours that are not multiplied by their alpha.
func apart(m *image.RGBA) *image.NRGBA {
	if m.Opaque() {
		return &image.NRGBA{Pix: m.Pix, Stride: m.Stride, Rect: m.Rect}
	}
	n := image.NewNRGBA(m.Rect)
	draw.Draw(n, n.Rect, m, m.Rect.Min, draw.Src)
	return n
}

// onWhite gives what can be seen through a ground.
func onWhite(m *image.RGBA) *image.RGBA {
	if m.Opaque() {
		return m
	}
	page := image.NewRGBA(m.Rect)
	draw.Draw(page, page.Rect, image.White, image.Point{}, draw.Src)
	draw.Draw(page, page.Rect, m, m.Rect.Min, draw.Over)
	return page
}
