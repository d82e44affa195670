package build

import (
	"slices"

	"stillroom/content"
)

// A StepChart shows what is asked of jars against altitude, as steps: from one
// edge of the published bands to the next a figure holds, and changes at once.
// Lengths across are parts of the chart's own width, lengths down are pixels,
// so that it may be as wide as the page and its words stay as large.
type StepChart struct {
	ID      string
	Name    string // Minutes at a full rolling boil, against altitude
	Told    string // the same figures in words
	Top     string // the altitude at the right end, in feet
	Lines   []StepLine
	Ticks   []StepTick
	Caption string  // what is across and what is up
	Beyond  *Beyond // where nothing is published; nil if the last band has no end
	End     string  // Nothing is published above 8,000 ft. Empty for the same
	Home    *StepMark
}

// A StepLine is what one or more sizes of jar ask for.
type StepLine struct {
	Name  string // Quart
	Under bool   // it is the lower of two, whose figures stand below it
	Steps []StairStep
	Path  string // in a square of a thousand by a thousand
}

// A StairStep is a band of altitude: a block from the ground to the line.
type StairStep struct {
	Box
	To     string // its upper end in feet; empty if it has none
	Middle string
	Word   string // how far down the figure stands
	Figure string
}

// A Beyond is the part of a chart in which nothing is published.
type Beyond struct {
	Box
	Middle string
}

// A StepTick is an edge between bands.
type StepTick struct {
	X, Text, Anchor string
	Row             int // 1 if it stands lower, since there is no room beside the last
}

// A StepMark is a place on the scale of altitude.
type StepMark struct{ X, Text, Anchor string }

// The chart's measures: its ground and its highest line, in pixels from the
// top, and where the sea and the highest altitude are, in parts of a hundred.
const (
	chartGround = 168.0
	chartSky    = 62.0
	chartSea    = 4.0
	chartEnd    = 96.0
	chartRoom   = 222.0 // pixels between them on the narrowest screen
)

// altitudeChart is what has to be drawn, before it is.
type altitudeChart struct {
	what  string // Minutes at a full rolling boil
	lines []altitudeLine
}

// stepCharts gives the pictures of a way's tables, with the author's kitchen
// marked if it is known.
func stepCharts(k *content.Keeping, id string, home content.Altitude) []StepChart {
	var drawn []StepChart
	charts := altitudeCharts(k)
	top := topOf(charts)
	for i, c := range charts {
		drawn = append(drawn, c.draw(id+"-chart-"+string(rune('a'+i)), top, home))
	}
	return drawn
}

func altitudeCharts(k *content.Keeping) []altitudeChart {
	switch k.Way.V {
	case content.BoilingWater:
		return paired("Minutes at a full rolling boil", linesOf(k.Processing, minuteBands, minuteValue))
	case content.AtmosphericSteam:
		return paired("Minutes in full, steady steam", linesOf(k.Processing, minuteBands, minuteValue))
	case content.PressureCanner:
		return append(
			paired("Pressure on a dial gauge", linesOf(k.Processing, dialBands, pressureValue)),
			paired("Pressure on a weighted gauge", linesOf(k.Processing, weightedBands, pressureValue))...)
	}
	return nil
}

// paired puts two lines into one chart where the figures of both have room: the
// lower one high enough for them to stand below it.
func paired(what string, lines []altitudeLine) []altitudeChart {
	slices.SortStableFunc(lines, func(a, b altitudeLine) int { return int(1000 * (b.most() - a.most())) })
	var charts []altitudeChart
	for i := 0; i < len(lines); i++ {
		c := altitudeChart{what, lines[i : i+1]}
		if i+1 < len(lines) && lines[i].over(lines[i+1]) && lines[i+1].bands[0].value >= lines[i].most()/4 {
			c.lines = lines[i : i+2]
			i++
		}
		charts = append(charts, c)
	}
	return charts
}

// topOf gives the altitude at which all charts of a way end, in feet: two
// thousand above the last edge, and no less than 8,000.
func topOf(charts []altitudeChart) float64 {
	top := 8000.0
	for _, c := range charts {
		for _, l := range c.lines {
			for _, b := range l.bands {
				if b.to != nil {
					edge, _ := b.to.Float64()
					top = max(top, edge+2000)
				}
			}
		}
	}
	return top
}
