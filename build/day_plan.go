package build

import (
	"math/big"
	"strings"

	"stillroom/content"
)

// A stretch is a part of the day before it is drawn.
type stretch struct {
	kind, name, takes string
	minutes           float64
}

// longWait is the longest wait, in minutes, that is drawn to scale.
const longWait = 180

func (s stretch) torn() bool { return s.kind == "rest" && s.minutes > longWait }

// A dayPlan is all stretches of a day, and which of them is the processing.
type dayPlan struct {
	stretches   []stretch
	canned      int // index of the processing; -1 if there is none
	way, jar    string
	least, most float64 // minutes of processing
}

func planDay(r *content.Recipe, home content.Altitude) dayPlan {
	p := dayPlan{canned: -1}
	add := func(s stretch) {
		if s.minutes > 0 {
			p.stretches = append(p.stretches, s)
		}
	}
	can := p.processing(r, home)
	before, after := waits(r)
	cooking := minutesOf(r.Times.Cooking.V) - can.minutes
	add(taking("hands", "Hands on", r.Times.HandsOn.V))
	for _, w := range before {
		add(w)
	}
	add(stretch{"cook", "Cooking", clockText(cooking), cooking})
	for _, w := range after {
		add(w)
	}
	if can.minutes > 0 {
		p.canned = len(p.stretches)
		add(can)
		add(cooling(r))
	}
	if more := minutesOf(r.Times.Waiting.V) - p.waiting(); more >= shortestWait {
		add(stretch{"rest", "Waiting", waitText(more), more})
	}
	return p
}

// waiting gives the minutes of all waits.
func (p *dayPlan) waiting() float64 {
	all := 0.0
	for _, s := range p.stretches {
		if s.kind == "rest" {
			all += s.minutes
		}
	}
	return all
}

// waitText writes minutes as days where they are whole ones.
func waitText(minutes float64) string {
	if days := int(minutes) / (24 * 60); days > 1 && int(minutes)%(24*60) == 0 {
		return thousands(days) + "\u00a0days"
	}
	return clockText(minutes)
}

func taking(kind, name string, d content.Duration) stretch {
	return stretch{kind, name, typeset(d.Text), minutesOf(d)}
}

// minutesOf gives a duration at its longest; 0 if there is none.
func minutesOf(d content.Duration) float64 {
	q, ok := d.In(content.Minute)
	if !ok {
		return 0
	}
	m, _ := q.High.Float64()
	return m
}

// processing gives the stretch in the canner, which the time for cooking has in
// it, at the author's altitude or else at the lowest. It is zero where the main
// way of keeping needs none.
func (p *dayPlan) processing(r *content.Recipe, home content.Altitude) stretch {
	if len(r.Keeping) == 0 || !r.Keeping[0].Way.V.Canned() || len(r.Keeping[0].Processing) == 0 {
		return stretch{}
	}
	row := r.Keeping[0].Processing[0]
	p.way, p.jar = keepingIDs(r)[0], row.Jar.V.String()
	if row.Time.Set() {
		p.least = minutesOf(row.Time.V)
		p.most = p.least
		return stretch{"can", "Processing", clockText(p.least) + " at pressure", p.least}
	}
	if len(row.Altitude) == 0 {
		return stretch{}
	}
	at := row.Altitude[0]
	where := strings.ReplaceAll(at.Text, "-", "–")
	for _, b := range row.Altitude {
		m := minutesOf(b.Value.V)
		if p.least == 0 || m < p.least {
			p.least = m
		}
		p.most = max(p.most, m)
		if within(b, home.Feet()) {
			at, where = b, home.Text
		}
	}
	m := minutesOf(at.Value.V)
	return stretch{"can", "Processing", clockText(m) + " at " + typeset(where), m}
}

// within reports whether an altitude, in feet, lies in a band.
func within[T any](b content.Band[T], feet *big.Rat) bool {
	if feet == nil {
		return false
	}
	from := b.From.Feet().Cmp(feet)
	return (from < 0 || from == 0 && !b.Over) && (b.To.IsZero() || feet.Cmp(b.To.Feet()) <= 0)
}

// clockText writes minutes as hours and minutes: 1 h 35 min.
func clockText(minutes float64) string {
	h, m := int(minutes)/60, int(minutes)%60
	switch {
	case h == 0:
		return thousands(m) + "\u00a0min"
	case m == 0:
		return thousands(h) + "\u00a0h"
	}
	return thousands(h) + "\u00a0h " + thousands(m) + "\u00a0min"
}
