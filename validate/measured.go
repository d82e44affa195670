package validate

import (
	"iter"
	"math/big"
	"strings"

	"stillroom/content"
)

// amounts gives every way in which a line says how much of its ingredient
// there is: what all its containers hold together, the amount itself, and the
// same amount in other units.
func (in Item) amounts() iter.Seq[content.Quantity] {
	return func(yield func(content.Quantity) bool) {
		if !in.Amount.IsZero() {
			if !in.Each.IsZero() && !yield(in.held()) || !yield(in.Amount) {
				return
			}
		}
		for _, q := range in.Same {
			if !yield(q) {
				return
			}
		}
	}
}

// held is what all containers hold together.
func (in Item) held() content.Quantity {
	return content.Quantity{
		Low:  new(big.Rat).Mul(in.Amount.Low, in.Each.Low),
		High: new(big.Rat).Mul(in.Amount.High, in.Each.High),
		Unit: in.Each.Unit,
	}
}

// in gives the amount in a unit of weight or volume, from the first of the
// amounts that measures the same. What a note says after a comma counts as
// well: "8 cups sliced onions, about 3 lb".
func (in Item) in(u content.Unit) (content.Quantity, bool) {
	for q := range in.amounts() {
		if c, ok := q.In(u); ok {
			return c, true
		}
	}
	for piece := range strings.SplitSeq(in.Note, ", ") {
		if piece == "" || piece[0] >= 'a' && piece[0] <= 'z' && !strings.HasPrefix(piece, "about ") {
			continue
		}
		if c, ok := content.ParseIngredient(piece).Amount.In(u); ok {
			return c, true
		}
	}
	return content.Quantity{}, false
}

// counted gives the amount as a number of things and what they are called:
// heads, cloves, or nothing for 2 onions.
func (in Item) counted() (content.Quantity, bool) {
	q := in.Amount
	return q, !q.IsZero() && q.Unit.Dimension() == content.Count && in.Each.IsZero()
}

// grams gives the weight, by the table of densities where only a volume is
// given. It reports false where that table does not say which row is meant.
func (in Item) grams() (content.Quantity, bool) {
	if q, ok := in.in(content.Gram); ok {
		return q, true
	}
	cups, ok := in.in(content.Cup)
	if !ok {
		return content.Quantity{}, false
	}
	each, _, ok := GramsPerCup(in.Item + " " + in.Note)
	if !ok {
		return content.Quantity{}, false
	}
	return content.Quantity{
		Low:  new(big.Rat).Mul(cups.Low, each),
		High: new(big.Rat).Mul(cups.High, each),
		Unit: content.Gram,
	}, true
}

// The ends of an amount that is a range.
func lowEnd(q content.Quantity) *big.Rat  { return q.Low }
func highEnd(q content.Quantity) *big.Rat { return q.High }

// timesTested gives how many times the tested amount of some ingredients
// there is: by volume if all of them are given so, else by weight, else by
// number, else by weight from the table of densities. It is nil where they
// cannot be compared. Of a tested range the upper end counts, of a range in
// the recipe the end that is asked for.
func timesTested(have []Item, tested []Item, end func(content.Quantity) *big.Rat) *big.Rat {
	for _, measure := range [...]func(Item) (content.Quantity, bool){
		func(in Item) (content.Quantity, bool) { return in.in(content.Cup) },
		func(in Item) (content.Quantity, bool) { return in.in(content.Gram) },
		Item.counted,
		Item.grams,
	} {
		h, unit, ok := sumOf(have, measure, end)
		if !ok {
			continue
		}
		if t, same, ok := sumOf(tested, measure, highEnd); ok && same == unit && t.Sign() > 0 {
			return h.Quo(h, t)
		}
	}
	return nil
}

// sumOf adds up amounts of one unit.
func sumOf(items []Item, measure func(Item) (content.Quantity, bool), end func(content.Quantity) *big.Rat) (*big.Rat, content.Unit, bool) {
	sum := new(big.Rat)
	var unit content.Unit
	for i, in := range items {
		q, ok := measure(in)
		if !ok || i > 0 && q.Unit != unit {
			return nil, "", false
		}
		if unit = q.Unit; i == 0 {
			sum.Set(end(q))
		} else {
			sum.Add(sum, end(q))
		}
	}
	return sum, unit, len(items) > 0
}
