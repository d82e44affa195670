package build

import (
	"bytes"
	"fmt"
	"strings"
	"time"

	"stillroom/content"
	"stillroom/themes"
)

// A sheet is a page that is not made yet.
type sheet struct {
	path, kind string
	of         string // the file of content that it is made of; empty if it gathers many
	page       func() (any, error)
}

// file is the page as a theme writes it.
func (s sheet) file(t *themes.Theme) File {
	return printed(s.path, func(b *bytes.Buffer) error {
		page, err := s.page()
		if err != nil {
			return fmt.Errorf("make a page of %s: %w", s.of, err)
		}
		if err := t.Write(b, s.kind, page); err != nil {
			return fmt.Errorf("write %s: %w", s.path, err)
		}
		return nil
	})
}

// sheets gives every page that readers open, until yield has seen enough. It is
// the one list of them: what is published is all of it, and a preview takes
// what is looked at.
func (e *edition) sheets(yield func(sheet) bool) {
	_ = e.ownSheets(yield) && e.recipeSheets(yield) && e.withdrawnSheets(yield) && e.episodeSheets(yield) && e.plainSheets(yield) && e.gatheredSheets(yield)
}

// sheetAt finds the page at a path. A recipe's are not looked for among those
// of all others.
func (e *edition) sheetAt(path string) (found sheet, ok bool) {
	look := func(s sheet) bool {
		if s.path == path {
			found, ok = s, true
		}
		return !ok
	}
	slug, _, _ := strings.Cut(strings.TrimPrefix("/"+path, recipesAddress), "/")
	if r, known := e.recipe[slug]; known {
		e.sheetsOf(r, look)
	}
	if !ok {
		e.sheets(look)
	}
	return found, ok
}

// ownSheets are the pages that every site has.
func (e *edition) ownSheets(yield func(sheet) bool) bool {
	return yield(sheet{path: pagePath(homeAddress), kind: "home", page: ready(e.homePage)}) &&
		yield(sheet{path: pagePath(recipesAddress), kind: "recipes", page: ready(e.recipesPage)}) &&
		yield(sheet{path: pagePath(searchAddress), kind: "search", page: ready(e.searchPage)}) &&
		yield(sheet{path: "404.html", kind: "missing", page: ready(e.missingPage)}) &&
		yield(sheet{path: "offline.html", kind: "offline", page: ready(e.offlinePage)})
}

func (e *edition) recipeSheets(yield func(sheet) bool) bool {
	for _, r := range e.recipes {
		if !e.sheetsOf(r, yield) {
			return false
		}
	}
	return true
}

// sheetsOf are the pages of one recipe.
func (e *edition) sheetsOf(r *content.Recipe, yield func(sheet) bool) bool {
	telling := func(page func(told) any) func() (any, error) {
		return func() (any, error) {
			t, err := e.told.of(r, func() (told, error) { return e.tell(r) })
			if err != nil {
				return nil, err
			}
			return page(t), nil
		}
	}
	page := telling(func(t told) any { return e.recipePage(t) })
	card := telling(func(t told) any { return e.cardPage(t) })
	return yield(sheet{path: pagePath(recipeAddress(r)), kind: "recipe", of: r.File, page: page}) &&
		yield(sheet{path: pagePath(cardAddress(r)), kind: "card", of: r.File, page: card})
}

// withdrawnSheets stand at the addresses of recipes that were taken back.
func (e *edition) withdrawnSheets(yield func(sheet) bool) bool {
	for _, r := range e.withdrawn {
		page := func() *WithdrawnPage { return e.withdrawnPage(r) }
		card := func() *WithdrawnPage { return e.withdrawnCard(r) }
		if !yield(sheet{path: pagePath(recipeAddress(r)), kind: "withdrawn", of: r.File, page: ready(page)}) ||
			!yield(sheet{path: pagePath(cardAddress(r)), kind: "withdrawn", of: r.File, page: ready(card)}) {
			return false
		}
	}
	return true
}

func (e *edition) episodeSheets(yield func(sheet) bool) bool {
	list := sheet{path: pagePath(showNotesAddress), kind: "show-notes", page: ready(e.showNotesPage)}
	if len(e.episodes) > 0 && !yield(list) {
		return false
	}
	for i, ep := range e.episodes {
		s := sheet{path: pagePath(episodeAddress(ep)), kind: "episode", of: ep.File}
		s.page = func() (any, error) { return e.episodePage(i) }
		if !yield(s) {
			return false
		}
	}
	return true
}

func (e *edition) plainSheets(yield func(sheet) bool) bool {
	for _, p := range e.pages {
		s := sheet{path: pagePath(pageAddress(p)), kind: "page", of: p.File}
		s.page = func() (any, error) { return e.plainPage(p) }
		if !yield(s) {
			return false
		}
	}
	return true
}

// gatheredSheets are the pages of a produce, a month or a way of keeping.
func (e *edition) gatheredSheets(yield func(sheet) bool) bool {
	put := func(address string, page func() *GatheredPage) bool {
		return yield(sheet{path: pagePath(address), kind: "gathered", page: ready(page)})
	}
	for _, h := range e.harvests {
		if !put(h.address, func() *GatheredPage { return e.producePage(h) }) {
			return false
		}
	}
	for m := time.January; m <= time.December; m++ {
		if !put(monthAddress(m), func() *GatheredPage { return e.monthPage(m) }) {
			return false
		}
	}
	for _, w := range wayNames {
		if len(e.kept[w.way]) > 0 && !put(wayAddress(w.way), func() *GatheredPage { return e.wayPage(w) }) {
			return false
		}
	}
	return true
}

// ready is for pages that can always be made.
func ready[P any](page func() P) func() (any, error) {
	return func() (any, error) { return page(), nil }
}
