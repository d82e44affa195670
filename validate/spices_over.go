package validate

import (
	"math/big"
	"sync"

	"stillroom/content"
)

// spicesOver reports half as much dried spice again, or more, than was tested.
var spicesOver = &Rule{
	ID:       "spices-over",
	Severity: Warning,
	Summary:  "over one and a half times the tested spices",
	Doc: `Dried spices and herbs of a tested recipe may be changed, cut and left out. A
state's rule for sellers lets them rise by half in all, and so do we: more than
that is no longer a pinch.`,
	Source: Source{
		Title:   "Approved recipes for craft foods, Nevada Department of Agriculture",
		Address: "https://agri.nv.gov/Food/Craft_Foods/Approved_Craft_Foods_Recipes/",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding { return m.besideTested((*comparison).spicesOver) },
}

func (c *comparison) spicesOver() []Finding {
	batch, by := c.batch()
	have, tested := spooned(ofRole(c.items, RoleSpice)), spooned(c.tested.of(RoleSpice))
	if batch == nil || len(have) == 0 || len(tested) == 0 {
		return nil
	}
	x := timesTested(have, tested, highEnd)
	if x == nil {
		return nil
	}
	if x.Cmp(new(big.Rat).Mul(spicesMost(), batch)) <= 0 {
		return nil
	}
	return []Finding{{
		Pos:     have[0].Pos,
		Message: "dried spices: " + shareOver(x, batch) + " of those that were tested with this " + plenty[by],
		Advice:  "The tested recipe has " + lineOf(tested) + ". Stay under one and a half times that in all.",
		Source:  c.tested.source(),
	}}
}

// spicesMost is how many times the tested spices there may be.
var spicesMost = sync.OnceValue(func() *big.Rat {
	more := new(big.Rat).Quo(LimitRat("spices-raise-most"), big.NewRat(100, 1))
	return more.Add(more, big.NewRat(1, 1))
})

// spooned picks what is measured by volume: sticks, leaves and cloves by
// number are left out on both sides.
func spooned(items []Item) []Item {
	var all []Item
	for _, in := range items {
		if _, ok := in.in(content.Teaspoon); ok {
			all = append(all, in)
		}
	}
	return all
}
