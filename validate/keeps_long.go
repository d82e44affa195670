package validate

import "stillroom/content"

// keepsLong reports a canned food that is said to keep for over a year.
var keepsLong = &Rule{
	ID:       "keeps-long",
	Severity: Warning,
	Summary:  "a canned food that is said to keep for over a year",
	Doc: `What was processed rightly does not spoil after a year, but color, taste and
vitamins go, and lids begin to fail. Can what will be eaten within a year, and say so.`,
	Source: Source{
		Title:   "Canning, UC Master Food Preservers of Orange County",
		Address: "https://ucanr.edu/sites/MFPOC/food-preservation/Canning",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		most := LimitOf("store-time")
		if !m.Keeping.Way.V.Canned() || !keepsOver(m.Keeping, most) {
			return nil
		}
		return []Finding{tooLong(m.Keeping, most, Warning)}
	},
}
