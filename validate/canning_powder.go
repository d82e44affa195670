package validate

// canningPowder reports aspirin, canning powder or a tablet that is to keep
// food.
var canningPowder = &Rule{
	ID:       "canning-powder",
	Severity: Error,
	Summary:  "aspirin, canning powder or a tablet that is to keep food",
	Doc: `Aspirin, canning powders and preservative tablets do not stop what a process
stops, and never replaced it. Acid for tomatoes is bottled lemon juice or citric
acid, in the tested amount.`,
	Source: Source{
		Title:   "USDA Complete Guide to Home Canning (1994 text)",
		Address: "http://ldspreppers.com/showthread.php/7608-Answers-to-Common-Questions-Abbout-Home-Canning-Freezing-and-Making-Jams",
	},
	Practice: &Practice{
		Phrases: `add~|drop~|put~|use~|using|crush~|place~|stir~|with|plus|throw~|toss~|sprinkle~|an|one|two|dissolve~ .. aspirin~|salicylic|canning_powder~|canning_compound~|canning_tablet~|preserving_powder~|preserving_tablet~|preservative_tablet~|campden_tablet~|borax|boric
			aspirin~|canning_powder~|canning_compound~|preserving_powder~|preserving_tablet~|campden_tablet~ .. keep~|preserve~|replace~|prevent~|does|works|takes|will|makes|in|to|per
			aspirin~|salicylic_acid|canning_powder~ ... jar~|jars|boil~|boiling|canner|per|each|every|instead|saves|spares; quart|pint|@jar .. aspirin~|salicylic_acid|canning_powder~
			aspirin~|salicylic|borax|boric|campden|canning_powder~ & replaces|replace|takes_the_place|take_the_place|in_place|instead & process~|processing|canner|canning|boiling`,
		Message: "no powder or tablet replaces a process",
		Advice:  "Leave it out, and process the jars for the tested time.",
	},
}
