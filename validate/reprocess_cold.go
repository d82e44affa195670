package validate

// reprocessCold reports an unsealed jar put back as it is.
var reprocessCold = &Rule{
	ID:       "reprocess-cold",
	Severity: Warning,
	Summary:  "an unsealed jar put back as it is",
	Doc: `A jar that did not seal has cooled. To process it again, empty it, heat the
food, and pack it hot into a clean jar with a new lid, for the full time; or
freeze it, or keep it cold. Where only a raw pack was tested, there is no second
time.`,
	Source: Source{
		Title:   "K-State, reprocessing",
		Address: "https://enewsletters.k-state.edu/youaskedit/?p=3096",
	},
	Practice: &Practice{
		Phrases: `put~|pop~|return~|drop~|set~|stick~|throw~|run~ .. @jar|@it|one|ones .. straight|right|just|back back|into|in|through .. canner~|pot|water|bath; reprocess~ .. as_is|as_it_is|as_they_are|straight|without
			reprocess~|process~ .. again .. with|using .. same lid~|jar; reprocess~ .. same lid~; put~ .. unsealed|failed .. back in|into .. canner~|pot|water|bath; just|simply process~|reprocess~|boil~ .. @jar|@it|ones? .. again|over
			goes|go|went|gets back|straight|right in|into|through|to .. canner~|pot|water|bath
			fails|fail|failed|didn't|doesn't|hasn't .. seal|sealed .. goes|go|put~|return~|pop~ .. back|straight in|into|through|to .. canner~|pot|water|bath
			heat~|boil~|process~ .. @jar|@it|one|ones .. again|over .. in_the_morning|tomorrow|next|later|days
			put~|pop~|return~|drop~|set~|stick~ .. @jar|@it|one|ones .. back in|into .. canner~|pot|water|bath .. just_as|as_it|as_they|as_is`,
		Where:   afterFailedSeal,
		Message: "an unsealed jar is processed again as it is",
		Advice:  "Say: empty it, reheat, new lid, full time; or keep it cold.",
	},
}

// afterFailedSeal holds where the text speaks of jars that did not seal.
func afterFailedSeal(t *Text, s *sentence, _ hit) bool {
	return t.canned() && s.near("unsealed seal sealed fail failed fails reprocess reprocessed") || s.anyOf("lid") && s.anyOf("didn't hasn't doesn't") && !s.anyOf("boil stops reheat reheated empty")
}
