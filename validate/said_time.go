package validate

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"stillroom/content"
)

// saidTime reports a time of a process in the text that the recipe's own table
// does not have.
var saidTime = &Rule{
	ID:       "said-time",
	Severity: Error,
	Summary:  "a processing time in the text that the table does not have",
	Doc: `Many readers follow the steps and never look at the table. A time in a step, a
note or a caution must be one of the table's, for the jar and the altitude that
are named beside it: "pints take 20 minutes up to 1,000 feet". Without a jar or an
altitude any of the table's times will do. A longer one is a warning.

Times of other work are not compared: to simmer, rest, vent, stand or cool.`,
	Source: Source{
		Title:   "Of home recipes that had a process, 61% gave the right minutes: " + blogStudy.Title,
		Address: blogStudy.Address,
	},
	CheckText: checkSaidTime,
}

func checkSaidTime(t *Text) []Finding {
	if t.Recipe == nil {
		return nil
	}
	table := tableOf(t.Matches)
	var fs []Finding
	for _, said := range t.timesOfProcess() {
		if said.place == placeName {
			continue
		}
		if len(table) == 0 {
			fs = append(fs, processWithoutTable(said)...)
			continue
		}
		if miss, ok := table.misses(said); ok {
			fs = append(fs, miss.finding(said))
		}
	}
	return fs
}

// processWithoutTable reports a process in a recipe that cites none.
func processWithoutTable(said timeSaid) []Finding {
	if said.place == placeLog || said.place == placePicture {
		return nil
	}
	return []Finding{{
		Pos:     said.pos(said.from),
		Message: "a process in the text, and none among the ways of keeping",
		Advice:  "Give the way of keeping with the process that it cites, or take the process out.",
	}}
}

// A timeTable is every time that a recipe's ways of keeping give.
type timeTable []timeEntry

// A timeEntry is a time of the table: for a jar and a stretch of altitude.
type timeEntry struct {
	jar     content.Jar
	holds   *big.Rat // what the jar holds in millilitres; nil for no jar
	span    *span    // nil for a pressure canner's time
	text    string
	minutes *big.Rat
	pos     content.Pos
	way     content.Way
}

func tableOf(matches []*Match) (table timeTable) {
	for _, m := range matches {
		way := m.Keeping.Way.V
		if !way.Canned() {
			continue
		}
		for _, p := range m.Keeping.Processing {
			holds := p.Jar.V.Millilitres()
			if p.Time.Set() && way == content.PressureCanner {
				table = append(table, timeEntry{p.Jar.V, holds, nil, "", p.Time.V.Minutes(), p.Time.Pos, way})
			}
			for _, b := range p.Altitude {
				if b.Value.Set() {
					s := spanOf(b)
					table = append(table, timeEntry{p.Jar.V, holds, &s, b.Text, b.Value.V.Minutes(), b.Value.Pos, way})
				}
			}
		}
	}
	return table
}

// A timeMiss is a time said beside those that it should be one of.
type timeMiss struct {
	right []timeEntry
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
	for _, n := range []ratio{said.low, said.high} {
		minutes := mention{low: n, high: n, unit: said.unit}.in(content.Minute)
		if minutes == nil || right.has(minutes) {
			continue
		}
		miss.short = miss.short || minutes.Cmp(right.most()) < 0
		if said.height != nil || miss.short || minutes.Cmp(right.most()) > 0 {
			return miss, true
		}
	}
	return miss, false
}

// forJars keeps the entries of some sizes; of a size that has none, those of
// the next size up. Without a size all entries are kept.
func (table timeTable) forJars(sizes []string) (kept timeTable) {
	if len(sizes) == 0 {
		return table
	}
	for _, size := range sizes {
		jar := jarNamed(size)
		next := table.nextJar(jar.Millilitres())
		for _, e := range table {
			if next != nil && e.holds != nil && e.holds.Cmp(next) == 0 {
				kept = append(kept, e)
			}
		}
	}
	return kept
}

// nextJar gives the volume of the smallest jar of the table that is not under
// one; nil if all are.
func (table timeTable) nextJar(jar *big.Rat) (next *big.Rat) {
	for _, e := range table {
		if e.holds != nil && e.holds.Cmp(jar) >= 0 && (next == nil || e.holds.Cmp(next) < 0) {
			next = e.holds
		}
	}
	return next
}

// forHeight keeps, of each size of jar, the longest entries among those that a
// stretch of altitude touches.
func (table timeTable) forHeight(h *height) (kept timeTable) {
	if h == nil {
		return table
	}
	most := map[string]*big.Rat{}
	for _, e := range table {
		size := e.jar.String()
		if e.touches(h) && (most[size] == nil || e.minutes.Cmp(most[size]) > 0) {
			most[size] = e.minutes
		}
	}
	for _, e := range table {
		if m := most[e.jar.String()]; e.touches(h) && m != nil && e.minutes.Cmp(m) == 0 || e.span == nil {
			kept = append(kept, e)
		}
	}
	return kept
}

// touches reports whether an entry is for some altitude of a stretch.
func (e timeEntry) touches(h *height) bool {
	switch {
	case e.span == nil:
		return false
	case h.top:
		return e.span.to == nil
	}
	return e.span.overlaps(h.span)
}

// overlaps reports whether two stretches of altitude have a height in common.
// A said edge that is the end of a band is the band's own, also where the next
// one begins a foot higher.
func (s span) overlaps(o span) bool {
	below := func(a, b span) bool { // a ends before b begins
		if a.to == nil {
			return false
		}
		c := a.to.Cmp(b.from)
		return c < 0 || c == 0 && (b.over || a.to.Sign() > 0 && a.from.Cmp(a.to) < 0)
	}
	return !below(s, o) && !below(o, s)
}

func (table timeTable) has(minutes *big.Rat) bool {
	return slices.ContainsFunc(table, func(e timeEntry) bool { return e.minutes.Cmp(minutes) == 0 })
}

func (table timeTable) most() *big.Rat {
	most := new(big.Rat)
	for _, e := range table {
		if e.minutes.Cmp(most) > 0 {
			most = e.minutes
		}
	}
	return most
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
		if j := e.jar.String(); !slices.Contains(jars, j) {
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
