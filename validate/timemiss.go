package validate

import (
	"fmt"
	"slices"
	"strings"

	"stillroom/content"
)

// A timeMiss is a time said beside those that it should be one of.
type timeMiss struct {
	right timeTable
	short bool // it is under one of them
}

// misses compares a time that was said with the table.
func (table timeTable) misses(said timeSaid) (timeMiss, bool) {
	right := table.forJars(said.jars)
	right = right.forHeight(said.height)
	if len(right) == 0 {
		return timeMiss{}, false
	}
	miss := timeMiss{right: right}
	for i, n := range []ratio{said.low, said.high} {
		if i > 0 && n == said.low {
			break
		}
		minutes := inMinutes(n, said.unit)
		if right.has(minutes) {
			continue
		}
		beside := minutes.compare(right.most())
		miss.short = miss.short || beside < 0
		if said.height != nil || miss.short || beside > 0 {
			return miss, true
		}
	}
	return miss, false
}

func (m timeMiss) finding(said timeSaid) Finding {
	f := Finding{
		Pos:     said.pos(said.from),
		Message: fmt.Sprintf("%s here, where the table has %s", said.words(said.from, said.to), m.wanted()),
		Advice:  "Write the time of the table, or leave it to the table.",
		Notes:   []Note{{Pos: m.right[0].pos, Message: "the table's time"}},
	}
	if said.unit == content.Minute && !strings.Contains(f.Message, "min") {
		f.Message = fmt.Sprintf("%s min here, where the table has %s", said.words(said.from, said.to), m.wanted())
	}
	if !m.short {
		f.Severity = Warning
	}
	return f
}

// wanted names the times that would be right.
func (m timeMiss) wanted() string {
	var times, jars, bands []string
	for _, e := range m.right {
		if n := e.minutes.RatString(); !slices.Contains(times, n) {
			times = append(times, n)
		}
		if j := e.size; !slices.Contains(jars, j) {
			jars = append(jars, j)
		}
		if e.text != "" && !slices.Contains(bands, e.text) {
			bands = append(bands, e.text)
		}
	}
	s := orList(times) + " min"
	if len(bands) == 1 {
		s += " at " + bands[0]
	}
	if len(jars) == 1 {
		s += " for " + jars[0] + " jars"
	}
	return s
}
