package build

import (
	"bytes"
	"fmt"
	"time"

	"stillroom/themes"
	"stillroom/validate"
)

// Pages writes every page of a site that readers open, in order of path: those
// of the contract's addresses, and 404.html. What is a draft, or scheduled for
// a day after the one that was checked for, is left out, and nothing leads to
// it.
func Pages(c validate.Checked, t *themes.Theme, a *Assets) ([]File, error) {
	return pages(newEdition(c.Site(), c.Day(), a), t)
}

func pages(e *edition, t *themes.Theme) ([]File, error) {
	s := &stack{theme: t}
	s.put(pagePath(homeAddress), "home", e.homePage())
	s.put(pagePath(recipesAddress), "recipes", e.recipesPage())
	s.put(pagePath(searchAddress), "search", e.searchPage())
	s.put("404.html", "missing", e.missingPage())
	for _, r := range e.recipes {
		page, err := e.recipePage(r)
		s.putRead(r.File, pagePath(recipeAddress(r)), "recipe", page, err)
	}
	if len(e.episodes) > 0 {
		s.put(pagePath(showNotesAddress), "show-notes", e.showNotesPage())
	}
	for i, ep := range e.episodes {
		page, err := e.episodePage(i)
		s.putRead(ep.File, pagePath(episodeAddress(ep)), "episode", page, err)
	}
	for _, p := range e.pages {
		page, err := e.plainPage(p)
		s.putRead(p.File, pagePath(pageAddress(p)), "page", page, err)
	}
	for _, h := range e.harvests {
		s.put(pagePath(h.address), "gathered", e.producePage(h))
	}
	for m := time.January; m <= time.December; m++ {
		s.put(pagePath(monthAddress(m)), "gathered", e.monthPage(m))
	}
	for _, w := range wayNames {
		if len(e.kept[w.way]) > 0 {
			s.put(pagePath(wayAddress(w.way)), "gathered", e.wayPage(w))
		}
	}
	if s.err != nil {
		return nil, s.err
	}
	return arrange(s.files)
}

// A stack gathers pages until one of them fails.
type stack struct {
	theme *themes.Theme
	files []File
	err   error
}

func (s *stack) put(path, kind string, page any) {
	if s.err != nil {
		return
	}
	var b bytes.Buffer
	if err := s.theme.Write(&b, kind, page); err != nil {
		s.err = fmt.Errorf("write %s: %w", path, err)
		return
	}
	s.files = append(s.files, File{Path: path, Data: b.Bytes()})
}

// putRead is put for a page whose file of content could not be made into one.
func (s *stack) putRead(file, path, kind string, page any, err error) {
	if err != nil && s.err == nil {
		s.err = fmt.Errorf("make a page of %s: %w", file, err)
	}
	s.put(path, kind, page)
}
