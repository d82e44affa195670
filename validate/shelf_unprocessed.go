package validate

import "stillroom/content"

// shelfUnprocessed reports moist food that is kept at room temperature or in
// a cellar without a process.
var shelfUnprocessed = &Rule{
	ID:       "shelf-unprocessed",
	Severity: Error,
	Summary:  "jam, pickles, sauce or soup in a cellar without a canning process",
	Doc: `A hot fill and a lid that pops are no process: what got in with the air, or sat in the
headspace, is alive. Sugar does not keep jam by itself and vinegar does not keep
pickles: unprocessed they belong in the refrigerator. A cool store is for roots, apples,
vinegars, and crocks that have finished fermenting.`,
	Source: Source{
		Title:   "Unsafe canning methods, University of Illinois Extension",
		Address: "https://extension.illinois.edu/cottage-food/unsafe-methods",
	},
	CheckKeeping: func(r *content.Recipe, m *Match) []Finding {
		if m.Keeping.Way.V != content.CoolStore || !moistKinds[r.Kind.V] {
			return nil
		}
		return []Finding{{
			Pos:     m.Keeping.Way.Pos,
			Message: string(r.Kind.V) + " is not kept in a cool store without a process",
			Advice:  "Can it by a tested process, or keep it in the refrigerator or the freezer.",
		}}
	},
}

// moistKinds are the kinds of food that spoil without a process or cold.
var moistKinds = map[content.Kind]bool{
	content.Jam: true, content.Jelly: true, content.Marmalade: true, content.Conserve: true, content.FruitButter: true,
	content.Syrup: true, content.Juice: true, content.Sauce: true, content.Salsa: true, content.Ketchup: true,
	content.Chutney: true, content.Relish: true, content.Pickle: true, content.PieFilling: true,
	content.Soup: true, content.Meat: true, content.Poultry: true, content.Fish: true,
}
