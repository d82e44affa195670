package validate

import "stillroom/content"

// packMissing reports a canned way of keeping that does not say how the jars
// are packed.
var packMissing = &Rule{
	ID:       "pack-missing",
	Severity: Error,
	Summary:  "a canned recipe that does not say whether the pack is hot or raw",
	Doc: `Food that goes into the jar hot heats through sooner than raw food. Each has a
process of its own, and the reader must know which one yours is. Write "pack: hot"
or "pack: raw".`,
	Source: Source{
		Title:   "Preserve that garden bounty safely, University of Maine Cooperative Extension, Central Maine, 2020",
		Address: "https://www.centralmaine.com/2020/09/16/preserve-that-garden-bounty-safely/",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		if !m.Keeping.Way.V.Canned() || m.Keeping.Pack.Set() {
			return nil
		}
		return []Finding{{
			Pos:     m.place("pack"),
			Message: "not said whether the pack is hot or raw",
			Advice:  "Write pack: hot or pack: raw, as the process has it.",
		}}
	},
}
