package validate

// untilSealed reports a process that ends when the lids seal or pop.
var untilSealed = &Rule{
	ID:       "until-sealed",
	Severity: Error,
	Summary:  "a process that ends when the lids seal or pop",
	Doc: `A process is a time at a temperature. Lids may seal long before the middle of a
jar is hot, or not until it has cooled; what they do says nothing about the
food. Give the minutes of the table.`,
	Source: Source{
		Title:   "K-State You Asked It, home-canned peas",
		Address: "http://enewsletters.k-state.edu/youaskedit/2019/03/14/botulism-outbreak-in-home-canned-peas/",
	},
	Practice: &Practice{
		Phrases: `process~|boil~|simmer~|heat~|steam~|cook~|bathe~|bath|bake~ ... until|till .. @lid|@jar|@it|you|tops|all|each ... seal~|pop~|ping~|plink~|click~|snap~
			process~|boil~|simmer~|heat~|steam~|cook~|bake~ ... until|till .. sealed|seal|popped|pinging|popping; process~|boil~|simmer~ ... until|till you|they|i|we hear ... pop~|ping~|plink~|click~; leave~|keep~|process~|boil~ ... boiling|canner~|bath|water ... until|till ... lids go|pull|suck|drop|sink .. down|snap~
			keep~|hold~|maintain~ .. pressure|boiling|boil|heat|simmer ... until|till ... seal~|sealed|pop~|ping~|plink~|popped; leave~|keep~|let~ .. in|under .. canner~|bath|water|pot|oven|kettle ... until|till ... seal~|sealed|pop~|ping~|plink~|popped
			done|ready|finished|processed when|once .. lid|lids|tops .. pop~|popped|ping~|seal~|sealed|down; until all the lids have? seal~|sealed|popped .. in
			leave~|keep~|boil~|process~|simmer~|heat~ ... as_long_as|however_long ... takes|take|need .. @lid|@jar|tops|@it .. seal~|suck~|pop~|ping~|go; done|ready|finished .. when|once .. @lid|tops ... concave|hollow|dented|dip~|dimple~; leave~|keep~|boil~|process~|simmer~ ... until|till .. @lid|tops ... concave|hollow|suck~|dip~
			boil~|process~|leave~|keep~|simmer~ ... until|till|however_long|as_long_as ... lid|lids|tops|caps ... go|goes|gone|went|come|drawn|sucked|pulled down|in|under|flat`,
		Where:   beforeCooling,
		Message: "a process ends after minutes, not when the lids seal",
		Advice:  "Write the minutes of the table, or leave them to it.",
	},
}

// beforeCooling leaves out jars that cool until their lids are down.
func beforeCooling(_ *Text, s *sentence, h hit) bool {
	return !s.anyIn("cool cooled cooling stand undisturbed towel counter rest overnight", h.from, s.len())
}
