package amount

import (
	"math/big"

	"stillroom/content"
)

// The steps in which scales and jugs are read, and to which other amounts are
// X
var (
	ounceSteps = []step{ // in eighths of an ounce
		{2 * 8, 1}, {4 * 8, 2}, {16 * 8, 4}, {160 * 8, 8}, {640 * 8, 32}, {1600 * 8, 64}, {size: 128},
	}
	gramSteps = []step{ // in halves of a gram
		{10 * 2, 1}, {100 * 2, 2}, {500 * 2, 10}, {1000 * 2, 20}, {10000 * 2, 100}, {size: 200},
	}
	millilitreSteps = []step{ // in quarters of a millilitre
		{10, 1}, {10 * 4, 2}, {50 * 4, 4}, {250 * 4, 20}, {1000 * 4, 40}, {10000 * 4, 200}, {size: 400},
	}
	countSteps = []step{{size: 12}}            // in twelfths, from ten on
	countParts = []int64{0, 3, 4, 6, 8, 9, 12} // the same, below ten
)

// ounces gives a weight in ounces, or pounds: 12 1/2 oz, 6 3/4 lb, 1 lb 5 oz.
// Whole ounces are left as they are.
func ounces(n *big.Rat, r Rounding) measure {
	const ounce, pound = 8, 16 * 8
	x := n.Num().Int64() * ounce
	if !n.IsInt() {
		x = rounded(new(big.Rat).Mul(n, big.NewRat(ounce, 1)), ounceSteps, r)
	}
	switch {
	case x < pound:
		return measure{number: mixed(x, ounce), unit: "oz"}
	case x%(pound/4) == 0:
		return measure{number: mixed(x, pound), unit: "lb"}
	}
	return measure{number: mixed(x/pound, 1), unit: "lb", plus: mixed(x%pound, ounce) + " oz"}
}

// grams gives a weight in grams or kilograms. Exact tells that the recipe has
// it in metric units too: what is then whole is left as it is.
func grams(n *big.Rat, exact bool, r Rounding) measure {
	return metric(n, exact, gramSteps, 2, r, [2]content.Unit{content.Gram, content.Kilogram})
}

// millilitres gives a volume in millilitres or litres.
func millilitres(n *big.Rat, exact bool, r Rounding) measure {
	return metric(n, exact, millilitreSteps, 4, r, [2]content.Unit{content.Millilitre, content.Litre})
}

func metric(n *big.Rat, exact bool, steps []step, parts int64, r Rounding, units [2]content.Unit) measure {
	x := new(big.Rat).Mul(n, big.NewRat(parts, 1))
	at := floor(x)
	if !exact || !n.IsInt() {
		at = rounded(x, steps, r)
	}
	if at < 1000*parts {
		return measure{number: decimal(at, parts), unit: string(units[0])}
	}
	return measure{number: decimal(at, 1000*parts), unit: string(units[1])}
}

// counted gives a number of things: 2 1/2 heads, 12 cloves.
func counted(n *big.Rat, u content.Unit, r Rounding) measure {
	const whole, ten = 12, 10 * 12
	x := new(big.Rat).Mul(n, big.NewRat(whole, 1))
	at := int64(0)
	if x.Cmp(big.NewRat(ten, 1)) >= 0 {
		at = rounded(x, countSteps, r)
	} else {
		at = part(x, r)
	}
	q := content.Quantity{Low: big.NewRat(at, whole), High: big.NewRat(at, whole), Unit: u}
	return measure{number: mixed(at, whole), unit: q.UnitName()}
}

// part brings a number of things below ten, in twelfths, to quarters, thirds
// and halves, and to a quarter at least.
func part(x *big.Rat, r Rounding) int64 {
	whole := floor(new(big.Rat).Quo(x, big.NewRat(12, 1))) * 12
	at := whole
	for i := 1; i < len(countParts); i++ {
		low, high := whole+countParts[i-1], whole+countParts[i]
		if x.Cmp(big.NewRat(high, 1)) < 0 {
			at = low
			if up(x, low, high, r) {
				at = high
			}
			break
		}
	}
	return max(at, countParts[1])
}
