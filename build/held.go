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
	Until content.Date // zero for a draft
}

// HeldBack lists what Site leaves out: what is scheduled, the soonest first,
// and then the drafts.
func HeldBack(c validate.Checked) []Held { return heldBack(c.Site(), c.Day()) }

func heldBack(site *content.Site, day content.Date) []Held {
	var held []Held
	hold := func(file string, status content.Status, published content.Date) {
		switch {
		case status == content.Draft:
			held = append(held, Held{File: file})
		case !out(status, published, day):
			held = append(held, Held{file, published})
		}
	}
	for _, r := range site.Recipes {
		hold(r.File, r.Status.V, r.Published.V)
	}
	for _, ep := range site.Episodes {
		hold(ep.File, ep.Status.V, ep.Published.V)
	}
	for _, p := range site.Pages {
		hold(p.File, p.Status.V, p.Published.V)
	}
	slices.SortStableFunc(held, func(a, b Held) int {
		if a.Until.IsZero() != b.Until.IsZero() {
			return cmp.Compare(b.Until.Year, a.Until.Year)
		}
		return cmp.Or(newest(b.Until, a.Until), cmp.Compare(a.File, b.File))
	})
	return held
}
