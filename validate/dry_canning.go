package validate

// dryCanning reports vegetables or dry goods canned without liquid.
var dryCanning = &Rule{
	ID:       "dry-canning",
	Severity: Error,
	Summary:  "vegetables or dry goods canned without liquid",
	Doc: `The times for vegetables were measured with liquid in the jar, which carries the
heat. Flour, nuts, beans and rice sealed in a hot jar are not canned at all:
what moisture they hold is shut in. Meat and fish that are packed without liquid
have times of their own.`,
	Source: Source{
		Title:   "UW Extension Winnebago 2024",
		Address: "https://winnebago.extension.wisc.edu/2024/03/04/preserve-it-fresh-preserve-it-safe-a-newsletter-for-those-who-preserve-food-at-home-march-april-2024",
	},
	Practice: &Practice{
		Phrases: `dry can|canned|canning|cans; can|canned|canning|oven_can .. flour|rice|nuts|oats|dry_goods|dried_beans|pasta|cereal|dry_beans; vacuum_can|vacuum_canned|vacuum_canning
			can|process~|canned|canning|pressure .. potato~|potatoes|carrots|beans|vegetables|corn|squash|beets|mushrooms .. without|with_no|no .. water|liquid|brine; @jar .. of potatoes|carrots|beans|vegetables|corn .. without|with_no .. water|liquid
			no|without adding|any|added? .. water|liquid .. to .. potatoes|carrots|beans|vegetables|corn
			pack~|fill~|jar .. potatoes|carrots|beans|vegetables|corn|squash|beets|mushrooms .. with|without .. no|any? water|liquid; pack~|fill~ .. potatoes|carrots|beans|vegetables|corn|squash|beets|mushrooms .. dry|without
			beans|corn|vegetables|potatoes|carrots|peas|squash|they .. make|release|give|have .. own juice|juices|liquid`,
		Message: "this is canned without the liquid that was tested",
		Advice:  "Add the liquid of the tested process; store dry goods dry.",
	},
}
