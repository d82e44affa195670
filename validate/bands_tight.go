package validate

// bandsTight reports bands screwed down hard, or tightened again after the
// process.
var bandsTight = &Rule{
	ID:       "bands-tight",
	Severity: Warning,
	Summary:  "bands screwed down hard, or tightened again after the process",
	Doc: `Air has to get out from under the lid while the jar is heated, so the band is
turned only until it just resists: fingertip tight. To turn it again afterwards
breaks the seal that is forming.`,
	Source: Source{
		Title:   "K-State, seal failures",
		Address: "https://enewsletters.k-state.edu/youaskedit/2020/03/13/reasons-for-canning-seal-failures",
	},
	Practice: &Practice{
		Phrases: `tighten~|screw~|twist~|turn~|crank~|close~|fasten~ .. @band|@lid|@it .. as tight|tightly|hard|firmly as; screw~|tighten~|twist~|turn~ .. as_tight|as_tightly|as_hard|as_firmly as
			tighten~|screw~|twist~|turn~|crank~ .. @band|@lid|@it .. very|really|extra|super|fully|nice_and|good_and|down|on? tight|tightly|hard|firmly
			tighten~|screw~|twist~|turn~ .. very|really|extra|super tight|tightly|hard .. @band|@lid; retighten~|re_tighten~|re_tightened|re_tightening
			tighten~ .. @band|@lid|@it .. again|more|once|after|while|further|as_soon_as; give~ .. @band|@lid|@it .. another|extra|final|last|good .. turn|twist|crank|tighten; crank~ down .. @band|@lid; with all your strength|might`,
		Where:   bandsInCanner,
		Message: "bands are turned too tight",
		Advice:  "Say fingertip tight, and nothing more after the process.",
	},
}

// bandsInCanner leaves out lids that need no air let out, and a band that is
// told to be tight by the fingertips.
func bandsInCanner(t *Text, s *sentence, h hit) bool {
	return inCanned(t, s, h) && !s.anyOf("fingertip finger fingertips fingers gently just wingnuts clamps buckle buckles warp warps storage store") && (!s.anyOf("canner") || s.has(famBand))
}
