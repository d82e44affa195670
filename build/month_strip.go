package build

import (
	"slices"
	"time"

	"stillroom/content"
)

// A Month is a column of the year's ledger.
type Month struct {
	Name    string // July
	Short   string // Jul
	Rest    string // y
	Address string
	Here    bool   // the month that the page is about, or the one that it is
	Count   int    // recipes that are made in it
	Level   int    // how full its glass stands beside the fullest, from 0 to 10
	Fill    string // the colour of what is made most
}

// year gives the twelve months, in order, and marks one of them.
func (e *edition) year(here time.Month) []Month {
	e.months.Do(func() { e.months.year = yearOf(e) })
	year := slices.Clone(e.months.year)
	if here != 0 {
		year[here-1].Here = true
	}
	return year
}

// yearOf gives the twelve months of an edition.
func yearOf(e *edition) []Month {
	year := make([]Month, 12)
	most := 1
	for i := range year {
		m := time.Month(i + 1)
		made := e.made[m]
		year[i] = Month{
			Name: m.String(), Short: m.String()[:3], Rest: m.String()[3:], Address: monthAddress(m),
			Count: len(made), Fill: commonFill(made),
		}
		most = max(most, len(made))
	}
	for i := range year {
		year[i].Level = (year[i].Count*10 + most - 1) / most
	}
	return year
}

// commonFill is the colour that most recipes have, and of several as common
// the one of the newest recipe.
func commonFill(recipes []*content.Recipe) string {
	counts := make(map[string]int)
	for _, r := range recipes {
		counts[fill(r)]++
	}
	best := "glass"
	for _, r := range recipes {
		if f := fill(r); counts[f] > counts[best] {
			best = f
		}
	}
	return best
}
