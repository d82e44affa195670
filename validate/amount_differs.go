package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// amountDiffers reports an amount in a step that is not the one of the list.
var amountDiffers = &Rule{
	ID:       "amount-differs",
	Severity: Warning,
	Summary:  "an amount in a step other than in the list",
	Doc: `"Stir in the 2 cups of sugar" beside a list that has 4 leaves the reader to choose,
and with vinegar or onions the choice is one of safety. More than is listed is never
right; less is, where the step takes a part of it, or an amount for each jar.`,
	Source:    Source{Title: "UMaine Cooperative Extension Bulletin 4086, readability (inference)"},
	CheckText: checkAmountDiffers,
}

func checkAmountDiffers(t *Text) []Finding {
	if t.Recipe == nil || len(t.Recipe.Ingredients) == 0 {
		return nil
	}
	var fs []Finding
	for _, s := range t.counting() {
		if s.place != placeStep {
			continue
		}
		for _, f := range s.figures() {
			u, ok := s.amountOf(f)
			if !ok || s.isServed() || s.takesPart() || s.isDifference(f) || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			if want := t.listed().amountMissed(f, u, t.method(), t); want != "" {
				fs = append(fs, Finding{
					Pos:     s.pos(f.from),
					Message: fmt.Sprintf("%s of %s here, where the list has %s", s.words(f.from, f.to), s.words(u.from, u.to), want),
					Advice:  "Write the same in both places.",
				})
			}
		}
	}
	return fs
}

// takesPart reports whether the amounts of a sentence are not those of the
// list: for each jar, in lots, or what it should come to.
func (s *sentence) takesPart() bool {
	return s.anyOf("each every per apiece ratio at makes make yield yields want should measure measured time batch lots twice times another")
}

// amountOf gives the ingredient that a figure of weight or volume measures.
func (s *sentence) amountOf(f mention) (use, bool) {
	if d := f.measures; d != content.VolumeDim && d != content.WeightDim || s.at(f.to-1).after != 0 {
		return use{}, false
	}
	for _, u := range s.uses() {
		if u.from < f.to {
			continue
		}
		if u.from > f.to+4 || s.partsBetween(f.to-1, u.from) {
			return use{}, false
		}
		if u.kind == ItemOther || u.kind == ItemWater {
			return use{}, false
		}
		return u, !s.isAny(u.to, "pot pan jar jars mixture")
	}
	return use{}, false
}

// amountMissed gives what the list has if an amount cannot be it: more than all
// that is listed, or less in the only place where a step names it.
func (l *listing) amountMissed(f mention, u use, m *methodWords, t *Text) string {
	total, texts := new(big.Rat), ""
	for _, in := range l.items {
		if !in.sameThing(u) {
			continue
		}
		amount := in.amountIn(f.unit)
		if amount == nil {
			return ""
		}
		if compare(amount, highOf(f)) == 0 || t.isBatchOf(amount, highOf(f)) {
			return ""
		}
		total.Add(total, amount)
		texts += in.Amount.String() + " "
	}
	if total.Sign() == 0 {
		return ""
	}
	c := highOf(f).Cmp(total)
	slack := new(big.Rat).Mul(total, big.NewRat(105, 100))
	if c == 0 || c > 0 && highOf(f).Cmp(slack) <= 0 || c < 0 && (m.count(u) > 1 || u.anyIn("the of", f.to, u.from) && u.anyIn("the", f.to, u.from)) || t.isBatchOf(total, highOf(f)) {
		return ""
	}
	return texts[:len(texts)-1]
}

func highOf(f mention) *big.Rat { return f.high.rat() }

// sameThing reports whether a listed item is what a step names.
func (in Item) sameThing(u use) bool {
	if in.Class.Kind != u.kind {
		return false
	}
	if u.produce > 0 {
		return in.Class.Produce.Name == kitchen().produce[u.produce-1].Name
	}
	return u.variety == "" || in.Class.Variety == "" || in.Class.Variety == u.variety
}

// amountIn gives the upper end of a listed amount in a unit, from any of those
// that its line gives; nil if it is not measured so.
func (in Item) amountIn(unit content.Unit) *big.Rat {
	for _, q := range append([]content.Quantity{in.Amount}, in.Same...) {
		if c, ok := q.In(unit); ok {
			return c.High
		}
	}
	return nil
}

// isBatchOf reports whether an amount is that of a whole batch of another way
// of keeping, or a multiple that the steps may ask for.
func (t *Text) isBatchOf(one, said *big.Rat) bool {
	for _, k := range t.Recipe.Keeping {
		if k.Factor.Set() && new(big.Rat).Mul(one, k.Factor.V.Low).Cmp(said) == 0 {
			return true
		}
	}
	return false
}

// count is how often the steps name the same thing.
func (m *methodWords) count(u use) (n int) {
	for o := range m.uses() {
		if o.kind == u.kind && o.produce == u.produce {
			n++
		}
	}
	return n
}
