package validate

import (
	"stillroom/content"
)

// lowTemperature reports jars pasteurised at 180 °F by a recipe that was not
// tested so.
var lowTemperature = &Rule{
	ID:       "low-temperature",
	Severity: Error,
	Summary:  "jars pasteurised at 180 °F by a recipe that was not tested so",
	Doc: `A few cucumber pickles were tested at 180 to 185 °F for 30 minutes, with a
thermometer in the water and never a degree less. Everything else is processed
at the boil. Where the cited recipe is of cucumbers this is a warning: look
whether it lists the treatment.`,
	Source: Source{
		Title:   "USDA Complete Guide to Home Canning (1994 text)",
		Address: "https://mail.recipesource.com/misc/canning/pasteurization-treatment1.html",
	},
	Practice: &Practice{
		Phrases: `low_temperature pasteurise~|pasteurisation|pasteurization|processing|process|canning|treatment; pasteurise~ .. @jar|@it|pickles .. at|for|in; process~|hold~|keep~|heat~ .. @jar|@it|pickles|water ... 180|185
			maybe process~|hold~|keep~|heat~|simmer~|leave~ .. @jar|@it ... at|of # ; simmer~ .. @jar|jars .. instead_of|rather_than boiling; process~ .. below|under|without .. boiling
			maybe keep~|hold~|leave~|let~ .. canner|water_bath|bath ... simmer|simmering`,
		Where:   belowBoil,
		Grade:   pasteurisedWeighs,
		Message: "jars are processed below the boil",
		Advice:  "Process them at a full rolling boil, for the tested time.",
	},
}

// belowBoil leaves out empty jars that are kept warm, and temperatures of food.
func belowBoil(t *Text, s *sentence, h hit) bool {
	if !inCanned(t, s, h) || s.forEmptyJars() {
		return false
	}
	if !h.maybe {
		return true
	}
	if s.anyIn("simmer simmering", h.from, h.to) {
		return s.anyOf("whole entire throughout process processing") && !s.anyOf("while until before fill filling load loading")
	}
	for _, f := range s.figures() {
		if h.from <= f.from && f.from < h.to+2 && f.unit.Dimension() == content.TemperatureDim {
			deg := f.in(content.Fahrenheit)
			return compareWhole(deg, 140) >= 0 && compareWhole(deg, 200) <= 0 && t.jarsAreFull(s, h)
		}
	}
	return false
}

// pasteurisedWeighs makes it a warning for cucumbers, some recipes of which were
// tested so.
func pasteurisedWeighs(t *Text, _ *sentence) Severity {
	if t.ofProduce("cucumber") {
		return Warning
	}
	return Error
}
