package build

import (
	"slices"

	"stillroom/content"
)

// shown gives the pictures that an edition shows, by name relative to
// content/pictures, in order, each once.
func shown(e *edition) []string {
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
