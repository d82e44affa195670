package validate

// acidToTaste reports acid cut down, thinned or left out to taste.
var acidToTaste = &Rule{
	ID:       "acid-to-taste",
	Severity: Error,
	Summary:  "acid cut down, thinned or left out to taste",
	Doc: `The vinegar or the bottled juice of a tested recipe makes the food acid enough
for its process. It may go up and never down, and the water beside it never up.
What is too sharp is made milder with sugar.

In pickles for the refrigerator, and where the juice is there for set or taste
only, the cook may do as they like.`,
	Source: Source{
		Title:   "Rutgers NJAES, salsa",
		Address: "https://njaes.rutgers.edu/food-safety/home-food-preservation/salsa.php",
	},
	Practice: &Practice{
		Phrases: `reduce~|cut~|lower~|halve~|decrease~|lessen~|dilute~|thin~|omit~|skip~|weaken~ down|back|on|out? the|your|some? amount_of|quantity_of|some_of|half_of? white|cider|bottled|5|distilled? vinegar|lemon|lemon_juice|lime_juice|lime|acid|citric_acid|brine
			leave~ .. out .. vinegar|lemon_juice|lime_juice|citric_acid|acid; leave~ .. vinegar|lemon_juice|lime_juice|citric_acid|acid .. out; skimp .. vinegar|lemon_juice|acid
			use~|add~|need|with|try~ .. less|half_the|fewer|only_half .. vinegar|lemon_juice|lime_juice|citric|acid|lemon; less vinegar|lemon_juice|lime_juice if|for|than|and; vinegar|lemon_juice|lime_juice ... until .. tastes|taste; maybe leave~ it|that|them out; maybe use~|add~ .. half as_much
			vinegar|lemon_juice|lime_juice|acid|citric_acid .. to taste|to_your|to_suit; adjust~|vary .. vinegar|lemon_juice|lime_juice|acid|acidity|tartness .. to|if|as
			lemon_juice|lime_juice|vinegar|citric_acid .. is|are .. optional; vinegar|lemon_juice|lime_juice|citric_acid|acid .. can|may|could be? reduced|cut|halved|omitted|left_out|skipped|lowered
			more water .. than|and_less|to_cut .. vinegar|brine; replace~|swap~ .. half|some|part|third .. vinegar .. with|for .. water; water|thin~ .. down .. vinegar|brine; cut~|stretch~ .. vinegar|brine with water
			as_much|as_little|however_much of? the? vinegar|lemon_juice|lime_juice|citric_acid .. as|you; vinegar|lemon_juice|lime_juice|citric_acid ... only_if|unless you; brine|vinegar .. watered|thinned|diluted|weakened|let down?; go~ easy|light|lightly|gently on|with .. vinegar|lemon_juice|lime_juice|acid
			vinegar|lemon_juice|lime_juice|citric_acid ... a_little_at_a_time|bit_by_bit|gradually ... tast~; vinegar|lemon_juice|lime_juice|citric_acid ... tasting|taste as_you_go|as_you_pour|until|till
			leave~|left .. lemon|lemons|lime|limes .. out
			vinegar|lemon_juice|lime_juice|citric_acid if you like|fancy|want|wish|prefer|please|care; vinegar|lemon_juice|lime_juice|citric_acid .. too_much|too_sharp|too_sour ... half|less|halve~|cut~`,
		Where:   acidForSafety,
		Message: "acid that the recipe needs is cut down",
		Advice:  "Keep the acid as it was tested; sugar makes it milder.",
	},
}

// acidForSafety leaves out vinegar that is boiled down on the stove.
func acidForSafety(t *Text, s *sentence, h hit) bool {
	if h.maybe && !s.near("vinegar lemon lime acid") {
		return false
	}
	return whereAcidCounts(t, s, h) && !s.anyOf("syrupy thickened simmer simmering glaze")
}
