package build

import (
	"fmt"
	"math/big"
	"strings"

	"stillroom/content"
)

// draw works out where everything stands in a chart that ends at an altitude.
func (c altitudeChart) draw(id string, top float64, home content.Altitude) StepChart {
	s := StepChart{ID: id, Name: c.what + ", against altitude", Top: px(top), Told: c.told(), Caption: c.caption()}
	high := c.lines[0].most()
	for i, l := range c.lines {
		s.Lines = append(s.Lines, l.draw(top, high, i > 0))
	}
	s.Ticks = c.ticks(top)
	if last := c.lines[0].last(); last.to != nil {
		x := across(last.to, top)
		s.Beyond = &Beyond{Box{px(x), px(chartSky - 20), px(100 - x), px(chartGround - chartSky + 20)}, px((x + 100) / 2)}
		s.End = "Nothing is published above " + last.edge + "\u00a0" + string(last.unit) + "."
	}
	if feet := home.Feet(); feet != nil {
		x := across(feet, top)
		s.Home = &StepMark{X: px(x), Text: "our kitchen, " + typeset(home.Text), Anchor: anchor(x)}
	}
	return s
}

// caption says what goes up, and what goes across.
func (c altitudeChart) caption() string {
	first := c.lines[0].bands[0]
	up, across := "", "feet"
	if u := first.figure.Unit; u != "min" {
		up = ", in " + u
	}
	if first.unit == content.Metre {
		across = "metres"
	}
	return c.what + up + ", against altitude in " + across + "."
}

// across gives the place of an altitude, in parts of a hundred.
func across(feet *big.Rat, top float64) float64 {
	f, _ := feet.Float64()
	return chartSea + (chartEnd-chartSea)*min(f, top)/top
}

// anchor keeps words within the chart.
func anchor(x float64) string {
	switch {
	case x < 30:
		return "start"
	case x > 70:
		return "end"
	}
	return "middle"
}

func (l altitudeLine) draw(top, high float64, under bool) StepLine {
	line := StepLine{Name: l.name, Under: under}
	var path strings.Builder
	for i, b := range l.bands {
		left, right := across(b.from, top), 100.0
		if i > 0 && l.bands[i-1].to != nil {
			left = across(l.bands[i-1].to, top) // 1,001 ft begins where 1,000 ft ends
		}
		step := StairStep{Figure: b.figure.Number}
		if b.to != nil {
			right = across(b.to, top)
			step.To = decimal(b.to.FloatString(4))
		}
		y := chartGround - (chartGround-chartSky)*b.value/max(high, 1)
		word := y - 7
		if under {
			word = y + 18
		}
		step.Box = Box{X: px(left), Y: px(y), Width: px(max(right-left, 0)), Height: px(chartGround - y)}
		step.Middle, step.Word = px(left/2+min(right, chartEnd)/2), px(word)
		line.Steps = append(line.Steps, step)
		command := "V"
		if i == 0 {
			command = "M" + px(10*left) + " "
		}
		fmt.Fprintf(&path, "%s%sH%s", command, px(y), px(10*right))
	}
	line.Path = path.String()
	return line
}

// ticks gives the edges of all bands, each once, and the sea.
func (c altitudeChart) ticks(top float64) []StepTick {
	edges := []altitudeBand{{to: new(big.Rat), edge: "0"}}
	for _, l := range c.lines {
		for _, b := range l.bands {
			if b.to != nil {
				edges = insertEdge(edges, b)
			}
		}
	}
	var ticks []StepTick
	ends := [2]float64{-1, -1} // of the last word in each row, in pixels of the narrowest screen
	for i, e := range edges {
		t := StepTick{X: px(across(e.to, top)), Text: e.edge, Anchor: "middle"}
		if i == len(edges)-1 {
			t.Text += "\u00a0" + string(e.unit)
		}
		middle := across(e.to, top) / 100 * chartRoom / (chartEnd - chartSea) * 100
		half := 3.4*float64(len([]rune(t.Text))) + 2
		if middle-half < ends[0] {
			t.Row = 1
		}
		ends[t.Row] = middle + half
		ticks = append(ticks, t)
	}
	return ticks
}

// insertEdge keeps edges in order, each once.
func insertEdge(edges []altitudeBand, b altitudeBand) []altitudeBand {
	for i, e := range edges {
		switch b.to.Cmp(e.to) {
		case 0:
			return edges
		case -1:
			return append(edges[:i:i], append([]altitudeBand{b}, edges[i:]...)...)
		}
	}
	return append(edges, b)
}

// told says all figures in words.
func (c altitudeChart) told() string {
	var lines []string
	for _, l := range c.lines {
		var parts []string
		for _, b := range l.bands {
			parts = append(parts, b.figure.Number+"\u00a0"+b.figure.Unit+" "+b.reach())
		}
		lines = append(lines, l.name+": "+strings.Join(parts, ", ")+".")
	}
	return strings.Join(lines, " ")
}

// reach says up to where a band goes, or that it has no end.
func (b altitudeBand) reach() string {
	switch {
	case b.to != nil:
	case b.from.Sign() == 0:
		return "at every altitude"
	default:
		return "above that"
	}
	return "up to " + b.edge + "\u00a0" + string(b.unit)
}
