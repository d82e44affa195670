package validate

import (
	"math/big"

	"stillroom/content"
)

// dairy reports milk, cream, cheese and butter in a canned recipe.
var dairy = &Rule{
	ID:       "dairy",
	Severity: Error,
	Summary:  "milk, cream, cheese or butter in a canning jar",
	Doc: `Dairy is low in acid, thickens, and its fat shields spores from the heat. None of
it goes into a jar; stir it in when the jar is opened.

Jams are published with up to a teaspoon of butter against foam, and canned
lemon curd with butter of its own: there it may stand, in no more than that.`,
	Source: Source{
		Title:   "Can I home can creamed soup?, Kansas State University Extension, 2016",
		Address: "https://enewsletters.k-state.edu/youaskedit/2016/12/15/can-i-home-can-creamed-soup",
	},
	CheckKeeping: checkDairy,
}

func checkDairy(_ *content.Recipe, m *Match) []Finding {
	fs := m.keepOut(m.unlisted(ItemDairy, ItemButter), "dairy is kept out of canning jars", "Stir it in when the jar is opened.")
	if !m.Keeping.Way.V.Canned() || !m.lists(ItemButter) {
		return fs
	}
	if len(m.Tested) > 0 && len(m.Tested[0].tested.of(RoleButter)) > 0 {
		return append(fs, m.tooMuch(RoleButter, "Use no more than that.")...)
	}
	return append(fs, m.foam()...)
}

// foam reports more butter than jam is published with against foam.
func (m *Match) foam() []Finding {
	most := LimitOf("butter-against-foam")
	var fs []Finding
	for _, in := range ofRole(m.inJar(), RoleButter) {
		if tsp, ok := in.teaspoons(); ok && tsp.Cmp(most.High) <= 0 {
			continue
		}
		fs = append(fs, Finding{
			Pos:     in.Pos,
			Message: in.Item + ": more than the " + most.High.RatString() + " tsp that jam is published with against foam",
			Advice:  "Use a teaspoon at most, or skim the foam off.",
			Source:  most.Source,
		})
	}
	return fs
}

// teaspoons gives the upper end of an amount by volume, or of one in the
// weight that a teaspoon of it has.
func (in Item) teaspoons() (*big.Rat, bool) {
	if q, ok := in.in(content.Teaspoon); ok {
		return q.High, true
	}
	g, ok := in.in(content.Gram)
	each, _, known := GramsPerCup(in.Item)
	if !ok || !known {
		return nil, false
	}
	spoons := new(big.Rat).Quo(g.High, each)
	return spoons.Mul(spoons, big.NewRat(48, 1)), true // 48 teaspoons make a cup
}
