package build

// A RecipesPage is the larder: every recipe, by kind, with the ways into it.
type RecipesPage struct {
	Shell
	Count   string // 22 recipes
	Larder  Larder
	Year    []Month
	Produce []Counted
	Ways    []Counted
}

// A Counted is a link to a page of recipes, and how many stand on it.
type Counted struct {
	Name    string
	Address string
	Fill    string
	Count   int
}

func (e *edition) recipesPage() *RecipesPage {
	all := shelved(e.recipes)
	p := &RecipesPage{
		Count:   count(len(e.recipes), "recipe", "recipes"),
		Larder:  larder(all),
		Year:    e.year(e.day.Month),
		Produce: e.produceCounts(),
		Ways:    e.wayCounts(),
	}
	p.Shell = e.shell(leaf{
		address:     recipesAddress,
		name:        "Recipes",
		nodes:       e.lists(all),
		description: "Every recipe of " + e.settings.Name.V + ", by kind, produce, month and way of keeping.",
	})
	p.Vessels = vessels(p.Larder.jars())
	return p
}

func (e *edition) produceCounts() []Counted {
	var all []Counted
	for _, h := range e.harvests {
		all = append(all, Counted{capital(h.name), h.address, fillOf(h.name), len(h.recipes)})
	}
	return all
}

// wayCounts leaves out the ways that no recipe uses.
func (e *edition) wayCounts() []Counted {
	var all []Counted
	for _, w := range wayNames {
		if n := len(e.kept[w.way]); n > 0 {
			all = append(all, Counted{Name: w.name, Address: wayAddress(w.way), Count: n})
		}
	}
	return all
}
