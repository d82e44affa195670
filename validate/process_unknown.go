package validate

import (
	"fmt"

	"stillroom/content"
)

// processUnknown reports the id of a process that no table holds.
var processUnknown = &Rule{
	ID:       "process-unknown",
	Severity: Error,
	Summary:  "a process that is not in the tables",
	Doc: `The process is found by its id, the method, the pack and the jar. The id must be
one that "stillroom processes" lists, letter for letter.`,
	Source: contract,
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		k := m.Keeping
		if !k.Way.V.Canned() || !k.Process.Set() || !m.Why.Unknown {
			return nil
		}
		f := Finding{
			Pos:     k.Process.Pos,
			Message: fmt.Sprintf("no process is called %q", k.Process.V),
			Advice:  `"stillroom processes WORDS" lists the tested processes.`,
		}
		if len(m.Why.Nearest) > 0 {
			f.Advice = fmt.Sprintf("Is it %s? %s", orList(m.Why.Nearest), f.Advice)
		}
		return []Finding{f}
	},
}
