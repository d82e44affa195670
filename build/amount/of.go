package amount

import (
	"math/big"
	"slices"
	"strings"

	"stillroom/content"
	"stillroom/validate"
)

// A Line is a line of the list of ingredients, and how much it asks for.
type Line struct {
	Item   content.Ingredient
	Amount Amount
	Known  bool // the line gives an amount that could be read
}

// Lines gives the lines of a recipe, group by group.
func Lines(r *content.Recipe) [][]Line {
	var groups [][]Line
	for _, g := range r.Ingredients {
		var lines []Line
		for _, i := range g.Items {
			a, known := Of(r, i)
			lines = append(lines, Line{i, a, known})
		}
		groups = append(groups, lines)
	}
	return groups
}

// Of gives how much of an ingredient a recipe asks for. It reports false for a
// line that gives no amount that could be read.
func Of(r *content.Recipe, i content.Ingredient) (Amount, bool) {
	if i.Amount.IsZero() || i.Unread != "" || !measured(i.Amount.Unit) {
		return Amount{}, false
	}
	a := of(r, i)
	a.Ways = []content.Quantity{i.Amount}
	for _, q := range i.Same {
		if measured(q.Unit) {
			a.Ways = append(a.Ways, q)
		}
	}
	if own := a.weighed(); own != nil {
		a.Grams, a.Source = own, validate.Source{}
	}
	return a, true
}

// Part gives some of an ingredient, as a step or a note speaks of it.
func Part(r *content.Recipe, i content.Ingredient, q content.Quantity) Amount {
	whole, ok := Of(r, i)
	if !ok {
		whole = of(r, i)
	}
	whole.Ways = []content.Quantity{q}
	return whole
}

// of tells what must be known of an ingredient before its amount is written.
func of(r *content.Recipe, i content.Ingredient) Amount {
	c := validate.ClassifyItem(i.Item, i.Note)
	a := Amount{Round: rounding(r, c), Pours: pours(i.Item, c.Kind), Spoons: spooned(c.Kind)}
	g, source, ok := validate.GramsPerCup(i.Item + ", " + i.Note)
	if !ok && i.Note != "" {
		g, source, ok = validate.GramsPerCup(i.Item)
	}
	if ok {
		a.Grams, a.Source = g, source
	}
	return a
}

// measured reports whether a unit is one that grows with the batch.
func measured(u content.Unit) bool {
	switch u.Dimension() {
	case content.VolumeDim, content.WeightDim, content.Count, content.LengthDim:
		return true
	}
	return false
}

// weighed gives what a cup weighs by the line's own words: 2 cups (400 g).
func (a Amount) weighed() *big.Rat {
	var cup, gram *big.Rat
	for _, q := range a.Ways {
		switch q.Unit.Dimension() {
		case content.VolumeDim:
			cup = in(q.Low, q.Unit, content.Cup)
		case content.WeightDim:
			gram = in(q.Low, q.Unit, content.Gram)
		}
	}
	if cup == nil || gram == nil || cup.Sign() == 0 {
		return nil
	}
	return gram.Quo(gram, cup)
}

// rounding keeps the balance of acid and of what needs it. Tomatoes bring some
// acid themselves, and low-acid food is weighed against them. Salt is what a
// ferment's safety stands on: it is never reduced.
func rounding(r *content.Recipe, c validate.ItemClass) Rounding {
	if c.Produce.Group == validate.TomatoLike {
		return Up
	}
	switch c.Kind {
	case validate.ItemVinegar, validate.ItemCitrusJuice, validate.ItemCitricAcid:
		return Up
	case validate.ItemSalt:
		if ferments(r) {
			return Up
		}
	case validate.ItemVegetable, validate.ItemLegume, validate.ItemMushroom, validate.ItemGarlic, validate.ItemHerb,
		validate.ItemMeat, validate.ItemEgg, validate.ItemDairy, validate.ItemButter, validate.ItemFat, validate.ItemNut,
		validate.ItemStarch, validate.ItemModStarch, validate.ItemGrain, validate.ItemPasta,
		validate.ItemPrepared, validate.ItemWater, validate.ItemStock:
		return Down
	}
	if c.Produce.Acidity == validate.LowAcid {
		return Down
	}
	return Nearest
}

func ferments(r *content.Recipe) bool {
	return slices.ContainsFunc(r.Keeping, func(k content.Keeping) bool { return k.Way.V == content.Fermenting })
}

// pours reports whether an ingredient is a liquid.
func pours(item string, k validate.ItemKind) bool {
	switch k {
	case validate.ItemVinegar, validate.ItemCitrusJuice, validate.ItemWater, validate.ItemStock, validate.ItemAlcohol:
		return true
	}
	words := strings.Fields(strings.ToLower(item))
	return slices.ContainsFunc([]string{"juice", "cider", "milk", "broth", "brine", "syrup"}, func(w string) bool {
		return slices.Contains(words, w)
	})
}

// spooned reports whether an ingredient is measured with cups and spoons
// wherever those are used, and not by weight.
func spooned(k validate.ItemKind) bool {
	switch k {
	case validate.ItemSugar, validate.ItemSweetener, validate.ItemSalt, validate.ItemSpice, validate.ItemPectin,
		validate.ItemCitricAcid, validate.ItemAscorbicAcid, validate.ItemCrisping, validate.ItemStarch,
		validate.ItemModStarch, validate.ItemPicklingLime:
		return true
	}
	return false
}
