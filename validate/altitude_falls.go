package validate

import (
	"fmt"

	"stillroom/content"
)

// altitudeFalls reports a time or a pressure that falls as altitude rises.
var altitudeFalls = &Rule{
	ID:       "altitude-falls",
	Severity: Error,
	Summary:  "a time or a pressure that falls as altitude rises",
	Doc: `The higher the kitchen, the cooler the boil, and the longer the time or the
higher the pressure. A figure that falls on the way up is a slip: two rows were
changed about, or one was copied from another table.`,
	Source:       guide,
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding { return checkTables(m, falls) },
}

func falls(t bandTable) []Finding {
	var fs []Finding
	for i := 1; i < len(t.bands); i++ {
		low, high := t.bands[i-1], t.bands[i]
		if low.value == nil || high.value == nil || compare(high.value, low.value) >= 0 {
			continue
		}
		fs = append(fs, Finding{
			Pos:     high.at,
			Message: fmt.Sprintf("%s for %s is under %s for %s, which lies lower", high.said, high.text, low.said, low.text),
			Advice:  "Take the figures of the process, band by band.",
			Notes:   []Note{{Pos: low.at, Message: "the lower band's figure"}},
		})
	}
	return fs
}
