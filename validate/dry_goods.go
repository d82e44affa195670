package validate

import "stillroom/content"

// dryGoods reports dry food that is "canned".
var dryGoods = &Rule{
	ID:       "dry-goods",
	Severity: Error,
	Summary:  "flour, grain, nuts or other dry food that is called canned",
	Doc: `Dry food keeps because it is dry. Heating it in sealed jars draws out what moisture
it has and shuts it in, lets fat turn rancid, and kills nothing that matters. Keep
it in a tight jar in a cool place, or freeze it.

Dried beans are canned by a process of their own, after soaking and boiling.`,
	Source: Source{
		Title:   "Preserve it fresh, preserve it safe, University of Wisconsin Extension Winnebago County, 2024",
		Address: "https://winnebago.extension.wisc.edu/2024/03/04/preserve-it-fresh-preserve-it-safe-a-newsletter-for-those-who-preserve-food-at-home-march-april-2024",
	},
	CheckKeeping: checkDryGoods,
}

// dryKinds are the kinds of item without moisture of their own.
var dryKinds = map[ItemKind]bool{
	ItemStarch: true, ItemPasta: true, ItemGrain: true, ItemNut: true, ItemLeavening: true,
	ItemSugar: true, ItemSalt: true, ItemSpice: true,
}

func checkDryGoods(r *content.Recipe, m *Match) []Finding {
	if !m.Keeping.Way.V.Canned() || len(m.Items) == 0 || len(m.ofKind(ItemStarch, ItemPasta, ItemGrain, ItemNut)) == 0 {
		return nil
	}
	for _, in := range m.Items {
		if !dryKinds[in.Class.Kind] || in.Class.Variety == "syrup" || in.Class.Variety == "honey" {
			return nil
		}
	}
	return []Finding{{
		Pos:     m.Keeping.Way.Pos,
		Message: "nothing in it is moist: dry food is not canned",
		Advice:  "Keep it dry in a tight jar, or freeze it.",
	}}
}
