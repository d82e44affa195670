package build

import (
	"fmt"

	"stillroom/content"
	"stillroom/validate"
)

// A KeepingBlock is one way of keeping a recipe, with all its figures.
type KeepingBlock struct {
	ID      string // keeping-boiling-water
	Heading string // On the shelf, from boiling water
	Address string // of the page for the way
	Canned  bool
	Batch   string // how large a batch it takes, if not the ingredients' own
	Facts   []Fact
	Tables  []AltitudeTable
	Before  string   // what comes before the clock: jars, venting
	Empty   int      // minutes for which empty jars are boiled at the sea; 0 if they need not be
	Clock   string   // when the clock starts
	Start   string   // what the reader says when it starts: It is at a full rolling boil
	Jars    []string // sizes that there is a time for
	Agrees  *Agreement
	Why     []Why       // what its headspace and its acid are for, unless Section says so
	Section *JarSection // nil where there is no headspace to show
	Charts  []StepChart // pictures of Tables
}

// A Fact is a named figure on a label.
type Fact struct {
	ID   string // by which the page's script finds it; mostly empty
	Name string
	Figure
	Note string
}

func (e *edition) keepingBlocks(r *content.Recipe) []KeepingBlock {
	var blocks []KeepingBlock
	for i, id := range keepingIDs(r) {
		b := keepingBlock(&r.Keeping[i])
		b.ID = id
		b.Why = whys(r, &r.Keeping[i])
		if b.Section = jarSection(&r.Keeping[i], id); b.Section != nil {
			b.Section.Why, b.Why = &b.Why[0], b.Why[1:]
		}
		b.Charts = stepCharts(&r.Keeping[i], id, e.settings.Altitude.V)
		blocks = append(blocks, b)
	}
	return blocks
}

// keepingIDs gives the anchor of each way of keeping.
func keepingIDs(r *content.Recipe) []string {
	var ids []string
	times := make(map[content.Way]int)
	for _, k := range r.Keeping {
		id := "keeping-" + string(k.Way.V)
		if times[k.Way.V]++; times[k.Way.V] > 1 {
			id = fmt.Sprintf("%s-%d", id, times[k.Way.V])
		}
		ids = append(ids, id)
	}
	return ids
}

func keepingBlock(k *content.Keeping) KeepingBlock {
	way := nameWay(k.Way.V)
	return KeepingBlock{
		Heading: way.heading,
		Address: wayAddress(k.Way.V),
		Canned:  k.Way.V.Canned(),
		Batch:   batchSize(k),
		Facts:   facts(k),
		Tables:  tables(k),
		Before:  said(validate.BeforeClock(k)),
		Empty:   emptyJars(k),
		Clock:   said(validate.ClockStart(k.Way.V)),
		Start:   start[k.Way.V],
		Jars:    jarsWithTimes(k),
		Agrees:  agreement(k),
	}
}

func batchSize(k *content.Keeping) string {
	if !k.Factor.Set() {
		return ""
	}
	return "Made from a batch " + typeset(k.Factor.V.Text) + " times the ingredients above."
}

// tables are empty for a way that needs no process.
func tables(k *content.Keeping) []AltitudeTable {
	switch k.Way.V {
	case content.BoilingWater:
		return minuteTables("Minutes at a full rolling boil", k.Processing)
	case content.AtmosphericSteam:
		return minuteTables("Minutes in full, steady steam", k.Processing)
	case content.PressureCanner:
		return append(
			pressureTables("Pressure on a dial gauge", k.Processing, dialBands),
			pressureTables("Pressure on a weighted gauge", k.Processing, weightedBands)...)
	}
	return nil
}

// start is how a reader says that the clock may start.
var start = map[content.Way]string{
	content.BoilingWater:     "It is at a full rolling boil",
	content.AtmosphericSteam: "The steam is full and steady",
	content.PressureCanner:   "It is at pressure",
}

func jarsWithTimes(k *content.Keeping) []string {
	var jars []string
	for _, p := range k.Processing {
		if len(p.Altitude) > 0 || p.Time.Set() {
			jars = append(jars, p.Jar.V.String())
		}
	}
	return jars
}

// emptyJars gives the minutes for which empty jars are boiled up to 1,000 ft.
func emptyJars(k *content.Keeping) int {
	if !k.Way.V.Canned() || k.Way.V == content.PressureCanner || !k.JarsSterilised.V {
		return 0
	}
	return validate.LimitInt("jar-sterilise-time")
}

// said gives what a remark says; nothing if there is none.
func said(m validate.Remark, ok bool) string {
	if !ok {
		return ""
	}
	return typeset(m.Says)
}
