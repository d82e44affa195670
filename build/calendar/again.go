package calendar

import (
	"cmp"
	"slices"
	"strings"
	"time"

	"stillroom/build"
	"stillroom/content"
)

// An Again is an old recipe whose season comes.
type Again struct {
	Recipe   *content.Recipe
	From, To content.Date // four and two weeks before its season
	Season   content.Date // the first day of it
	Last     content.Date // when it was published or updated last
}

// Common practice, no source: readers shop and plan two to four weeks ahead,
// and have forgotten what they saw half a year ago.
const (
	earliest = 28
	latest   = 14
	old      = 182 // days from the last showing to the season
)

// againOf gives what is to be shown again from a day on and before another.
func againOf(shown []*content.Recipe, day, end content.Date) []Again {
	var all []Again
	for _, r := range shown {
		last := r.Published.V
		if u := r.Updated.V; last.Before(u) && !day.Before(u) {
			last = u
		}
		for _, m := range starts(build.Season(r)) {
			season := next(m, day)
			a := Again{r, plus(season, -earliest), plus(season, -latest), season, last}
			if a.From.Before(end) && plus(last, old).Before(season) {
				all = append(all, a)
			}
		}
	}
	slices.SortStableFunc(all, func(a, b Again) int {
		return cmp.Or(compareDays(a.Season, b.Season), strings.Compare(a.Recipe.Slug, b.Recipe.Slug))
	})
	return all
}

// starts gives the months before which a season pauses.
func starts(season []time.Month) []time.Month {
	return slices.DeleteFunc(slices.Clone(season), func(m time.Month) bool { return slices.Contains(season, build.Before(m)) })
}

// next gives the first day of the next such month that begins after a day.
func next(m time.Month, day content.Date) content.Date {
	first := content.Date{Year: day.Year, Month: m, Day: 1}
	if !day.Before(first) {
		first.Year++
	}
	return first
}

func compareDays(a, b content.Date) int {
	switch {
	case a.Before(b):
		return -1
	case b.Before(a):
		return 1
	}
	return 0
}
