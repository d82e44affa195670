package build

import (
	"slices"

	"stillroom/themes"
	"stillroom/validate"
)

// Site gives every file of a site, in order of path: what is made of recipes is
// made when its file is opened. A nil Darkroom is the zero Darkroom.
func Site(c validate.Checked, t *themes.Theme, d *Darkroom) ([]File, error) {
	a, err := NewAssets(c, t, d)
	if err != nil {
		return nil, err
	}
	e := newEdition(c.Site(), c.Day(), a)
	pages, err := pages(e, t)
	if err != nil {
		return nil, err
	}
	products, err := e.products(pages)
	if err != nil {
		return nil, err
	}
	return arrange(slices.Concat(pages, products, a.Files()))
}

// products makes what is neither a page of its own nor an asset, most of it
// for other programs, in order of path.
func (e *edition) products(pages []File) ([]File, error) {
	manifest, err := e.manifest()
	if err != nil {
		return nil, err
	}
	return arrange(slices.Concat(
		e.atom(),
		e.jsonFeed(),
		e.programme(),
		e.sitemap(pages),
		e.robots(),
		e.recipeFiles(),
		e.chapterFiles(),
		e.redirects(),
		e.redirectList(),
		manifest,
		e.worker(),
		e.headerList(),
		e.searching().files,
	))
}
