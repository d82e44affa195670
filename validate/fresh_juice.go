package validate

// freshJuice reports fresh lemon or lime juice in the steps, where its acid is
// needed.
var freshJuice = &Rule{
	ID:       "fresh-juice",
	Severity: Error,
	Summary:  "fresh lemon or lime juice in the steps, where its acid is needed",
	Doc: `Where the juice carries the safety of the jar it comes from a bottle, which is
made to a strength. A lemon is as sour as its year and its tree made it. Where
the juice is there for set or taste, either will do.`,
	Source: Source{
		Title:   "Ask Extension 217071",
		Address: "https://ask.extension.org/kb/faq.php?id=217071",
	},
	Practice: &Practice{
		Phrases: `fresh|freshly|fresh_squeezed|hand_squeezed squeezed? lemon|lime juice; squeeze~ .. lemon~|lime~; juice of|from .. #|a|half|an|two|three|one .. lemon~|lime~; lemon|lime juice .. fresh|freshly|squeezed
			juice~ .. #|a|two|three|the|one lemon~|limes; lemon|lime juice .. bottled_or_fresh|fresh_or_bottled; fresh_lemons .. better|best|fine
			freshly|just|newly pressed|extracted|juiced|wrung lemon|lime; just_squeezed|home_squeezed|hand_pressed lemon|lime juice
			juice from|of ... lemons|limes|lemon|lime .. tree|garden|squeezed|pressed; juice & freshly_pressed|freshly_squeezed|fresh_pressed|freshly_cut|just_cut & lemon|lemons|lime|limes`,
		Where:   juiceForSafety,
		Message: "fresh juice has no strength that can be counted on",
		Advice:  "Write bottled lemon or lime juice.",
	},
}

// juiceForSafety holds where the acid of the juice is needed, and leaves out
// what is served.
func juiceForSafety(t *Text, s *sentence, h hit) bool {
	return t.Recipe != nil && whereAcidCounts(t, s, h) && !s.anyOf("serve serving table eat opened salad salads taco tacos tea drink fish plate")
}
