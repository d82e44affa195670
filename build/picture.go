package build

import "stillroom/content"

// A Picture is an image as a page shows it.
type Picture struct {
	Src           string
	Alt           string
	Credit        string // empty if nobody is named
	Width, Height int
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
	return &Picture{Src: img.Src, Alt: p.Alt.V, Credit: p.Credit.V, Width: img.Width, Height: img.Height}
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
	return &Picture{Src: img.Src, Alt: alt, Width: img.Width, Height: img.Height}
}
