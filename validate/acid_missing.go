package validate

import "stillroom/content"

// acidMissing reports a canned recipe that does not say where its acid comes
// from.
var acidMissing = &Rule{
	ID:       "acid-missing",
	Severity: Error,
	Summary:  "a canned recipe that does not say where its acid comes from",
	Doc: `Boiling water and steam are for food of pH 4.6 or lower, so the acid is half of
the process. Write "acid: natural" for fruit that has enough of its own, "acid:
in-recipe" where it is among the ingredients, or the addition to each jar: "acid:
2 tbsp bottled lemon juice per quart".

Tomatoes are given acid in a pressure canner too: the pressure process was
tested with it.`,
	Source: Source{
		Title:   "Tomatoes, USDA Complete Guide to Home Canning, Guide 3, introduction",
		Address: "https://mail.recipesource.com/misc/canning/tomatoes-introduction1.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		k := m.Keeping
		if k.Acid.Set() || !k.Way.V.Canned() {
			return nil
		}
		if k.Way.V == content.PressureCanner && !m.reliesOnAcid() {
			return nil
		}
		return []Finding{{
			Pos:     m.place("acid"),
			Message: "not said where the acid comes from",
			Advice:  "Write acid: natural, in-recipe, or what goes into each jar, as in 1 tbsp bottled lemon juice per pint.",
		}}
	},
}
