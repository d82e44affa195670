package validate

import (
	"fmt"
	"slices"

	"stillroom/content"
)

// otherFood reports a process that was tested with another food.
var otherFood = &Rule{
	ID:       "other-food",
	Severity: Error,
	Summary:  "a process that was tested with another food",
	Doc: `How fast heat reaches the middle of a jar, and how sour that middle is, depend on
what is in it. A time does not carry over from peaches to peas. What is in the
produce list must be what the cited process was tested with.

The general jam and jelly processes are the same for all fruit with enough acid
of its own. There another such fruit than the ones named is a warning: look
whether it has a process of its own.`,
	Source: Source{
		Title:   "Three cases of botulism from home-canned peas, New York 2018, CDC MMWR 68(10)",
		Address: "https://www.cdc.gov/mmwr/volumes/68/wr/mm6810a5.htm",
	},
	CheckKeeping: checkOtherFood,
}

func checkOtherFood(r *content.Recipe, m *Match) []Finding {
	if m.Process == nil || !m.Keeping.Way.V.Canned() || len(m.Process.Produce) == 0 {
		return nil
	}
	var fs []Finding
	for _, p := range r.Produce {
		food, known := LookUpProduce(p.V)
		if known && m.Process.names(food.Name) {
			continue
		}
		f := Finding{
			Pos:     p.Pos,
			Message: fmt.Sprintf("%s was tested with %s, not with %s", m.Process.ID, m.Process.Food, p.V),
			Advice:  `"stillroom processes WORDS" finds the process of a food.`,
			Notes:   []Note{{Pos: m.Keeping.Process.Pos, Message: "cited here"}},
			Source:  m.Process.Source(),
		}
		switch {
		case !known:
			f.Message = fmt.Sprintf("nothing is known of %q, and %s does not name it", p.V, m.Process.ID)
		case m.Process.General && food.Group.Fruit() && food.Acidity == Acid:
			f.Severity = Warning
		}
		fs = append(fs, f)
	}
	return fs
}

// names reports whether the process stands for that food, or lets it stand
// beside the one that it is for.
func (p *Process) names(food string) bool {
	return slices.Contains(p.Produce, food) || slices.Contains(p.Others, food) || slices.Contains(p.Produce, "any") || slices.Contains(p.Others, "any")
}
