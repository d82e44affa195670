package validate

import (
	"fmt"

	"stillroom/content"
)

// sugarCut reports a jam with boxed pectin that has less sugar to its fruit
// than the published recipe.
var sugarCut = &Rule{
	ID:       "sugar-cut",
	Severity: Warning,
	Summary:  "less sugar than the published recipe of a jam with regular pectin",
	Doc: `Regular pectin sets only in the tested measure of sugar and fruit. With less sugar
the jam stays thin, and moulds sooner. For less sugar use a pectin that is made for
it, by the recipe in its box.

Jam without added pectin, and pectin made for little sugar, are left alone.`,
	Source: Source{
		Title:   "Low-sugar jams and jellies, National Center for Home Food Preservation",
		Address: "http://nchfp.uga.edu/tips/summer/Lowsugar_JamsJelliesST.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		for _, in := range m.ofKind(ItemPectin) {
			if in.Class.Variety != "low-sugar" && in.Class.Variety != "home-made" {
				return m.besideTested((*comparison).sugarCut)
			}
		}
		return nil
	},
}

func (c *comparison) sugarCut() []Finding {
	sugar, tested := ofRole(c.items, RoleSugar), c.tested.of(RoleSugar)
	fruit := ofRole(c.items, RoleFruit)
	if len(sugar) == 0 || len(c.tested.of(RolePectin)) == 0 {
		return nil
	}
	have := timesTested(sugar, tested, highEnd)
	batch := timesTested(fruit, c.tested.of(RoleFruit), lowEnd)
	if have == nil || batch == nil || have.Cmp(batch) >= 0 {
		return nil
	}
	return []Finding{{
		Pos: sugar[0].Pos,
		Message: fmt.Sprintf("%s of the published sugar for this much fruit, with a pectin that needs it all",
			share(have, batch)),
		Advice: "The published recipe has " + lineOf(tested) + " to " + lineOf(c.tested.of(RoleFruit)) + ". Use that, or a pectin for little sugar.",
		Source: c.tested.source(),
	}}
}
