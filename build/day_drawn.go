package build

import (
	"fmt"
	"strings"
)

// The measures of a day's line, in pixels: where it begins, how long the part
// drawn to scale is meant to be, a torn part, and the room that a name takes.
const (
	dayTop   = 10.0
	dayLong  = 200.0
	dayTorn  = 46.0
	dayWords = 41.0
	dayRight = 74.0 // of the line
	dayName  = 94.0 // where names begin
)

// draw sets the day out for the altitude that takes the least, and then shifts
// what follows the processing: names never come closer than they are here.
func (p dayPlan) draw() *DayLine {
	d := &DayLine{Told: p.told()}
	scale := p.scale()
	y, word := dayTop, dayTop-dayWords
	for i, s := range p.stretches {
		minutes := s.minutes
		if i == p.canned {
			minutes = p.least
		}
		long := minutes * scale
		if s.torn() {
			long = dayTorn
		}
		word = max(y+10, word+dayWords)
		d.Torn = d.Torn || s.torn()
		part := drawPart(s, y, long, word)
		switch {
		case i == p.canned:
			part.High = px(s.minutes * scale)
			d.Canned = &DayCanned{part, p.way, p.jar, px(p.least), px2(scale), px((s.minutes - p.least) * scale)}
		case d.Canned != nil:
			d.Later = append(d.Later, part)
		default:
			d.Parts = append(d.Parts, part)
		}
		y += long
	}
	d.Height = px(max(y, word+26) + (p.most-p.least)*scale + 4)
	d.Hours = p.hours(scale)
	return d
}

// scale gives the pixels of a minute.
func (p dayPlan) scale() float64 {
	total := p.most
	for i, s := range p.stretches {
		if i != p.canned && !s.torn() {
			total += s.minutes
		}
	}
	return min(1.6, max(0.4, float64(int(100*dayLong/max(total, 1)))/100))
}

// drawPart leads from where a part begins to its name.
func drawPart(s stretch, y, long, word float64) DayPart {
	part := DayPart{
		Kind: s.kind, Name: s.name, Takes: s.takes,
		Y: px(y), High: px(long), Word: px(word + 4), Line: px(word + 20),
		Lead: fmt.Sprintf("M%s %sh6L%s %sh4", px(dayRight), px(y), px(dayName-8), px(word-0.5)),
	}
	if s.torn() {
		part.Tear = px(y + long/2 - 1)
	}
	return part
}

// hours marks each hour from the beginning until something is torn short, or
// until the processing, whose length is not the same for all.
func (p dayPlan) hours(scale float64) []DayHour {
	end := 0.0
	for i, s := range p.stretches {
		if s.torn() || i == p.canned {
			break
		}
		end += s.minutes
	}
	every := 60.0
	for every*scale < 18 {
		every *= 2
	}
	var marks []DayHour
	for m := 0.0; m <= end; m += every {
		marks = append(marks, DayHour{px(dayTop + m*scale), thousands(int(m/60)) + "\u00a0h"})
	}
	return marks
}

func (p dayPlan) told() string {
	var parts []string
	for _, s := range p.stretches {
		parts = append(parts, s.name+", "+s.takes)
	}
	return "In order: " + strings.Join(parts, "; ") + "."
}

// px2 writes a scale, to a hundredth.
func px2(x float64) string { return decimal(fmt.Sprintf("%.2f", x)) }
