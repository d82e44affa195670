package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// onePot reports jam that is made in more than the published batch at once.
var onePot = &Rule{
	ID:       "one-pot",
	Severity: Warning,
	Summary:  "jam or jelly made in more than the published batch at once",
	Doc: `A large pot takes long to come to the set: the pectin breaks down and the fruit cooks
brown. Jam and jelly are made a published batch at a time. A batch that is larger than
the published one, or a factor that makes it so, is a warning here.

"scale: {largest: 3}" is offered to readers as three separate batches, and is only
advised against for what has to set.`,
	Source: Source{
		Title:   "Can I double the recipe?, National Center for Home Food Preservation, 2025",
		Address: "https://nchfp.uga.edu/newsflash/can-i-double-the-recipe",
	},
	CheckKeeping: checkOnePot,
}

func checkOnePot(r *content.Recipe, m *Match) []Finding {
	if !isSpread(r.Kind.V) {
		return nil
	}
	var fs []Finding
	if largest := r.Scale.Largest; largest.Set() && compareWhole(largest.V.High, 1) > 0 && m.Keeping == &r.Keeping[0] {
		fs = append(fs, Finding{
			Pos:      largest.Pos,
			Severity: Advice,
			Message:  "jam and jelly are best made one batch at a time",
			Advice:   "Write largest: 1; the page offers more as separate batches, which is much work at one stove.",
		})
	}
	return append(fs, m.besideTested(func(c *comparison) []Finding { return c.overBatch(m.Keeping) })...)
}

// overBatch compares the fruit of what is cooked at once with the published
// batch.
func (c *comparison) overBatch(k *content.Keeping) []Finding {
	fruit := ofRole(c.items, RoleFruit)
	x := timesTested(fruit, c.tested.of(RoleFruit), highEnd)
	if x == nil {
		return nil
	}
	pos := fruit[0].Pos
	if k.Factor.Set() {
		x.Mul(x, k.Factor.V.High)
		pos = k.Factor.Pos
	}
	if compareWhole(x, 1) <= 0 {
		return nil
	}
	return []Finding{{
		Pos:     pos,
		Message: fmt.Sprintf("%s of the published batch in one pot", shareOver(x, big.NewRat(1, 1))),
		Advice:  "The published batch has " + lineOf(c.tested.of(RoleFruit)) + ". Make several pots of it.",
		Source:  c.tested.source(),
	}}
}
