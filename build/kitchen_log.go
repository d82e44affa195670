package build

import (
	"fmt"
	"slices"

	"stillroom/content"
)

// A LogEntry is a batch that the author lets readers see.
type LogEntry struct {
	Made  Day
	Facts []Fact
	Note  string
}

// kitchenLog gives the public batches, the newest first.
func kitchenLog(batches []content.Batch) []LogEntry {
	var seen []content.Batch
	for _, b := range batches {
		if b.Public.V {
			seen = append(seen, b)
		}
	}
	slices.SortStableFunc(seen, func(a, b content.Batch) int { return newest(a.Made.V, b.Made.V) })
	var entries []LogEntry
	for _, b := range seen {
		entries = append(entries, LogEntry{Made: day(b.Made.V), Facts: batchFacts(b), Note: b.Note.V})
	}
	return entries
}

func batchFacts(b content.Batch) []Fact {
	var all []Fact
	add := func(name, value string) {
		if value != "" {
			all = append(all, Fact{Name: name, Figure: Figure{Number: value}})
		}
	}
	if b.Factor.Set() && typeset(b.Factor.V.Text) != "1" {
		add("Batch", "× "+typeset(b.Factor.V.Text))
	}
	add("Made", typeset(b.Yield.V.Text))
	add("pH", typeset(b.PH.V.Text))
	add("Set", b.Set.V)
	add("Altitude", typeset(b.Altitude.V.Text))
	if b.SealsFailed.Set() {
		add("Seals", seals(b.SealsFailed.V))
	}
	return all
}

func seals(failed int) string {
	switch failed {
	case 0:
		return "all held"
	case 1:
		return "1 failed"
	}
	return fmt.Sprintf("%d failed", failed)
}
