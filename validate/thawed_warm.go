package validate

import "strings"

// thawedWarm reports vacuum-packed food thawed in the warm.
var thawedWarm = &Rule{
	ID:       "thawed-warm",
	Severity: Error,
	Summary:  "vacuum-packed food thawed in the warm",
	Doc: `In a vacuum bag there is no air. Low-acid food that thaws in it on the counter
is the garlic in oil over again. Thaw it in the refrigerator, with the bag
opened.`,
	Source: Source{Title: "NCHFP, vacuum packaging (memory)"},
	Practice: &Practice{
		Phrases: `thaw~|defrost~ ... on|at|in .. counter|countertop|room_temperature|worktop|sink|sun|overnight; leave~ .. on|at .. counter|countertop|room_temperature .. to|until thaw~|thawed|defrost~
			leave~|set~|put~ .. on|at|in .. counter|countertop|worktop|bench|table|sink|room_temperature .. to|until thaw~|thawed|defrost~`,
		Where:   vacuumPacked,
		Message: "vacuum-packed food is thawed in the warm",
		Advice:  "Say: in the refrigerator, the bag opened first.",
	},
}

// vacuumPacked holds where a vacuum pack is spoken of.
func vacuumPacked(t *Text, s *sentence, _ hit) bool {
	if s.near("vacuum vacuumed sealed-bag airless") {
		return !s.has(famFridge)
	}
	for _, m := range t.Matches {
		if strings.Contains(strings.ToLower(m.Keeping.Container.V), "vacuum") {
			return !s.has(famFridge)
		}
	}
	return false
}
