package build

import (
	"cmp"
	"slices"

	"stillroom/content"
	"stillroom/validate"
)

// A Held is something that readers do not get to see yet.
type Held struct {
	File  string       // content/recipes/damson-jam.md
	Name  string       // Damson jam; empty if it was not written
	Until content.Date // zero for a draft
}

// HeldBack lists what Site leaves out: what is scheduled, the soonest first,
// and then the drafts.
func HeldBack(c validate.Checked) []Held { return HeldOn(c.Site(), c.Day()) }

// HeldOn lists the same of any site, as of a day.
func HeldOn(site *content.Site, day content.Date) []Held {
	var held []Held
	hold := func(file, name string, status content.Status, published content.Date) {
		switch {
		case status == content.Draft:
			held = append(held, Held{File: file, Name: name})
		case !out(status, published, day):
			held = append(held, Held{file, name, published})
		}
	}
	for _, r := range site.Recipes {
		hold(r.File, r.Name.V, r.Status.V, r.Published.V)
	}
	for _, ep := range site.Episodes {
		hold(ep.File, ep.Name.V, ep.Status.V, ep.Published.V)
	}
	for _, p := range site.Pages {
		hold(p.File, p.Name.V, p.Status.V, p.Published.V)
	}
	slices.SortStableFunc(held, func(a, b Held) int {
		if a.Until.IsZero() != b.Until.IsZero() {
			return cmp.Compare(b.Until.Year, a.Until.Year)
		}
		return cmp.Or(newest(b.Until, a.Until), cmp.Compare(a.File, b.File))
	})
	return held
}
