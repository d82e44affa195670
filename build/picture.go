package build

import (
	"fmt"
	"html"

	"stillroom/content"
)

// A Picture is an image as a page shows it.
type Picture struct {
	Src           string
	Srcset        string // its widths, in a format that everything can show; empty if there is but one
	WebP          string // its widths in WebP; empty if there are none
	Alt           string
	Credit        string // empty if nobody is named
	Width, Height int
}

// pictureOf shows a published picture. A browser that is given a choice of one
// need not be told of it.
func pictureOf(i Image, alt string) *Picture {
	p := &Picture{Src: i.Src, Alt: alt, WebP: srcset(i.WebP), Width: i.Width, Height: i.Height}
	if len(i.Plain) > 1 {
		p.Srcset = srcset(i.Plain)
	}
	return p
}

// picture gives nil if there is none.
func (e *edition) picture(p *content.Picture) *Picture {
	if p == nil {
		return nil
	}
	img, ok := e.assets.Picture(p.File.V)
	if !ok {
		return nil
	}
	shown := pictureOf(img, p.Alt.V)
	shown.Credit = p.Credit.V
	return shown
}

func (e *edition) pictures(all []content.Picture) []Picture {
	var shown []Picture
	for i := range all {
		if p := e.picture(&all[i]); p != nil {
			shown = append(shown, *p)
		}
	}
	return shown
}

// inProse finds a picture by what a body calls it.
func (e *edition) inProse(file, alt string) *Picture {
	img, ok := e.assets.Picture(content.PictureName(file))
	if !ok {
		return nil
	}
	return pictureOf(img, alt)
}

// proseSizes is how wide a picture in a text is, by the widths that the style
// gives to texts.
const proseSizes = "(min-width: 44rem) 42rem, 92vw"

// prosePicture writes a picture of a body.
func prosePicture(p *Picture) string {
	img := fmt.Sprintf(`<img src="%s"`, html.EscapeString(p.Src))
	if p.Srcset != "" {
		img += fmt.Sprintf(` srcset="%s" sizes="%s"`, html.EscapeString(p.Srcset), proseSizes)
	}
	img += fmt.Sprintf(` alt="%s" width="%d" height="%d" loading="lazy" decoding="async">`,
		html.EscapeString(p.Alt), p.Width, p.Height)
	if p.WebP == "" {
		return img
	}
	return fmt.Sprintf(`<picture><source type="image/webp" srcset="%s" sizes="%s">%s</picture>`,
		html.EscapeString(p.WebP), proseSizes, img)
}
