package build

import (
	"slices"

	"stillroom/content"
)

// shown gives the pictures that an edition shows, in order of name, each once.
func shown(e *edition) []job {
	orders := orders(e.site)
	var jobs []job
	for _, name := range shownNames(e) {
		jobs = append(jobs, job{name, e.site.Pictures[name].Path, orders[name] | forPages})
	}
	return jobs
}

// orders says what pictures are printed for, by name relative to
// content/pictures, besides the sizes for pages.
func orders(s *content.Site) map[string]order {
	all := make(map[string]order)
	found := func(p *content.Picture) {
		if p != nil {
			all[p.File.V] |= forSearch
		}
	}
	for _, r := range s.Recipes {
		found(r.Picture)
	}
	for _, page := range s.Pages {
		found(page.Picture)
	}
	if p := s.Settings.Programme; p != nil {
		all[p.Picture.V] |= forFeed
	}
	return all
}

// sameOrders reports whether the orders of two sites are the same, since none of
// their files names another picture.
func sameOrders(a, b *content.Site) bool {
	return slices.EqualFunc(a.Recipes, b.Recipes, func(a, b *content.Recipe) bool { return a == b || samePicture(a.Picture, b.Picture) }) &&
		slices.EqualFunc(a.Pages, b.Pages, func(a, b *content.Page) bool { return a == b || samePicture(a.Picture, b.Picture) }) &&
		samePicture(coverOf(a), coverOf(b))
}

func samePicture(a, b *content.Picture) bool {
	return a == nil && b == nil || a != nil && b != nil && a.File.V == b.File.V
}

// coverOf gives the picture of the audio programme; nil if there is no
// programme.
func coverOf(s *content.Site) *content.Picture {
	if s.Settings.Programme == nil {
		return nil
	}
	return &content.Picture{File: s.Settings.Programme.Picture}
}

// shownNames gives the names of pictures relative to content/pictures.
func shownNames(e *edition) []string {
	var names []string
	add := func(name string) {
		if _, ok := e.site.Pictures[name]; ok {
			names = append(names, name)
		}
	}
	addBody := func(b content.Body) {
		for _, f := range b.Pictures() {
			add(f.V)
		}
	}
	if p := e.settings.Programme; p != nil {
		add(p.Picture.V)
	}
	for _, r := range e.recipes {
		for _, p := range append(slices.Clone(r.Pictures), picturesOf(r.Picture)...) {
			add(p.File.V)
		}
		addBody(r.Body)
	}
	for _, ep := range e.episodes {
		addBody(ep.Body)
	}
	for _, p := range e.pages {
		for _, p := range picturesOf(p.Picture) {
			add(p.File.V)
		}
		addBody(p.Body)
	}
	slices.Sort(names)
	return slices.Compact(names)
}

func picturesOf(p *content.Picture) []content.Picture {
	if p == nil {
		return nil
	}
	return []content.Picture{*p}
}
