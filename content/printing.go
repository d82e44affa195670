package content

import (
	"math/big"
	"strings"
)

// String gives the amount as a cook writes it: 1 1/2 cups, 4-5 lb, 1,370 m.
// US kitchen units and times have fractions, metric units decimals. What
// neither can show exactly is rounded to two decimals.
func (q Quantity) String() string {
	if q.IsZero() {
		return ""
	}
	fractions := q.inFractions()
	s := printNumber(q.Low, fractions)
	if q.IsRange() {
		high := printNumber(q.High, fractions)
		between := "-"
		if strings.ContainsAny(s+high, " /") {
			between = " to " // 1-1/2 would be one and a half
		}
		s += between + high
	}
	switch q.Unit {
	case "":
		return s
	case Percent:
		return s + "%"
	}
	return s + " " + q.UnitName()
}

// UnitName gives the unit in the singular or the plural, as the amount has it.
func (q Quantity) UnitName() string {
	m := unitTable[q.Unit]
	if m == nil || q.High.Sign() > 0 && q.High.Cmp(one) <= 0 {
		return string(q.Unit)
	}
	return m.many
}

// inFractions reports whether 1 1/2 is the way to write one and a half.
func (q Quantity) inFractions() bool {
	switch q.Unit {
	case Inch, Ounce, Pound, Teaspoon, Tablespoon, FluidOunce, Cup, Pint, Quart, Gallon, Peck, Bushel:
		return true
	case "":
		return !strings.Contains(q.Text, ".") // a pH of 3.5 was never 3 1/2
	}
	dim := q.Unit.Dimension()
	return dim == Count || dim == TimeDim
}

// printNumber prints a number, which is never below zero.
func printNumber(x *big.Rat, fractions bool) string {
	if x.IsInt() {
		return thousands(x.Num().String())
	}
	if fractions && kitchenFraction(x.Denom()) {
		return printMixed(x)
	}
	return printDecimal(x)
}

// kitchenFraction reports whether a measuring cup or a ruler shows parts of
// this size.
func kitchenFraction(parts *big.Int) bool {
	if !parts.IsInt64() {
		return false
	}
	switch parts.Int64() {
	case 2, 3, 4, 6, 8, 16:
		return true
	}
	return false
}

// printMixed prints 3/4 or 1 3/4.
func printMixed(x *big.Rat) string {
	whole, part := new(big.Int).QuoRem(x.Num(), x.Denom(), new(big.Int))
	fraction := part.String() + "/" + x.Denom().String()
	if whole.Sign() == 0 {
		return fraction
	}
	return thousands(whole.String()) + " " + fraction
}

// printDecimal prints up to four decimals if they are exact, otherwise two, or
// as many as two digits need that are more than zeros in front.
func printDecimal(x *big.Rat) string {
	const exactPlaces, places, mostPlaces = 4, 2, 12
	if n, exact := x.FloatPrec(); exact && n <= exactPlaces {
		return pointed(x.FloatString(n))
	}
	s := x.FloatString(places)
	for n := places + 1; n <= mostPlaces && len(strings.TrimLeft(s, "0.")) < 2; n++ {
		s = x.FloatString(n)
	}
	return pointed(s)
}

// pointed puts the commas into a decimal, and cuts the zeros at its end.
func pointed(s string) string {
	whole, places, _ := strings.Cut(s, ".")
	places = strings.TrimRight(places, "0")
	if places == "" {
		return thousands(whole)
	}
	return thousands(whole) + "." + places
}

// thousands puts a comma before each three digits: 4,500.
func thousands(digits string) string {
	for i := len(digits) - 3; i > 0; i -= 3 {
		digits = digits[:i] + "," + digits[i:]
	}
	return digits
}
