package build

import "strings"

// A Share is what a preview of the page shows elsewhere, by the Open Graph
// protocol.
type Share struct {
	Type   string // article or website
	Title  string
	Locale string // en_GB; empty if the site does not name a region
	Image  *ShareImage
}

// A ShareImage has an absolute address.
type ShareImage struct {
	Address, Alt  string
	Type          string // image/jpeg
	Width, Height int
}

func (e *edition) share(l leaf) *Share {
	s := &Share{Type: "website", Title: l.name, Locale: locale(e.language())}
	if l.article {
		s.Type = "article"
	}
	if s.Title == "" {
		s.Title = e.settings.Name.V
	}
	if l.picture == nil {
		return s
	}
	if img, _ := e.assets.Picture(l.picture.File.V); img.Share != nil {
		p := img.Share
		s.Image = &ShareImage{e.absolute(p.Src), l.picture.Alt.V, p.Type, p.Width, p.Height}
	}
	return s
}

// locale gives en_GB for en-GB, and nothing for a language without a region.
func locale(language string) string {
	lang, region, ok := strings.Cut(language, "-")
	if !ok || len(region) != 2 {
		return ""
	}
	return strings.ToLower(lang) + "_" + strings.ToUpper(region)
}
