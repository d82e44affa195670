package validate

import "stillroom/content"

// shopJars reports jars that food was bought in used for canning.
var shopJars = &Rule{
	ID:       "shop-jars",
	Severity: Error,
	Summary:  "jars that food was bought in used for canning",
	Doc: `A jar that held mayonnaise or sauce was made for one use. It breaks more easily,
above all in a pressure canner, and its rim does not fit a two-piece lid well.
In boiling water it is a warning only: they are tolerated for acid food, and
lose more seals.`,
	Source: Source{
		Title:   "USDA Complete Guide to Home Canning (jars)",
		Address: "https://mail.recipesource.com/misc/canning/jars-lids1.html",
	},
	Practice: &Practice{
		Phrases: `mayonnaise|mayo|recycled|upcycled|repurposed|peanut_butter|spaghetti_sauce|pasta_sauce|store_bought|baby_food|coffee|commercial|supermarket|shop jar~|jars
			reuse~|re_use|save~|use~|wash~|recycle~ .. old|empty|commercial|store_bought|bought|used|any .. jam|pickle|sauce|mayonnaise|honey|salsa|food? jars; any clean|old|glass|empty? jar~|jars .. with|will|works|do; any|old|empty|leftover .. jam|pickle|sauce|mayonnaise|honey|coffee jar~ .. work~|will|do|fine|ok|with|too; jars|jar saved|left from|over
			one_piece|lug|twist_off|original .. lids|caps|closures|lid
			jar~|jars that|which|your|the .. came|comes|come in; jar~|jars .. bought with|full .. in .. supermarket|shop|store
			sauce|jam|pickle|honey|coffee|salsa|baby_food|juice jar~|jars .. we|i|you|they buy|bought|get|got ... can|canning|jar|fill~; save~|keep~ .. every|all|each|my|the|our .. sauce|jam|pickle|honey|coffee|salsa|juice jar~|jars ... can|canning|fill~`,
		Where:   jarsForShelf,
		Grade:   shopJarsWeigh,
		Message: "jars that food was bought in are not made for canning",
		Advice:  "Ask for jars made for home canning, with two-piece lids.",
	},
}

// shopJarsWeigh makes it an error only where jars are put under pressure.
func shopJarsWeigh(t *Text, s *sentence) Severity {
	if t.hasWay(content.PressureCanner) || s.anyOf("pressure") {
		return Error
	}
	return Warning
}
