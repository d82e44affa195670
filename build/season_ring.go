package build

import (
	"slices"
	"time"

	"stillroom/content"
)

// A SeasonRing is the year as a ring of twelve months, of which those of a
// recipe's season stand out. Which month it is now is not drawn: pages are the
// same on every day that they are built.
type SeasonRing struct {
	Told   string
	Months []RingMonth
	Spans  []RingSpan
}

// A RingSpan is a run of months, written in the middle: Jul–Oct.
type RingSpan struct {
	Text string
	Y    int // of its base line, from the middle down
}

// A RingMonth is a part of the ring.
type RingMonth struct {
	Turn  int // degrees from the top, clockwise
	Short string
	Ripe  bool
}

// seasonRing is nil for what is made all year.
func seasonRing(r *content.Recipe) *SeasonRing {
	season := Season(r)
	if len(season) == 0 || len(season) == 12 {
		return nil
	}
	ring := &SeasonRing{}
	for m := time.January; m <= time.December; m++ {
		ring.Months = append(ring.Months, RingMonth{30 * (int(m) - 1), m.String()[:3], slices.Contains(season, m)})
	}
	runs := spans(season)
	var told []string
	for i, run := range runs {
		first, last := run[0].String(), run[1].String()
		text, long := first[:3]+"–"+last[:3], "from "+first+" to "+last
		if first == last {
			text, long = first[:3], "in "+first
		}
		ring.Spans = append(ring.Spans, RingSpan{text, 5 + 16*i - 8*(len(runs)-1)})
		told = append(told, long)
	}
	ring.Told = "In season " + list(told) + "."
	return ring
}

// spans gives the first and last month of each unbroken run of months. A run
// goes on over the end of the year.
func spans(season []time.Month) [][2]time.Month {
	var runs [][2]time.Month
	for _, m := range season {
		if slices.Contains(season, (m+10)%12+1) {
			continue
		}
		last := m
		for slices.Contains(season, last%12+1) {
			last = last%12 + 1
		}
		runs = append(runs, [2]time.Month{m, last})
	}
	return runs
}
