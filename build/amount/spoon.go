package amount

import (
	"math/big"
	"slices"
	"strconv"

	"stillroom/content"
)

// Volumes in US measures are counted in eighths of a teaspoon, the smallest
// spoon of a set.
const (
	aTeaspoon   = 8
	aTablespoon = 3 * aTeaspoon
	aCup        = 16 * aTablespoon
	aQuart      = 4 * aCup
)

// A rung is an amount below one cup that cups and spoons can measure.
type rung struct {
	at   int64
	part string // of a cup: 3/8
	plus string // in spoons: 1 tbsp
}

// parts are the parts of a cup that a set of cups can measure, each alone or
// two together: 3/8 is 1/4 and 1/8. Twelfths would be three cups to wash.
var parts = []rung{
	{at: aCup / 8, part: "1/8"}, {at: aCup / 4, part: "1/4"}, {at: aCup / 3, part: "1/3"},
	{at: aCup * 3 / 8, part: "3/8"}, {at: aCup / 2, part: "1/2"}, {at: aCup * 5 / 8, part: "5/8"},
	{at: aCup * 2 / 3, part: "2/3"}, {at: aCup * 3 / 4, part: "3/4"}, {at: aCup * 7 / 8, part: "7/8"},
}

// The rungs grow wider apart as amounts grow, so that rounding to the nearest
// never moves an amount of a teaspoon or more by over one part in sixteen.
var (
	below1Cup   = ladder(spoons(), withSpoons(parts[1:], aTablespoon, 2*aTablespoon, aTeaspoon, 2*aTeaspoon))
	below4Cups  = ladder([]rung{{}, {at: aTablespoon, plus: "1 tbsp"}}, withSpoons(parts, aTablespoon))
	below16Cups = ladder([]rung{{}}, parts)
	below32Cups = ladder([]rung{{}}, []rung{parts[1], parts[4], parts[7]})
	anyCups     = ladder([]rung{{}}, []rung{parts[4]})
	wholeCups   = []rung{{}}
)

// spoons are the rungs below a quarter of a cup.
func spoons() []rung {
	all := []rung{{}}
	add := func(from, below, size int64) {
		for at := from; at < below; at += size {
			all = append(all, rung{at: at, plus: inSpoons(at)})
		}
	}
	add(1, 2*aTeaspoon, 1)
	add(2*aTeaspoon, 2*aTablespoon, 2)
	add(2*aTablespoon, aCup/4, 4)
	return all
}

// inSpoons writes an amount below a quarter of a cup.
func inSpoons(at int64) string {
	big, small := at/aTablespoon, at%aTablespoon
	switch {
	case big == 0:
		return mixed(small, aTeaspoon) + " tsp"
	case small == 0, small == aTablespoon/2:
		return mixed(2*at/aTablespoon, 2) + " tbsp"
	}
	return strconv.FormatInt(big, 10) + " tbsp + " + mixed(small, aTeaspoon) + " tsp"
}

// withSpoons gives each part of a cup alone, and with each of some spoonfuls.
func withSpoons(parts []rung, spoonfuls ...int64) []rung {
	all := slices.Clone(parts)
	for _, s := range spoonfuls {
		for _, p := range parts {
			all = append(all, rung{p.at + s, p.part, inSpoons(s)})
		}
	}
	return all
}

// ladder sorts rungs. Of several at one place the first given is kept.
func ladder(given ...[]rung) []rung {
	var all []rung
	for _, r := range slices.Concat(given...) {
		same := func(o rung) bool { return o.at == r.at }
		if r.at < aCup && !slices.ContainsFunc(all, same) {
			all = append(all, r)
		}
	}
	slices.SortFunc(all, func(a, b rung) int { return int(a.at - b.at) })
	return all
}

// ladderFor gives the rungs above a whole number of cups. Large amounts of what
// is measured in quarts are quarters of one.
func ladderFor(whole int64, inQuarts bool) []rung {
	switch {
	case whole < 1:
		return below1Cup
	case whole < 4:
		return below4Cups
	case whole < 16:
		return below16Cups
	case inQuarts:
		return wholeCups
	case whole < 32:
		return below32Cups
	}
	return anyCups
}

// cups gives a volume in US measures: spoons, cups, and quarts of what is
// poured or was written in pints and more.
func cups(n *big.Rat, u content.Unit, a Amount) measure {
	x := new(big.Rat).Mul(in(n, u, content.Teaspoon), big.NewRat(aTeaspoon, 1))
	whole := floor(new(big.Rat).Quo(x, big.NewRat(aCup, 1)))
	large := a.Pours || u == content.Pint || u == content.Quart || u == content.Gallon
	x.Sub(x, big.NewRat(whole*aCup, 1))
	r, exact := rungAt(x, ladderFor(min(whole, 1), false))
	if !exact {
		r = climb(x, ladderFor(whole, large), a.Round)
	}
	if r.at == aCup {
		whole, r = whole+1, rung{}
	}
	switch {
	case whole == 0 && r.at == 0:
		return measure{unit: "a pinch"}
	case whole == 0 && r.part == "":
		return measure{number: r.plus}
	}
	if whole >= 4 && r.at == 0 && large {
		return quarts(whole, u)
	}
	m := measure{number: r.part, unit: "cups"}
	if r.plus != "" {
		m.plus = "+ " + r.plus
	}
	switch {
	case r.part == "":
		m.number = strconv.FormatInt(whole, 10)
	case whole > 0:
		m.number = strconv.FormatInt(whole, 10) + " " + r.part
	}
	if whole == 0 || whole == 1 && r.part == "" {
		m.unit = "cup"
	}
	return m
}

// rungAt finds the rung that measures an amount below a cup exactly. Such an
// amount is not rounded, however large the rest of it is.
func rungAt(x *big.Rat, rungs []rung) (r rung, ok bool) {
	for _, r := range rungs {
		if x.Cmp(big.NewRat(r.at, 1)) == 0 {
			return r, true
		}
	}
	return rung{}, false
}

// climb finds the rung for an amount below a cup; one at aCup is the cup itself.
func climb(x *big.Rat, rungs []rung, r Rounding) rung {
	i := len(rungs) - 1
	for x.Cmp(big.NewRat(rungs[i].at, 1)) < 0 {
		i--
	}
	next := rung{at: aCup}
	if i+1 < len(rungs) {
		next = rungs[i+1]
	}
	if up(x, rungs[i].at, next.at, r) {
		return next
	}
	return rungs[i]
}

// quarts gives whole cups as quarts, or as gallons if the recipe has those.
func quarts(whole int64, u content.Unit) measure {
	m := measure{number: mixed(whole, 4), unit: "quarts"}
	if whole == 4 {
		m.unit = "quart"
	}
	if u == content.Gallon && whole >= 16 && whole%4 == 0 {
		m = measure{number: mixed(whole, 16), unit: "gallons"}
		if whole == 16 {
			m.unit = "gallon"
		}
	}
	return m
}
