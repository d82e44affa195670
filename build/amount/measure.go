package amount

import (
	"math/big"
	"strconv"
	"strings"
)

// A measure is a rounded amount in words: a number and its unit, and what a
// spoon adds to it.
type measure struct {
	number string // 1 1/2; empty for less than any spoon holds
	unit   string // cups
	plus   string // + 1 tbsp; the 5 oz of 1 lb 5 oz
}

func (m measure) String() string {
	if m.number == "" {
		return m.unit
	}
	s := m.number
	if m.unit != "" {
		s += " " + m.unit
	}
	if m.plus != "" {
		s += " " + m.plus
	}
	return s
}

// span writes a range: 4-5 cups, 1 1/2 to 2 cups, 3 tbsp to 1/4 cup.
func span(low, high measure) string {
	switch {
	case low == high:
		return low.String()
	case low.plus != "" || high.plus != "" || !sameUnit(low.unit, high.unit):
		return low.String() + " to " + high.String()
	case strings.ContainsAny(low.number+high.number, " /"):
		low.number += " to " + high.number
	default:
		low.number += "-" + high.number
	}
	low.unit = high.unit
	return low.String()
}

// sameUnit compares units whether one or many.
func sameUnit(a, b string) bool { return a == b || a+"s" == b || a+"es" == b }

// A step says how fine amounts below a limit are rounded. Both are in parts of
// a unit.
type step struct{ below, size int64 }

// rounded brings x, in parts, to a whole number of steps, and to at least one:
// what is not nothing is never shown as nothing.
func rounded(x *big.Rat, steps []step, r Rounding) int64 {
	last := len(steps) - 1
	i := 0
	for i < last && x.Cmp(big.NewRat(steps[i].below, 1)) >= 0 {
		i++
	}
	size := steps[i].size
	n := floor(new(big.Rat).Quo(x, big.NewRat(size, 1)))
	if up(x, n*size, (n+1)*size, r) {
		n++
	}
	return max(n, 1) * size
}

// up reports whether x goes to the upper of its two neighbours.
func up(x *big.Rat, low, high int64, r Rounding) bool {
	switch {
	case r == Down || x.Cmp(big.NewRat(low, 1)) == 0:
		return false
	case r == Up:
		return true
	}
	return x.Cmp(big.NewRat(low+high, 2)) >= 0
}

func floor(x *big.Rat) int64 {
	return new(big.Int).Quo(x.Num(), x.Denom()).Int64()
}

// mixed writes n parts, of which parts make a whole: 3/4, 1 3/4.
func mixed(n, parts int64) string {
	whole, part := n/parts, n%parts
	if part == 0 {
		return strconv.FormatInt(whole, 10)
	}
	f := big.NewRat(part, parts).String()
	if whole == 0 {
		return f
	}
	return strconv.FormatInt(whole, 10) + " " + f
}

// decimal writes n parts with a point: 1.575.
func decimal(n, parts int64) string {
	s := big.NewRat(n, parts).FloatString(3)
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}
