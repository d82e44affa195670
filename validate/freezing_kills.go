package validate

// freezingKills reports freezing said to kill germs.
var freezingKills = &Rule{
	ID:       "freezing-kills",
	Severity: Error,
	Summary:  "freezing said to kill germs",
	Doc: `Freezing stops germs from growing and kills few of them; they go on as soon as
the food thaws. It does kill insects and their eggs, and given weeks the worms
of game and fish.`,
	Source: Source{
		Title:   "UNH Extension, freezing",
		Address: "https://extension.unh.edu/node/22443",
	},
	Practice: &Practice{
		Phrases: `freeze~|freezing|freezer|frozen|cold .. kill~|sterilise~|destroy~|gets_rid_of|get_rid_of|eliminate~|takes_care_of|wipe~_out .. @germ
			kill~|destroy~|eliminate~ .. @germ .. by|in|with .. freeze~|freezing|freezer; freezing|freezer .. makes|make .. safe|sterile; freezing|freezer|freeze~ .. sterilise~|sanitize~|sanitizes
			@germ ... freezer|freezing|frost takes_care_of|takes_care|kills|kill|deals_with|finishes|destroys them|those|these|it; freezer|freezing|deep_freeze takes_care|deals .. of|with .. @germ`,
		Where:   notInsects,
		Message: "freezing does not kill germs",
		Advice:  "Say that it stops them from growing while the food is frozen.",
	},
}

// notInsects leaves out insects, worms and their eggs.
func notInsects(_ *Text, s *sentence, _ hit) bool {
	return !s.anyOf("insect insects parasite parasites worm worms eggs egg larvae trichina weevils")
}
