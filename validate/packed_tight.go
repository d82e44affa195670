package validate

import "stillroom/content"

// packedTight reports food pressed down in the jar where the publication packs
// it loosely.
var packedTight = &Rule{
	ID:       "packed-tight",
	Severity: Warning,
	Summary:  "food pressed down in the jar where the publication packs it loosely",
	Doc: `Peas, corn, lima beans and greens swell and mat together. Pressed down, they
hold back the heat, and the tested time is too short. Fill the jars loosely, and
do not shake or press them down.`,
	Source: Source{
		Title:   "USDA Home Economics Research Report 43",
		Address: "https://archive.org/",
	},
	Practice: &Practice{
		Phrases: `pack~|press~|push~|tamp~|fill~|stuff~|squeeze~|cram~|shake~ .. tightly|firmly|tight|down|hard; pack~|press~|push~ .. as_much|as_many .. as; tightly|firmly pack~|packed
			ram~|jam~|wedge~|force~|cram~|stuff~|pack~ .. in|into|down|@it .. tight|tightly|hard|firmly|as_many|as_much
			as_many|as_much .. as .. @jar .. hold~|take~|will|can`,
		Where:   packedLoosely,
		Message: "this food is packed loosely, not pressed down",
		Advice:  "Fill the jars loosely.",
	},
}

// looselyPacked are the foods that the guide packs loosely (USDA Complete Guide
// to Home Canning, Guide 4, from memory).
var looselyPacked = []string{"corn", "pea", "lima bean", "spinach", "kale", "chard", "collard", "mustard greens", "turnip greens", "beet greens"}

// packedLoosely holds where such a food is pressure canned.
func packedLoosely(t *Text, s *sentence, h hit) bool {
	return t.hasWay(content.PressureCanner) && t.ofProduce(looselyPacked...) && !s.forCold() && !s.anyOf("cup cups measure band bands lid lids")
}
