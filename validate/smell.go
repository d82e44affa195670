package validate

import "stillroom/content"

// smellTest reports a look or a sniff taken for a test of safety.
var smellTest = &Rule{
	ID:       "smell-test",
	Severity: Error,
	Summary:  "a look or a sniff taken for a test of safety",
	Doc: `The poison of botulism has no smell, no look and no taste. A jar that looks and
smells as it should tells nothing; one that does not is thrown out. What counts
is that it was processed for the tested time and that its seal has held.`,
	Source: Source{
		Title:   "NCHFP on dry canning",
		Address: "https://preservingfoodathome.com/category/uncategorized/",
	},
	Practice: &Practice{
		Phrases: `if .. smell~|look~ .. fine|good|ok|okay|right|alright|normal|fresh ... safe|fine|eat|good|ok|use|keep|edible|probably|go
			trust|follow|use|believe|rely_on your nose|eyes|senses|own_nose; sniff|smell|nose test; rely .. nose|smell|senses
			you|you'll|you'd|one|we|we'd|will|would|can|could|should .. smell|see|notice|know|tell .. if|when|whether|that|by|from|straight|right ... bad|off|spoil~|botulism|botulinum|unsafe|wrong|toxin~|rancid|safe|good
			you|you'll|you'd|we'd will|would|could? smell|see|notice botulism|botulinum|it; you can smell|see|notice botulism|botulinum|spoilage; can|could tell .. by|from .. smell|smelling|look|looks|looking|nose
			bad|spoiled jar|jars|food|can|batch|it .. will|would stink|smell|reek|look; botulism|spoiled|bad|contaminated|toxin .. smells|stinks|reeks|would smell|stink|look; sniff~|smell~ .. to|and .. see|check|tell|make_sure|decide .. safe|bad|good|off|fine|spoil~|ok|okay|edible
			looks|smells fine|good|okay .. so|and? .. safe|eat|edible; as_long_as .. looks|smells .. fine|good|okay|right|clear
			nothing|no|not|isn't|doesn't|don't .. smell~|smells|looks|odd|off|funny|bad ... dig_in|tuck_in|go_ahead|enjoy|good_to_go|safe|eat_it; clear|bright and|so .. dig_in|tuck_in|go_ahead|fine_to_eat|good_to_eat
			know|tell|decide|judge .. by|from .. smell|look|nose|sniff; smells|looks|seems|smell|look all_right|alright|right|normal|ok|okay|fine|good|fresh .. it_is|eat|safe|use|then|dig|tuck|keep; give~ .. sniff|whiff; trust|follow|believe|use .. nose|eyes|senses; spoiled|bad|toxic jar~|food|jars ... give~ .. away|show~|stink~|reek~
			tell|know|spot|recognise|recognize ... by|from .. stink|stench|smell|reek|odour|odor|whiff|nose
			nose|eyes|smell will|would|can|does|should? tell~|let~|warn~ .. you|know|if|when; bad|spoiled|turned beans|corn|meat|fish|tomatoes|food stink~|reek~|smell~`,
		Where:   notFerment,
		Message: "nobody can see or smell botulism",
		Advice:  "Say instead what to throw out: bulging, leaking, spurting, mouldy, or not processed as tested.",
	},
}

// notFerment leaves out a crock, whose smell tells when it is done.
func notFerment(t *Text, s *sentence, _ hit) bool {
	return !s.anyOf("ripe") && (!t.hasWay(content.Fermenting) || s.anyOf("botulism"))
}
