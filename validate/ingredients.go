package validate

import (
	"stillroom/content"
)

// An Item is an ingredient and what the tables know of it.
type Item struct {
	*content.Ingredient
	Class ItemClass
	For   string // the heading of its group: "the brine"; empty for a plain list
}

// itemsOf classifies the ingredients of a recipe, in their order.
func itemsOf(r *content.Recipe) []Item {
	n := 0
	for _, g := range r.Ingredients {
		n += len(g.Items)
	}
	items := make([]Item, 0, n)
	for _, g := range r.Ingredients {
		for i := range g.Items {
			in := &g.Items[i]
			items = append(items, Item{in, ClassifyItem(in.Item, in.Note), g.For.V})
		}
	}
	return items
}
