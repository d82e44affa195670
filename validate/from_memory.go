package validate

import (
	"fmt"

	"stillroom/content"
)

// fromMemory gives advice where a cited process has figures that nobody saw
// in a published copy when the tables were made.
var fromMemory = &Rule{
	ID:       "from-memory",
	Severity: Advice,
	Summary:  "a process with figures that were not seen in a published copy",
	Doc: `Most figures of the tables were compared with a published copy, and "stillroom
processes" names it. Some are from memory: right to the best of our knowledge, and to
be compared with the publication before you stand behind them. When you have done so,
say so under "accept:".`,
	Source: Source{Title: "The tables of this program, column evidence"},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		unseen := 0
		for _, j := range m.Jars {
			unseen += j.fromMemory()
		}
		if unseen == 0 {
			return nil
		}
		return []Finding{{
			Pos:     m.Keeping.Process.Pos,
			Message: fmt.Sprintf("%d of the figures of %s were not seen in a published copy", unseen, m.Process.ID),
			Advice:  "Compare them with the publication, and say so under accept:.",
			Source:  m.Process.Source(),
		}}
	},
}

// fromMemory counts the tested figures for the jar that were not seen.
func (j JarMatch) fromMemory() int {
	if j.Tested == nil {
		return 0
	}
	n := 0
	for _, s := range j.Tested.Schedules {
		if s.Gauge != "" && len(j.gaugeBands(s.Gauge)) == 0 {
			continue
		}
		for _, b := range s.Bands {
			if b.FromMemory() {
				n++
			}
		}
	}
	return n
}
