package validate

// lidEarly reports a pressure canner opened as soon as the pressure is gone.
var lidEarly = &Rule{
	ID:       "lid-early",
	Severity: Advice,
	Summary:  "a pressure canner opened as soon as the pressure is gone",
	Doc: `Since 2009 the guide asks to wait 10 minutes after the weight is off before the
lid is opened: the jars go on boiling inside, and lose their liquid in the
sudden cold. The page says so too; this is about words that say the opposite.`,
	Source: Source{
		Title:   "List of revisions, Complete Guide 2009 against 1994",
		Address: "http://www.docstoc.com/docs/50933361/Complete-Guide-to-Home-Canning-USDA-NIFA-Agriculture-Information",
	},
	Practice: &Practice{
		Phrases: `open~|remove~|lift~|take~ .. lid|canner|it .. as_soon_as|immediately|straight_away|right_away|at_once|the_moment ... zero|pressure|gone|down|drops|dropped; as_soon_as|when|once|the_moment .. pressure|gauge .. zero|gone|down|drops ... open~|remove~|lift~|take~ .. lid|canner .. immediately|straight_away|right_away|at_once
			as_soon_as|the_moment .. pressure|gauge .. zero|gone|down|drops ... open~|remove~|lift~|take~ .. lid|canner
			the_second|the_instant|the_minute|the_moment|as_soon_as .. pressure|gauge|dial|needle .. zero|gone|down|drops|hits ... open~|remove~|lift~|take~|whip~|pull~|pop~|unlock~|get .. lid|canner`,
		Where:   underPressure,
		Message: "the canner is opened too soon",
		Advice:  "Say: at zero take the weight off, wait 10 minutes, then open.",
	},
}
