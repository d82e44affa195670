package build

import (
	"html/template"

	"stillroom/content"
)

// A PlainPage is one of the author's own pages.
type PlainPage struct {
	Shell
	Name    string
	Summary string
	Picture *Picture
	Text    template.HTML
	Updated Day
}

func (e *edition) plainPage(p *content.Page) (*PlainPage, error) {
	text, err := e.md.prose(p.Body.Source, p.Body.Doc).whole(p.Body.Doc)
	if err != nil {
		return nil, err
	}
	page := &PlainPage{
		Name:    p.Name.V,
		Summary: p.Summary.V,
		Picture: e.picture(p.Picture),
		Text:    text,
		Updated: day(p.Updated.V),
	}
	page.Shell = e.shell(leaf{
		address:     pageAddress(p),
		name:        p.Name.V,
		description: p.Summary.V,
		picture:     p.Picture,
	})
	return page, nil
}

// A MissingPage stands where there is no page.
type MissingPage struct {
	Shell
	Left, Right []Jar // what stands on both sides of the empty place
}

func (e *edition) missingPage() *MissingPage {
	near := jars(atMost(e.recipes, onShelf-1))
	p := &MissingPage{Left: near[:len(near)/2], Right: near[len(near)/2:]}
	p.Shell = e.shell(leaf{
		address:     "/404.html",
		name:        "An empty place on the shelf",
		description: "There is no page at this address.",
	})
	p.Vessels = vessels(near)
	p.Hidden, p.Canonical, p.Share = true, "", nil
	return p
}
