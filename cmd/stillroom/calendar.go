package main

import (
	"errors"
	"fmt"

	"stillroom/build/calendar"
)

const calendarHelp = `Tell what the months ahead hold: what is in season now and what ripens next,
what is scheduled, which old recipes to show again two to four weeks before
their season, which recipes to check again and why, which jars are best used,
and which drafts wait.

    stillroom calendar [SITE] [--date DATE] [--months N] [--format ics]

    --date DATE     as of that day and not of today: 2026-07-31
    --months N      how many months ahead, with that of the day; 4 if left out,
                    and 12 in an iCalendar file
    --format text   a sheet to print and pin to the wall
    --format ics    an iCalendar file. Read into a calendar again, it changes
                    what is there and adds nothing twice

For example:

    stillroom calendar --months 6
    stillroom calendar --format ics > larder.ics

Seasons are those that the recipes name, and else those of gardens in the
northern temperate zone: a garden in the south names its own. Jars are dated by
the batches in the recipes' log and the time that the recipe keeps; the log does
not say whether any are left.

It ends with 0, and with 2 if it could not run. Errors of the site do not stop it.
`

type calendarCommand struct {
	Site   string `arg:"" optional:"" default:"."`
	Date   day
	Months *int
	Format string `enum:"text,ics" default:"text"`
}

func (c *calendarCommand) run(p *program) int {
	months, err := c.months()
	if err != nil {
		return p.fail(err)
	}
	progress := p.startProgress()
	site, faults, err := p.read(c.Site, progress)
	progress.end()
	if err != nil {
		return p.fail(err)
	}
	if len(faults) > 0 {
		p.say("%s could not be read, and may be missing here: see stillroom check.", count(len(faults), "place"))
	}
	ahead := calendar.Of(site, c.Date.orToday(), months)
	out := []byte(ahead.Text())
	if c.Format == "ics" {
		if out = ahead.ICalendar(); out == nil {
			p.say("Nothing is ahead to put into a calendar.")
		}
	}
	if _, err := p.out.Write(out); err != nil {
		return p.fail(fmt.Errorf("write the calendar: %w", err))
	}
	return succeeded
}

// months is how many months are looked ahead.
func (c *calendarCommand) months() (int, error) {
	switch {
	case c.Months == nil && c.Format == "ics":
		return 12, nil
	case c.Months == nil:
		return 4, nil
	case *c.Months < 1 || *c.Months > 24:
		return 0, errors.New("--months: write a number from 1 to 24")
	}
	return *c.Months, nil
}
