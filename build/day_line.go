package build

import "stillroom/content"

// A DayLine is the day that a recipe takes, from top to bottom: what has to be
// done or waited for, in its order. Hours of work are drawn to scale; a long
// wait is torn short.
type DayLine struct {
	Told   string
	Height string
	Torn   bool // at least one part is drawn short
	Hours  []DayHour
	Parts  []DayPart // up to the processing
	Canned *DayCanned
	Later  []DayPart // after the processing
}

// A DayPart is a stretch of the day.
type DayPart struct {
	Kind  string // hands, cook, rest, can
	Name  string // Hands on
	Takes string // 1 h 30 min
	Y     string // where it begins
	High  string
	Tear  string // where a part that is drawn short is torn; else empty
	Word  string // how far down its name stands
	Line  string // where what it takes stands
	Lead  string // path from the part to its name
}

// A DayCanned is the processing, which depends on the reader's altitude.
type DayCanned struct {
	DayPart
	Way   string // the anchor of the way of keeping: keeping-boiling-water
	Jar   string // quart
	Least string // minutes at the altitude that takes the least
	Scale string // pixels a minute
	Shift string // how much lower all that follows stands than for the least
}

// A DayHour is a mark on the scale.
type DayHour struct{ Y, Text string }

// dayLine is nil where a recipe says too little of its times: less than two
// stretches are no line.
func dayLine(r *content.Recipe, home content.Altitude) *DayLine {
	p := planDay(r, home)
	if len(p.stretches) < 2 {
		return nil
	}
	return p.draw()
}
