package validate

import "stillroom/content"

// notProcessed reports words that no process is needed, for jars that are kept
// on a shelf.
var notProcessed = &Rule{
	ID:       "not-processed",
	Severity: Error,
	Summary:  "words that no process is needed, for jars that are kept on a shelf",
	Doc: `Every filled jar that is to stand at room temperature gets a timed process in a
canner: jam, jelly and pickles too. Sterilised jars, hot fruit, sugar or vinegar
do not take its place. What is not processed is kept in the refrigerator or the
freezer, and the text should say so.`,
	Source: Source{
		Title:   "Illinois Extension, unsafe methods",
		Address: "https://extension.illinois.edu/cottage-food/unsafe-methods",
	},
	Practice: &Practice{
		Phrases: `need~|have|has|require~|bother~|want~ .. to|with|a|any|be|been process~|processing|processed|water_bath|waterbath|canner|boiling_water_bath
			need~|have|has|require~|bother~|want~ process~|processing|processed|water_bath|waterbath|canner|boiling_water_bath
			maybe process~|processing|water_bath|canner .. is|are|was .. needed|necessary|required`,
		Left:    true,
		Where:   forShelf,
		Message: "this says that jars for the shelf need no process",
		Advice:  "Give the process, or say that the jars are kept in the refrigerator or the freezer.",
	},
}

// forShelf holds where jars are kept on a shelf, and not for what stays cold.
func forShelf(t *Text, s *sentence, h hit) bool {
	if s.forCold() || s.has(famBad) || s.anyOf("food_processor processor longer again twice more than separately pressure") {
		return false
	}
	if b := s.before(); b != nil && b.forCold() {
		return false
	}
	if n := s.next(); n != nil && n.forCold() {
		return false
	}
	for _, f := range s.figures() {
		if f.from >= h.to && f.unit == content.Minute {
			return false // and the process is given
		}
	}
	return t.canned() || s.has(famCupboard)
}
