package validate

import (
	"fmt"

	"stillroom/content"
)

// vinegarWeak reports vinegar in a canned recipe that is weaker than 5 per
// cent, or whose strength nobody knows.
var vinegarWeak = &Rule{
	ID:       "vinegar-weak",
	Severity: Error,
	Summary:  "vinegar under 5 per cent, home-made, or of a strength that is not said",
	Doc: `Tested recipes mean vinegar of 5 per cent acetic acid (50 grain). Bottles of 4 per
cent stand on the same shelves, and nobody knows the strength of home-made
vinegar: both leave a pickle with too little acid. Write the strength into the
ingredient, "2 cups white vinegar (5%)", so that the reader looks at the label.

Weaker or home-made vinegar is an error, a strength that is not said a warning.`,
	Source: Source{
		Title:   "Ohio State University Extension HYG-5342, Quick process pickles",
		Address: "https://ohioline.osu.edu/factsheet/HYG-5342",
	},
	CheckKeeping: checkVinegarWeak,
}

func checkVinegarWeak(_ *content.Recipe, m *Match) []Finding {
	if !m.Keeping.Way.V.Canned() {
		return nil
	}
	least := LimitRat("vinegar-acidity")
	var fs []Finding
	for _, in := range m.withAdded() {
		if in.Class.Kind != ItemVinegar {
			continue
		}
		switch f := (Finding{Pos: in.Pos}); {
		case in.Class.HomeMade:
			f.Message = "home-made vinegar, of a strength that nobody knows"
			f.Advice = "Use vinegar from a shop that says 5% on its label."
			fs = append(fs, f)
		case in.Class.Strength == nil:
			f.Severity = Warning
			f.Message = "the strength of the vinegar is not said"
			f.Advice = `Write it into the line: "white vinegar (5%)".`
			fs = append(fs, f)
		case in.Class.Strength.Cmp(least) < 0:
			f.Message = fmt.Sprintf("vinegar of %s%% where tested recipes mean %s%%", percent(in.Class.Strength), percent(least))
			f.Advice = "Use vinegar of 5% or more."
			fs = append(fs, f)
		}
	}
	return fs
}
