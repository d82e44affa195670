package validate

import "stillroom/content"

// fermentVessel reports a ferment in copper, brass, iron or galvanised metal,
// or in a bin bag.
var fermentVessel = &Rule{
	ID:       "ferment-vessel",
	Severity: Warning,
	Summary:  "a ferment in copper, brass, iron or galvanised metal, or in a bin bag",
	Doc: `Acid and salt eat these metals, and bin bags are not made for food. Use
stoneware, glass, or plastic that is sold for food.`,
	Source: Source{
		Title:   "Pepper recipe index, extension style caution",
		Address: "http://www.pepperfool.com/recipes/canned_idx.html",
	},
	Practice: &Practice{
		Phrases: `copper|brass|galvanised|galvanized|zinc|cast_iron|iron|aluminium|aluminum crock~|bucket~|pail~|pot~|vessel~|container~|kettle~|pan~|basin~|bowl~|tub~|weight~; garbage|trash|bin|refuse bag~|liner~|can|cans|bin
			in|into|use~|with .. a? copper|brass|galvanised|galvanized|aluminium|aluminum; crock~|bucket~|vessel~ .. lined with .. garbage|trash|bin|refuse
			copper|brass|galvanised|galvanized|zinc|cast_iron|iron|aluminium|aluminum preserving|jam|canning|cooking|stock pan~|pot~|kettle~`,
		Where:   inAFerment,
		Message: "this metal or plastic is not for a ferment",
		Advice:  "Use stoneware, glass or food-grade plastic.",
	},
}

// inAFerment holds in recipes that ferment, before they are canned.
func inAFerment(t *Text, s *sentence, _ hit) bool {
	return t.hasWay(content.Fermenting) && !s.has(famCanner) && !s.forCold() && !s.anyOf("carry carries carried garden picking harvest")
}
