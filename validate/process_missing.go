package validate

import "stillroom/content"

// processMissing reports a canned way of keeping that names no tested process.
var processMissing = &Rule{
	ID:       "process-missing",
	Severity: Error,
	Summary:  "a canned recipe that names no tested process",
	Doc: `Nobody can work out a canning time at home: how fast heat reaches the middle of
a jar depends on the food, the pack and the jar, and was measured for each. A
recipe for the shelf therefore names the published process that it follows
("process:"), or the written process that an authority set for it ("tested_by:"
with authority, reference and date).

A recipe that has neither can be kept in the refrigerator or the freezer.`,
	Source: Source{
		Title:   "Salsa, Rutgers New Jersey Agricultural Experiment Station",
		Address: "https://njaes.rutgers.edu/food-safety/home-food-preservation/salsa.php",
	},
	CheckKeeping: checkProcessMissing,
}

func checkProcessMissing(_ *content.Recipe, m *Match) []Finding {
	k := m.Keeping
	if !k.Way.V.Canned() {
		return nil
	}
	if k.TestedBy != nil {
		return letterGaps(k.TestedBy)
	}
	if k.Process.Set() {
		return nil
	}
	return []Finding{{
		Pos:     m.place("process"),
		Message: "no tested process is named",
		Advice:  `Name one with process: ("stillroom processes WORDS" finds it), or keep the food in the refrigerator or the freezer.`,
	}}
}

// letterGaps reports what a written process does not say about itself.
func letterGaps(t *content.TestedBy) []Finding {
	var fs []Finding
	missing := func(is bool, what string) {
		if is {
			fs = append(fs, Finding{
				Pos:     t.Pos,
				Message: "the written process does not name its " + what,
				Advice:  "Write authority, reference and date as they stand on the letter.",
			})
		}
	}
	missing(!t.Authority.Set(), "authority")
	missing(!t.Reference.Set(), "reference")
	missing(!t.Date.Set(), "date")
	return fs
}
