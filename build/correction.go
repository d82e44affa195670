package build

import (
	"slices"

	"stillroom/content"
)

// A Correction tells readers who have an older copy of a recipe what in it was
// wrong.
type Correction struct {
	Date Day
	Text string
}

// noticeStyles are for a page with corrections.
func noticeStyles(all []Correction) []string {
	if len(all) == 0 {
		return nil
	}
	return []string{"notice.css"}
}

// corrections gives those of a recipe, the newest first.
func corrections(r *content.Recipe) []Correction {
	sorted := slices.Clone(r.Corrections)
	slices.SortStableFunc(sorted, func(a, b content.Correction) int { return newest(a.Date.V, b.Date.V) })
	var all []Correction
	for _, c := range sorted {
		all = append(all, Correction{day(c.Date.V), typeset(c.Text.V)})
	}
	return all
}
