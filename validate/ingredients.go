package validate

import (
	"stillroom/content"
)

// An Item is an ingredient and what the tables know of it.
type Item struct {
	*content.Ingredient
	Class ItemClass
}

// itemsOf classifies the ingredients of a recipe, in their order.
func itemsOf(r *content.Recipe) []Item {
	var items []Item
	for _, g := range r.Ingredients {
		for i := range g.Items {
			in := &g.Items[i]
			items = append(items, Item{in, ClassifyItem(in.Item, in.Note)})
		}
	}
	return items
}
