package validate

import "stillroom/content"

// headspaceMissing reports a canned way of keeping that does not say how high
// the jars are filled.
var headspaceMissing = &Rule{
	ID:       "headspace-missing",
	Severity: Error,
	Summary:  "a canned recipe that does not say how high to fill the jars",
	Doc: `The air that is left above the food is part of the process: it is what the
vacuum is made from. Write "headspace:" with the figure of the process.`,
	Source: Source{
		Title:   "Canning questions answered, Mississippi State and South Carolina extension column, The Times and Democrat",
		Address: "https://thetandd.com/from-attic-to-basement-frequently-asked-canning-questions/article_ca345423-664c-58e9-9a6d-dabb62dde437.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		if !m.Keeping.Way.V.Canned() || m.Keeping.Headspace.Set() {
			return nil
		}
		return []Finding{{
			Pos:     m.place("headspace"),
			Message: "no headspace",
			Advice:  "Write headspace: with the figure of the process, as in 1/4 in.",
		}}
	},
}
