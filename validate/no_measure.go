package validate

import "stillroom/content"

// noMeasure reports a low-acid food without weight or volume in a recipe that
// relies on acid.
var noMeasure = &Rule{
	ID:       "no-measure",
	Severity: Error,
	Summary:  "vegetables by the bunch, or by number, where their acid must be reckoned",
	Doc: `Two large onions weigh as much as one cook's onions do. Where acid has to be enough
for the vegetables, each of them is weighed or measured: "1 lb onions", "3 cups
chopped". A number will do only where the published recipe itself gives one.`,
	Source: Source{
		Title:   "Pickled and fermented foods, USDA Complete Guide to Home Canning, Guide 6",
		Address: "https://mail.recipesource.com/misc/canning/pickled-fermented-foods1.html",
	},
	CheckKeeping: checkNoMeasure,
}

func checkNoMeasure(_ *content.Recipe, m *Match) []Finding {
	if !m.Keeping.Way.V.Canned() || m.need().Origin != AcidFromRecipe {
		return nil
	}
	var fs []Finding
	for _, in := range m.inJar() {
		if in.role() != RoleLowAcid || in.isMeasured() || in.isOnePepper() || m.countsToo(in) {
			continue
		}
		fs = append(fs, Finding{
			Pos:     in.Pos,
			Message: in.Item + ": neither weighed nor measured",
			Advice:  `Give its weight or its volume: "1 lb onions", "3 cups chopped onions".`,
		})
	}
	return fs
}

func (in Item) isMeasured() bool {
	if _, ok := in.in(content.Gram); ok {
		return true
	}
	_, ok := in.in(content.Millilitre)
	return ok
}

// countsToo reports whether the published recipe gives that food by number as
// well, and the line does.
func (m *Match) countsToo(in Item) bool {
	q, ok := in.counted()
	if !ok {
		return false
	}
	for _, c := range m.Tested {
		for _, s := range c.tested.shares {
			for _, t := range s.tested {
				if n, ok := t.counted(); ok && n.Unit == q.Unit && s.covers(in.Class.Produce) {
					return true
				}
			}
		}
	}
	return false
}
