package validate

import (
	"fmt"

	"stillroom/content"
)

// processMethod reports a method for which the cited process has no figures.
var processMethod = &Rule{
	ID:       "process-method",
	Severity: Error,
	Summary:  "a method that the cited process was not tested with",
	Doc: `A boiling-water time says nothing about a pressure canner, nor the other way
round, and most pickles and salsas have no pressure process at all. Only food
with acid may go into boiling water or steam, and steam only where a
boiling-water process is published. Canning of any other kind (oven,
dishwasher, multi-cooker, open kettle) has no process.`,
	Source: guide,
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		k := m.Keeping
		if len(m.Why.Ways) == 0 {
			return nil
		}
		return []Finding{{
			Pos:     k.Way.Pos,
			Message: fmt.Sprintf("%s has no %s process", k.Process.V, k.Way.V),
			Advice:  fmt.Sprintf("It is published for %s.", orList(m.Why.Ways)),
		}}
	},
}
