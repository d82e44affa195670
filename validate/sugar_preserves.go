package validate

// sugarPreserves reports sugar, salt or vinegar said to keep unprocessed jars.
var sugarPreserves = &Rule{
	ID:       "sugar-preserves",
	Severity: Error,
	Summary:  "sugar, salt or vinegar said to keep unprocessed jars",
	Doc: `Sugar binds water, and that slows what spoils jam; it does not stop mould, and
jam with less sugar moulds sooner. Jars for the shelf are processed whatever is
in them.`,
	Source: Source{
		Title:   "UNH Extension, top questions",
		Address: "https://extension.unh.edu/blog/2017/08/top-food-preservation-questions",
	},
	Practice: &Practice{
		Phrases: `sugar|honey|salt|vinegar ... preserve~|preservative|keep~|keeps|enough ... so|no|without|needn't|don't|not|instead ... process~|processing|canner|bath|canning|heat|refrigerate~
			enough|so_much sugar|vinegar|salt .. to|that|in .. preserve~|keep~ .. shelf|pantry|years|months|indefinitely|forever|room|cupboard|without
			sugar|honey does|do|will .. preserving|preserve .. no|all|job|work|so; sugar|vinegar is the|a? preservative .. so|no|and_no|which
			sugar|vinegar takes_care|replaces|makes_up .. process~|processing|canner|bath
			with|so|this|enough|that much? sugar|vinegar|salt ... nothing|no|never .. can|will|could|able .. grow~|live~|spoil~; nothing|no_germ~ .. can|will|could .. grow|live|survive .. in .. much|so .. sugar|vinegar|salt; sugar|vinegar|salt ... nothing .. grow~|live~|spoil~ .. canned|canner|process~|heat`,
		Message: "sugar does not take the place of a process",
		Advice:  "Process the jars, or keep them in the refrigerator.",
	},
}
