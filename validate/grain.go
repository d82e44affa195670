package validate

import "stillroom/content"

// grain reports pasta, rice and other grain in a canned recipe.
var grain = &Rule{
	ID:       "grain",
	Severity: Error,
	Summary:  "pasta, rice, barley, bread or another grain in a canning jar",
	Doc: `Noodles, rice and grain swell and thicken the liquid around them, so that heat no
longer reaches the middle of the jar in the tested time. Cook them when the jar is
opened, and write them as "to serve".`,
	Source: Source{
		Title:   "Canning soups, Clemson Cooperative Extension",
		Address: "https://clemson.edu/extension/food/canning/canning-tips/05canning-soups.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		return m.keepOut(m.unlisted(ItemPasta, ItemGrain), "pasta and grain slow the heat in the jar", "Add it when the jar is opened.")
	},
}
