package validate

import (
	"math/big"
	"slices"

	"stillroom/content"
)

// saltReckoned gives the strength of a ferment's salt as its ingredients have
// it: of the brine where there is water, of the vegetables where there is
// none. It is nil where an amount cannot be told.
func (m *Match) saltReckoned() *big.Rat {
	salt, ok := gramsOf(m.ofKind(ItemSalt))
	if !ok {
		return nil
	}
	var water []Item
	for _, in := range m.ofKind(ItemWater) {
		if !in.isPouredAway() {
			water = append(water, in)
		}
	}
	if len(water) > 0 {
		w, ok := gramsOf(water)
		if !ok {
			return nil
		}
		return BrineStrength(salt, w)
	}
	food, ok := gramsOf(m.vegetables())
	if !ok {
		return nil
	}
	return DrySaltStrength(salt, food)
}

// vegetables gives what is salted: all food but herbs and spices.
func (m *Match) vegetables() []Item {
	var all []Item
	for _, in := range m.Items {
		switch in.role() {
		case RoleLowAcid, RoleTomato, RoleFruit:
			all = append(all, in)
		}
	}
	return all
}

// gramsOf adds up weights, the lower end of each. It reports false where one
// cannot be told, or there is nothing.
func gramsOf(items []Item) (*big.Rat, bool) {
	sum := new(big.Rat)
	for _, in := range items {
		q, ok := in.grams()
		if !ok {
			return nil, false
		}
		sum.Add(sum, q.Low)
	}
	return sum, len(items) > 0
}

// saltTested gives the strength of the salt that a ferment of the recipe's
// first vegetable was published with, in per cent rounded down to the first
// decimal, and where; nil if none is published.
func (m *Match) saltTested(r *content.Recipe) (least *big.Rat, source Source) {
	for _, p := range r.Produce {
		food, _ := LookUpProduce(p.V)
		id, ok := publishedFerments[food.Name]
		if !ok {
			continue
		}
		c := CompositionsOf(id)[0]
		tested := Match{Items: slices.Concat(c.of(RoleLowAcid), c.of(RoleSalt), c.of(RoleWater))}
		return tenths(tested.saltReckoned()), c.source()
	}
	return nil, Source{}
}

// publishedFerments are the processes whose recipe is a ferment, by what is
// fermented.
var publishedFerments = map[string]string{"cabbage": "sauerkraut-hot", "cucumber": "dill-pickles-fermented-raw"}

// tenths rounds a number down to its first decimal.
func tenths(x *big.Rat) *big.Rat {
	ten := new(big.Rat).Mul(x, big.NewRat(10, 1))
	return new(big.Rat).SetFrac(new(big.Int).Div(ten.Num(), ten.Denom()), big.NewInt(10))
}
