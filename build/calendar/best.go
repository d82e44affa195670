package calendar

import (
	"cmp"
	"math/big"
	"slices"
	"strings"

	"stillroom/build/labels"
	"stillroom/content"
)

// A Best is a batch of the kitchen log and the day up to which it is at its
// best, as on its label. It is a limit of quality: the log does not say whether
// any of it is left.
type Best struct {
	Recipe *content.Recipe
	Batch  *content.Batch
	Way    *content.Keeping // how it is kept
	By     content.Date
}

// bestOf gives the batches that reach their day from one day on and before
// another.
func bestOf(s *content.Site, from, end content.Date) []Best {
	var all []Best
	for _, r := range s.Recipes {
		if len(r.Keeping) == 0 || r.Withdrawn != nil {
			continue
		}
		for i := range r.Batches {
			b := &r.Batches[i]
			if !b.Made.Set() {
				continue
			}
			way := wayOf(r, b)
			by := labels.BestBy(b.Made.V, way.Keeps.V)
			if !by.IsZero() && !by.Before(from) && by.Before(end) {
				all = append(all, Best{r, b, way, by})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b Best) int {
		return cmp.Or(compareDays(a.By, b.By), strings.Compare(a.Recipe.Slug, b.Recipe.Slug))
	})
	return all
}

// wayOf gives the way in which a batch is kept. The log does not say; of
// several ways it is the one that is made from a batch of that factor, and else
// the first.
func wayOf(r *content.Recipe, b *content.Batch) *content.Keeping {
	for i := range r.Keeping {
		if sameFactor(r.Keeping[i].Factor.V.Low, b.Factor.V.Low) {
			return &r.Keeping[i]
		}
	}
	return &r.Keeping[0]
}

// sameFactor compares two factors; none is once.
func sameFactor(a, b *big.Rat) bool { return cmp.Or(a, once).Cmp(cmp.Or(b, once)) == 0 }

var once = big.NewRat(1, 1)
