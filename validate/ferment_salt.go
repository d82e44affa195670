package validate

import "stillroom/content"

// fermentSalt reports salt left out of a ferment, or cut down.
var fermentSalt = &Rule{
	ID:       "ferment-salt",
	Severity: Error,
	Summary:  "salt left out of a ferment, or cut down",
	Doc: `In a crock the salt decides which germs grow. With too little, or with a salt
substitute, the wrong ones may. In vegetables and tomatoes that are canned, and
in quick pickles, salt is for taste and may be left out.`,
	Source: Source{
		Title:   "Nebraska Extension, salt",
		Address: "https://extension.unl.edu/statewide/scottsbluff-morrill/?page=6",
	},
	Practice: &Practice{
		Phrases: `salt .. is|are .. optional|flavor|flavour|taste; leave~ .. out .. salt; leave~ .. the salt .. out; omit~|skip~ .. salt; reduce~|halve~|lower~|decrease~ the|your|some? amount_of? salt; cut~ back|down? on|the|your? salt
			cut~ .. salt .. down|back|half|by; go~ easy|light .. salt; use~|add~|with|need|try~ .. less|half_the salt; without .. salt; salt .. to taste|your_taste; salt .. can|may|could be? left_out|reduced|omitted|halved|skipped|cut
			salt substitute~|replacement; low_sodium|lite|reduced_sodium salt; salt free|free_ferment kraut|sauerkraut|ferment; no_salt kraut|sauerkraut|ferment|pickles|kimchi; salt_free kraut|sauerkraut|ferment|pickles
			salt & to_your_liking|as_you_like|as_you_please|by_eye|by_feel|by_guess|as_much_or_as_little`,
		Where:   ofAFerment,
		Message: "a ferment needs its salt",
		Advice:  "Keep the tested salt, by weight.",
	},
}

// ofAFerment holds in recipes that ferment, and where others speak of it.
func ofAFerment(t *Text, s *sentence, _ hit) bool {
	if s.has(famBad) || s.anyOf("soft slimy mushy") {
		return false
	}
	if t.Recipe != nil {
		return t.hasWay(content.Fermenting)
	}
	const ferments = "ferment ferments fermented fermenting fermentation kraut sauerkraut kimchi crock"
	for i := range s.len() {
		if s.isAny(i, ferments) && s.anyIn("not except but never", i-4, i) {
			return false // "leave out salt (not in a crock)"
		}
	}
	return s.near(ferments)
}
