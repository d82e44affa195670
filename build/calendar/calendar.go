// Package calendar gathers what the months ahead hold for whoever puts food up
// and writes about it: what is in season, what is to be published or shown
// again, what is to be checked again, and which jars are best used.
//
// It reads a site and a day and nothing else, so that the same day gives the
// same bytes. Seasons are those of the site's own pages.
package calendar

import (
	"time"

	"stillroom/build"
	"stillroom/content"
	"stillroom/validate"
)

// A Calendar is what is due on one day and in the months ahead.
type Calendar struct {
	Site    string // its name
	Address string // of the site; empty if it has none
	Day     content.Date
	Months  []Month            // that of the day, and those that follow
	Planned []build.Held       // what is scheduled, the soonest first
	Again   []Again            // the soonest first
	Recheck []validate.Recheck // in order of file; without drafts and what was taken back
	Best    []Best             // the soonest first
	Drafts  []build.Held       // in order of file
}

// Of gathers what a site holds for a number of months, the first of which is
// that of the day.
func Of(s *content.Site, day content.Date, months int) *Calendar {
	c := &Calendar{Site: s.Settings.Name.V, Address: s.Settings.Address.V, Day: day}
	for _, h := range build.HeldOn(s, day) {
		if h.Until.IsZero() {
			c.Drafts = append(c.Drafts, h)
		} else {
			c.Planned = append(c.Planned, h)
		}
	}
	for _, r := range validate.Rechecks(s) {
		if r.Recipe.Status.V != content.Draft && r.Recipe.Withdrawn == nil {
			c.Recheck = append(c.Recheck, r)
		}
	}
	shown := shownOn(s, day)
	end := firstOf(day, months)
	c.Months = monthsOf(shown, day, months)
	c.Again = againOf(shown, day, end)
	c.Best = bestOf(s, firstOf(day, 0), end)
	return c
}

// shownOn gives the recipes that readers can see, and make, on a day.
func shownOn(s *content.Site, day content.Date) []*content.Recipe {
	var shown []*content.Recipe
	for _, r := range s.Recipes {
		if r.Status.V != content.Draft && r.Withdrawn == nil && !day.Before(r.Published.V) {
			shown = append(shown, r)
		}
	}
	return shown
}

// firstOf gives the first day of the month that comes a number of months after
// that of a day.
func firstOf(day content.Date, months int) content.Date {
	return dateOf(time.Date(day.Year, day.Month+time.Month(months), 1, 0, 0, 0, 0, time.UTC))
}

// plus gives the day that comes a number of days after another.
func plus(day content.Date, days int) content.Date { return dateOf(day.Time().AddDate(0, 0, days)) }

func dateOf(t time.Time) content.Date {
	return content.Date{Year: t.Year(), Month: t.Month(), Day: t.Day()}
}
