package calendar

import (
	"cmp"
	"slices"
	"strings"
	"time"

	"stillroom/build"
	"stillroom/content"
)

// A Month is what is put up in it.
type Month struct {
	First content.Date // its first day
	Ripe  []Ripe       // in order of produce
}

// A Ripe is produce that recipes are made of in a month. What recipes are made
// of all year is in no month.
type Ripe struct {
	Produce string            // as the first recipe writes it
	Recipes []*content.Recipe // in order of name
	Starts  bool              // none of the produce is put up in the month before
	Ends    bool              // nor in the month after
	Until   time.Month        // the last of the months without a break
}

// monthsOf gives a number of months, the first of which is that of the day.
func monthsOf(shown []*content.Recipe, day content.Date, n int) []Month {
	var year [12][]Ripe
	for i := range year {
		year[i] = ripeIn(shown, time.Month(i+1))
	}
	inMonth := func(produce string, m time.Month) bool {
		return slices.ContainsFunc(year[m-1], func(r Ripe) bool { return r.Produce == produce })
	}
	all := make([]Month, n)
	for i := range all {
		first := firstOf(day, i)
		all[i] = Month{First: first, Ripe: slices.Clone(year[first.Month-1])}
		for j := range all[i].Ripe {
			r := &all[i].Ripe[j]
			r.Starts = !inMonth(r.Produce, build.Before(first.Month))
			r.Until = first.Month
			for next := after(r.Until); next != first.Month && inMonth(r.Produce, next); next = after(next) {
				r.Until = next
			}
			r.Ends = r.Until == first.Month
		}
	}
	return all
}

func after(m time.Month) time.Month { return m%12 + 1 }

// ripeIn groups the recipes of a month by their main produce.
func ripeIn(shown []*content.Recipe, m time.Month) []Ripe {
	var all []Ripe
	at := make(map[string]int)
	for _, r := range shown {
		if len(r.Produce) == 0 || !slices.Contains(build.Season(r), m) {
			continue
		}
		produce := r.Produce[0].V
		i, ok := at[produce]
		if !ok {
			i = len(all)
			at[produce] = i
			all = append(all, Ripe{Produce: produce})
		}
		all[i].Recipes = append(all[i].Recipes, r)
	}
	for _, r := range all {
		slices.SortStableFunc(r.Recipes, byName)
	}
	slices.SortFunc(all, func(a, b Ripe) int { return strings.Compare(a.Produce, b.Produce) })
	return all
}

func byName(a, b *content.Recipe) int {
	return cmp.Or(strings.Compare(strings.ToLower(a.Name.V), strings.ToLower(b.Name.V)), strings.Compare(a.Slug, b.Slug))
}
