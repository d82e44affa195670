package build

import (
	"slices"
	"time"

	"stillroom/content"
	"stillroom/validate"
)

// Season gives the months in which a recipe is made, in order of the year: its
// own, or else those of its main produce in gardens of the northern temperate
// zone. What can be made all year has none.
//
// The months say when to look for produce, never whether it may be kept.
func Season(r *content.Recipe) []time.Month {
	var months []time.Month
	for _, m := range r.Season {
		months = append(months, m.V)
	}
	if len(months) == 0 && len(r.Produce) > 0 {
		months = slices.Clone(seasonOf(r.Produce[0].V))
	}
	slices.Sort(months)
	return slices.Compact(months)
}

// seasonOf gives the months of a kind of produce, in order of the year. Nobody
// may change them.
func seasonOf(produce string) []time.Month {
	if months, ok := lookUp(shorter, produce); ok {
		return months
	}
	p, _ := validate.LookUpProduce(produce)
	return p.Season
}

// shorter are the seasons of kinds that are one food with others in the table
// of produce, and are to be had for less of the year. Common practice, no
// source.
var shorter = map[string][]time.Month{
	"damsons":         {time.August, time.September, time.October},
	"seville oranges": {time.January, time.February, time.December},
}

// FromStart turns months that are in order of the year so that a season which
// runs over the end of a year begins with its first month: November to
// February.
func FromStart(season []time.Month) []time.Month {
	for i, m := range season {
		if !slices.Contains(season, Before(m)) {
			return slices.Concat(season[i:], season[:i])
		}
	}
	return season
}

// Before is the month before a month.
func Before(m time.Month) time.Month { return (m+10)%12 + 1 }

// ripens reports whether produce is something that a season brings. What no
// table knows may be.
func ripens(produce string) bool {
	p, known := validate.LookUpProduce(produce)
	return !known || len(p.Season) > 0
}
