package validate

// lidsBoiled reports lids boiled or simmered by an old rule.
var lidsBoiled = &Rule{
	ID:       "lids-boiled",
	Severity: Advice,
	Summary:  "lids boiled or simmered by an old rule",
	Doc: `Lids of today mostly want to be washed and no more; boiling can thin the sealing
compound. Follow the maker of the lids.`,
	Source: Source{Title: "CMES article on jars and lids 2024 (memory)"},
	Practice: &Practice{
		Phrases: `boil~|simmer~|sterilise|sterilize|scald~ the|your|new|flat|all? .. canning|flat|metal|new? lids; lids .. boiled|simmered|simmering|in_boiling|in_simmering; put~|place~|keep~|drop~|cover~ .. lids .. in|with .. boiling|simmering|hot_simmering`,
		Where:   onlyLids,
		Message: "lids are boiled or simmered",
		Advice:  "Say: wash the lids, and prepare them as their maker says.",
	},
}

// onlyLids leaves out jars and lids that are boiled together in the process.
func onlyLids(t *Text, s *sentence, h hit) bool {
	return inCanned(t, s, h) && !s.anyIn("over above cover covers", h.from, h.to+2) && !s.anyOf("maker maker's manufacturer manufacturer's packed sealed process processing inch") && s.find(famFill, 0, h.from) < 0
}
