package validate

// sealAsProof reports a good seal given as the proof that the food is safe.
var sealAsProof = &Rule{
	ID:       "seal-as-proof",
	Severity: Error,
	Summary:  "a good seal given as the proof that the food is safe",
	Doc: `A lid that is drawn down tells that no air gets in. Spores that the heat did not
reach grow best of all without air. Only the tested time, at the tested heat, in
the tested jar, stands behind what is in it.`,
	Source: Source{
		Title:   "K-State You Asked It, home-canned peas",
		Address: "http://enewsletters.k-state.edu/youaskedit/2019/03/14/botulism-outbreak-in-home-canned-peas/",
	},
	Practice: &Practice{
		Phrases: `if|when|once|after .. hear|heard .. ping|pop|click|plink ... safe|good_to|fine_to|preserved; if|when|once|as_long_as|so_long_as|because|since|provided|after .. @it|@jar|@lid|seal|they|center|top .. seal~|sealed|popped|pinged|pings|pops|holds|tight|down|good ... safe|okay_to|fine_to|good_to|ok_to|nothing_to_worry|no_worries|no_danger|perfectly_fine|perfectly_good
			seal~|sealed|ping|pop|popping|pinging|vacuum means|mean|proves|prove|shows|guarantees|tells|ensures|indicates|confirms|says ... safe|preserved|processed|sterile|fine|good_to|properly|germ|worked|edible
			seal|ping|pop .. is .. proof|guarantee|sign|all .. need|safe|safety|preserved|good|know; safe|fine_to_eat|good_to_eat .. if|as_long_as|once|when|because|since|so_long_as .. @it|@lid|@jar|seal .. sealed|seal~|tight|down|pop~|ping~
			sealed|seals|seal .. so .. safe|fine|okay|good_to; jar~ .. sealed is|are .. safe; sealed jar~ is|are .. safe; trust .. seal; good seal .. good|safe food|jar|to
			if|when|once|as_long_as|so_long_as|provided .. @it|@jar|@lid|seal|center|centre .. seal~|sealed|popped|holds|tight|down ... sure|certain|confident|assured|trust ... fine|safe|good|keep|sound; sealed|seals|popped ... can|may be sure|certain|confident|easy .. fine|safe|good|sound|keep
			@lid|@it|center|centre|middle|button .. doesn't|does_not|won't|didn't|stays|stay|stayed .. flex|move|give|pop|budge|click|down|put ... safe|fine|good_to|eat|keep; sealed|popped|tight|good lid|seal|jar .. is|means .. all|proof|guarantee|enough|promise .. need|safe|keep|that|of; all the proof|assurance|guarantee .. need|you; proof .. safe|keep
			@lid .. went|snapped|popped|sucked|pinged|pulled .. so|and|then .. can|may|will|is|are .. eat|safe|fine|good_to
			@jar .. that|which .. pings|ping|pops|popped|sealed|seals .. is|are ... safe|fine|good|sound; as_long_as|so_long_as|if|when|once .. @lid .. sucked|pulled|drawn|concave|hollow|dipped|down|tight ... good|fine|safe|sound|keep~
			if|as_long_as|so_long_as|once|when|provided .. @it|@jar|@lid sealed|seals|popped|pinged|pings ... can trust; trust .. @jar|@it .. that|if|when|once sealed|seals|popped`,
		Where:   notMoved,
		Message: "a seal does not show that the food is safe",
		Advice:  "Say that the jars were processed for the tested time; the seal keeps out the air, no more.",
	},
}

// notMoved leaves out what may safely be done with a sealed jar: to store or
// move it, or to take its band off.
func notMoved(_ *Text, s *sentence, h hit) bool {
	if s.anyOf("eat eating") {
		return true
	}
	return !s.isAny(h.to, "stack move remove take ship handle label wash store") && !s.isAny(h.to+1, "stack move remove take ship handle label wash store")
}
