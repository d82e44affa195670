package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// altitudeReach reports a table that stops below the highest band of its
// process, or goes on above it.
var altitudeReach = &Rule{
	ID:       "altitude-reach",
	Severity: Error,
	Summary:  "a table by altitude that does not reach as far as its process, or goes beyond it",
	Doc: `A table must say what the process says, up to where the process stops: a reader
who lives higher than your last row would take it for theirs. And where the
publication stops, so must the table: nothing was tested above.

Most boiling-water tables end with "above 6,000 ft"; dial-gauge tables stop at
8,000 ft.`,
	Source:       guide,
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding { return checkTables(m, reach) },
}

func reach(t bandTable) []Finding {
	if len(t.tested) == 0 {
		return nil
	}
	last, top := t.bands[len(t.bands)-1], t.tested[len(t.tested)-1]
	switch {
	case last.span.to == nil && top.To == 0:
		return nil
	case top.To == 0:
		return []Finding{{
			Pos:     last.pos,
			Message: fmt.Sprintf("the table stops at %s; the process goes on", last.text),
			Advice:  fmt.Sprintf("Write the band %q too.", top),
		}}
	case last.span.to == nil, last.span.to.Cmp(feet(top.To+1)) >= 0:
		return []Finding{{
			Pos:     last.pos,
			Message: fmt.Sprintf("nothing is published for %s: the process stops at %s ft", last.text, thousands(top.To)),
			Advice:  fmt.Sprintf("End the table at %s ft.", thousands(top.To)),
		}}
	case new(big.Rat).Add(last.span.to, last.one()).Cmp(feet(top.To)) <= 0:
		return []Finding{{
			Pos:     last.pos,
			Message: fmt.Sprintf("the table stops at %s; the process goes on to %s ft", last.text, thousands(top.To)),
			Advice:  fmt.Sprintf("Write the bands up to %s ft too.", thousands(top.To)),
		}}
	}
	return nil
}
