package validate

import "stillroom/content"

// smallCanner reports a pressure saucepan, or a canner that holds fewer than 4
// quart jars.
var smallCanner = &Rule{
	ID:       "small-canner",
	Severity: Error,
	Summary:  "a pressure saucepan, or a canner that holds fewer than 4 quart jars",
	Doc: `A small pot heats up and cools down faster than the canners that times were
measured in, and the heating and cooling are part of the process. A pressure
canner holds at least 4 quart jars, standing.`,
	Source: Source{
		Title:   "K-State on the 2015 guide changes",
		Address: "https://enewsletters.k-state.edu/youaskedit/2016/05/12/usda-complete-guide-to-home-canning",
	},
	Practice: &Practice{
		Phrases: `pressure saucepan~; small|little|regular|ordinary|everyday pressure cooker~|canner~|pot~; maybe canner~|cooker~ .. holds|hold|holding|takes|for .. # .. quarts|quart|pints|pint; maybe quart pressure_cooker~|pressure_canner~; maybe pressure_cooker~`,
		Where:   tooSmall,
		Message: "this pot is too small for a pressure process",
		Advice:  "Ask for a pressure canner that holds at least 4 quart jars.",
	},
}

// tooSmall leaves out canners that are large enough, and a pressure cooker that
// food is cooked in.
func tooSmall(t *Text, s *sentence, h hit) bool {
	if !underPressure(t, s, h) || s.anyOf("least more larger minimum or_more") {
		return false
	}
	if !h.maybe {
		return s.place == placeGear || s.has(famProcess) || s.has(famJar) || s.anyOf("can canning")
	}
	if s.isAny(h.from, "quart") {
		n := ratio{}
		if h.from > 0 {
			n = s.at(h.from - 1).number()
		}
		return n.set() && n.num < t.leastCanner()*n.den
	}
	if s.isAny(h.to-1, "cooker cookers") && s.isAny(h.to-2, "pressure") && h.to-h.from == 2 {
		return s.place == placeGear && t.hasWay(content.PressureCanner) && !s.anyOf("electric cook cooking soak canner")
	}
	for _, f := range s.figures() {
		if h.from <= f.from && f.from < h.to {
			return tooFewJars(f, s)
		}
	}
	return false
}

// leastCanner is how many quarts of water the canner of the recipe must hold.
func (t *Text) leastCanner() int64 {
	for _, m := range t.Matches {
		if m.Keeping.Process.V == "smoked-fish" {
			return int64(LimitInt("smoked-fish-canner"))
		}
	}
	const fourJars = 10 // quarts of water in a pot that holds 4 quart jars, from memory
	return fourJars
}

// tooFewJars reports whether a canner is said to hold fewer than 4 quarts, or 7
// pints, at most.
func tooFewJars(f mention, s *sentence) bool {
	n := f.high.num / f.high.den
	if s.isAny(f.to, "pint pints") {
		return n < 7
	}
	return n < 4
}
