package validate

// wrongHeat reports jars processed by microwave, dishwasher, slow cooker or
// sun.
var wrongHeat = &Rule{
	ID:       "wrong-heat",
	Severity: Error,
	Summary:  "jars processed by microwave, dishwasher, slow cooker or sun",
	Doc: `Only boiling water, steam for acid food, and steam under pressure have been
measured to reach the middle of a jar. A dishwasher, a slow cooker, an air fryer
and the sun are not hot enough; a microwave is hot in some places only.

They may wash or warm empty jars, or cook what goes into them.`,
	Source: Source{
		Title:   "Illinois Extension, unsafe methods",
		Address: "https://extension.illinois.edu/cottage-food/unsafe-methods",
	},
	Practice: &Practice{
		Phrases: `process~|pasteurise~|seal~|can|canned|canning .. @jar|@it|lids .. in|with|through|by|using .. microwave~|dishwasher~|slow_cooker~|crock_pot~|crockpot~|sun|sunshine|sunlight|air_fryer|solar_oven
			microwave|dishwasher|slow_cooker|crockpot|crock_pot|sun|solar|air_fryer canning|canned|processing|sealing|method; canning|processing|sealing in|with|by .. microwave~|dishwasher~|slow_cooker~|crock_pot|sun
			run~|put~|place~|send~|load~|set~|pop~|stick~|slide~|zap .. filled|sealed|full|capped|lidded|closed|packed|hot .. through|in|into|on ... dishwasher~|microwave~|slow_cooker~|crock_pot|sun
			microwave~ .. filled|sealed|full|capped|closed|hot .. @jar; microwave~ .. @jar|@it .. until|to .. seal~|pop~|ping~
			leave~|set~|stand~|put~|place~ .. @jar|@it .. in .. sun|sunlight|sunshine .. seal~|sealed|process~|preserve~|pop~
			use~|using .. dishwasher~|microwave~|slow_cooker~|crock_pot|crockpot|air_fryer|sun .. to|for|instead|as .. process~|processing|can|canning|canner|seal~
			dishwasher|microwave|sun|slow_cooker .. will|does|can .. seal~|process~|preserve~; dishwasher|sun|microwave .. seals|processes|sealed; let .. dishwasher|sun|microwave .. seal~|process~; way|ways|how to can|seal|process ... dishwasher|microwave|slow_cooker|sun
			microwave~|dishwasher~|slow_cooker~|crock_pot|crockpot|sun|sunshine|air_fryer|dashboard ... @jar|@it|lids .. @be canned|sealed|processed|preserved|done
			maybe put~|place~|set~|stand~|leave~|load~|pop~|stick~|run~|lay .. @jar|@it .. in|into|on|through .. dishwasher~|microwave~|slow_cooker~|crock_pot|crockpot|air_fryer|sun|dashboard|radiator; @jar|@it .. on|in|through .. dashboard|radiator|hottest_cycle|slow_cooker ... seal~|sealed|process~|canned
			@jar|@it & hot_but_not_boiling|below_a_simmer|under_a_simmer|short_of_a_boil|short_of_boiling|never_boiling|not_quite_boiling|barely_warm & whole|entire|process~|time|minutes|in_it
			microwave~|dishwasher~|slow_cooker~|crock_pot~|crockpot~|air_fryer .. does|do|is .. same|as .. boil~|boiling|canner~|water_bath|process~|processing
			leave~|set~|stand~|put~|place~ .. @jar|@it .. in .. sun|sunlight|sunshine ... canning|process~|processing|seal~`,
		Where:   fullOrSealed,
		Message: "this does not heat a jar as a process does",
		Advice:  "Process it as the cited process says, or keep it cold.",
	},
}

// fullOrSealed leaves out jars that are washed or warmed before they are filled.
func fullOrSealed(t *Text, s *sentence, h hit) bool {
	if h.maybe {
		return t.canned() && t.jarsAreFull(s, h) && !s.forEmptyJars()
	}
	return !s.forEmptyJars() || s.has(famSeal) || s.anyOf("filled full")
}
