package validate

import (
	"fmt"
	"io/fs"

	"stillroom/content"
)

// coverSmall reports a picture of the programme that directories refuse.
var coverSmall = &Rule{
	ID:       "cover-small",
	Severity: Warning,
	Summary:  "a picture of the programme that is drawn, or smaller than directories take",
	Doc: `Directories show the programme's picture as a square of 1,400 to 3,000 pixels, as JPEG
or PNG. The middle of a larger picture is taken and made to fit. A smaller one is
not made larger, and a drawing in SVG is no picture to them: the programme is then
refused, or shown without one.`,
	Source: Source{Title: "PSP-1, The Podcast RSS Standard (2023-08-07)"},
	CheckSite: func(s *content.Site) []Finding {
		if s.Settings.Programme == nil {
			return nil
		}
		return checkCover(s, s.Settings.Programme.Picture)
	},
}

// coverSide is the least that a side of the picture may have, in pixels.
const coverSide = 1400

func checkCover(s *content.Site, picture content.Field[string]) []Finding {
	file, ok := s.Pictures[picture.V]
	if !ok {
		return nil // told by another rule, as is a broken one
	}
	data, err := fs.ReadFile(s.FS, file.Path)
	if err != nil {
		return nil
	}
	img, err := content.ReadImage(file.Path, data)
	switch {
	case err != nil:
		return nil
	case img.Format == "SVG":
		return []Finding{{Pos: picture.Pos, Message: "the programme's picture is a drawing, and its feed goes without one",
			Advice: "Save it as a PNG of 3,000 by 3,000 pixels."}}
	case min(img.Width, img.Height) < coverSide:
		return []Finding{{Pos: picture.Pos,
			Message: fmt.Sprintf("the programme's picture has %d by %d pixels, and directories want %d or more on each side", img.Width, img.Height, coverSide),
			Advice:  "Put a larger one in its place, up to 3,000 by 3,000 pixels."}}
	}
	return nil
}
