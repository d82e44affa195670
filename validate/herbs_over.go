package validate

import (
	"slices"

	"stillroom/content"
)

// herbsOver reports more fresh herbs, garlic or ginger than was tested.
var herbsOver = &Rule{
	ID:       "herbs-over",
	Severity: Warning,
	Summary:  "more fresh herbs, garlic or ginger than was tested",
	Doc: `Fresh leaves and garlic are low-acid plants like any other, and do not follow the
freedom of dried spices. Two cloves of garlic do no harm in any pickle; beyond that,
use what the published recipe has, or dried herbs.`,
	Source: Source{
		Title:   "Salsa, Rutgers New Jersey Agricultural Experiment Station",
		Address: "https://njaes.rutgers.edu/food-safety/home-food-preservation/salsa.php",
	},
	CheckKeeping: checkHerbsOver,
}

func checkHerbsOver(_ *content.Recipe, m *Match) []Finding {
	if m.need().Origin != AcidFromRecipe {
		return nil
	}
	return m.besideTested((*comparison).herbsOver)
}

func (c *comparison) herbsOver() []Finding {
	batch, by := c.batch()
	if batch == nil {
		return nil
	}
	tested := c.tested.of(RoleHerb)
	var fs []Finding
	for _, in := range ofRole(c.items, RoleHerb) {
		f := Finding{Pos: in.Pos, Source: c.tested.source()}
		same := slices.IndexFunc(tested, func(t Item) bool { return t.Class.Produce.Name == in.Class.Produce.Name })
		switch {
		case in.isTwoCloves() || in.ToTaste:
			continue
		case same < 0:
			f.Message = in.Item + ": the published recipe has none"
			f.Advice = "Leave it out, or use it dried."
		default:
			x := timesTested([]Item{in}, tested[same:same+1], highEnd)
			if x == nil || x.Cmp(batch) <= 0 {
				continue
			}
			f.Message = in.Item + ": " + shareOver(x, batch) + " of what was tested with this " + plenty[by]
			f.Advice = "The tested recipe has " + lineOf(tested[same:same+1]) + ". Use no more, or use it dried."
		}
		fs = append(fs, f)
	}
	return fs
}

// isTwoCloves allows the two cloves of garlic that may be added to a tested
// pickle: Nevada Department of Agriculture, craft foods.
func (in Item) isTwoCloves() bool {
	q, ok := in.counted()
	return ok && in.Class.Kind == ItemGarlic && (q.Unit == "clove" || q.Unit == "") && compareWhole(q.High, 2) <= 0
}
