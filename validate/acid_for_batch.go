package validate

import "stillroom/content"

// acidForBatch reports acid that goes into the pot where each jar should get
// its own.
var acidForBatch = &Rule{
	ID:       "acid-for-batch",
	Severity: Warning,
	Summary:  "acid for the whole batch where the process has a dose for each jar",
	Doc: `Whole and crushed tomatoes and figs are too thick for acid to spread evenly in the
pot, and jars are not all filled alike. The process gives the acid to each jar, before
the food. Write "acid: 2 tbsp bottled lemon juice per quart".`,
	Source: Source{
		Title:   "Tomatoes, USDA Complete Guide to Home Canning, Guide 3, introduction",
		Address: "https://mail.recipesource.com/misc/canning/tomatoes-introduction1.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		a := m.Keeping.Acid
		if m.need().Origin != AcidInEachJar || a.V.Source != content.AcidInRecipe {
			return nil
		}
		return []Finding{{
			Pos:     a.Pos,
			Message: "the acid is in the batch, where the process puts it into each jar",
			Advice:  m.acidAdvice(),
			Source:  m.Process.Source(),
		}}
	},
}
