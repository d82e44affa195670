package validate

import "slices"

// frostedTomatoes reports tomatoes from dead or frosted vines in a jar.
var frostedTomatoes = &Rule{
	ID:       "frosted-tomatoes",
	Severity: Error,
	Summary:  "tomatoes from dead or frosted vines in a jar",
	Doc: `Tomatoes lose acid on vines that are dead or have been frosted, and the measured
dose of lemon juice counts on the acid of sound ones. Cook those for supper, or
freeze them.`,
	Source: Source{
		Title:   "USDA tomato guide",
		Address: "https://mail.recipesource.com/misc/canning/tomatoes-introduction1.html",
	},
	Practice: &Practice{
		Phrases: `frost|frosted|frost_killed|dead|dying|blighted vine~|plant~ ... tomato~|tomatoes; tomato~|tomatoes ... from|off|on .. dead|frosted|frost_killed|frost|dying|blighted
			tomato~|tomatoes .. after .. frost|freeze; maybe use~|can|pick~|save~|gather~|pull~|rescue~|harvest~|bring~ .. after|hit_by|nipped_by|touched_by|killed_by|caught_by .. frost
			frost_nipped|frost_bitten|frostbitten|frosted|frost_killed|frozen_on_the_vine tomato~|tomatoes; maybe vine~|plant~ .. are|were|have .. dead|died|frosted|killed ... can|fine|sauce|salsa|canning; after .. frost ... tomatoes|tomato .. can|jar~|sauce|salsa|canning|pick; frost|freeze got|hit|nipped|killed|took|came|struck ... tomatoes|tomato ... can|canned|canning|jar|jars|sauce
			after .. frost|freeze ... can|jar~|bottle~|preserve~ every|all|those|any|our|my|whatever|these tomato~|tomatoes; dead|frosted|frozen|blackened plant~|vine~ ... can|jar~|bottle~ every|all|those|any|our|my|the tomato~|tomatoes
			maybe after .. frost|freeze ... pick~|gather~|harvest~|save~|collect~ .. left|rest|remaining|what|whatever|last ... can|jar~|jars|bottle~`,
		Where:   tomatoesInJars,
		Message: "tomatoes from dead or frosted vines are too low in acid",
		Advice:  "Use tomatoes from living vines, or freeze these.",
	},
}

// tomatoesInJars holds where tomatoes are canned.
func tomatoesInJars(t *Text, s *sentence, h hit) bool {
	if !t.canned() || s.anyOf("freezer fridge refrigerator end") || s.anyIn("before", 0, s.len()) {
		return false
	}
	return !h.maybe || s.has(famTomato) || t.ofProduce("tomato")
}

// ofProduce reports whether the recipe is of that food.
func (t *Text) ofProduce(names ...string) bool {
	if t.Recipe == nil {
		return false
	}
	for _, p := range t.Recipe.Produce {
		food, ok := LookUpProduce(p.V)
		if ok && slices.Contains(names, food.Name) {
			return true
		}
	}
	return false
}
