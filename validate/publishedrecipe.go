package validate

import (
	"math/big"
	"sync"
)

// A PublishedRecipe is the recipe that a process was published with, as far
// as it was seen: for comparing amounts, and for those who look for one.
type PublishedRecipe struct {
	Name      string
	Process   string // its ID
	Fruit     string
	Sugar     string
	Acid      string
	Pectin    string
	Yield     string
	Headspace *big.Rat // inches
	Minutes   string   // half-pint: 0-1000=5; 1001-6000=10; 6001-=15
	Source    Source
}

// PublishedRecipes gives the recipes, in the order of their table. Nobody may
// change them.
func PublishedRecipes() []PublishedRecipe { return publishedRecipes() }

var publishedRecipes = sync.OnceValue(func() []PublishedRecipe {
	var ps []PublishedRecipe
	for _, r := range readTable("published-recipes.tsv") {
		ps = append(ps, PublishedRecipe{
			Name:      r.text("recipe"),
			Process:   r.text("process"),
			Fruit:     r.text("fruit"),
			Sugar:     r.text("sugar"),
			Acid:      r.text("acid"),
			Pectin:    r.text("pectin"),
			Yield:     r.text("yield"),
			Headspace: r.rat("headspace_in"),
			Minutes:   r.text("minutes"),
			Source:    r.source("publication"),
		})
	}
	return ps
})
