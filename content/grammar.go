package content

import (
	"math/big"
	"strings"
	"unicode/utf8"
)

// A grammar is a way of reading quantities.
type grammar struct {
	in     dims // the dimensions whose units are understood
	number func(s string) (n ratio, rest string, err error)
	words  bool // "4 or 5 cups" is a range too, "1 lb or 450 g" never
}

// A reading is a quantity that was read, and how.
type reading struct {
	Quantity
	unit   *knownUnit // nil for a bare number
	joined bool       // a hyphen ties the unit to the number: 14-oz
}

// A sum is a number with its unit, or several in units that add up.
type sum struct {
	value  *big.Rat
	unit   *knownUnit // the smallest; nil for a bare number
	terms  int
	joined bool
}

// cut reads the quantity at the start of s.
func (g grammar) cut(s string) (r reading, rest string, err error) {
	low, rest, err := g.cutSum(s)
	if err != nil {
		return reading{}, s, err
	}
	high, after, err := g.cutUpper(rest, g.words && low.unit == nil)
	if err != nil {
		return reading{}, s, err
	}
	if high.value == nil || !level(&low, &high) {
		high, after = low, rest
	}
	if compare(high.value, low.value) < 0 {
		return reading{}, s, errFalls
	}
	r = reading{Quantity{Low: low.value, High: high.value}, low.unit, low.joined}
	if low.unit != nil {
		r.Unit = low.unit.unit
	}
	r.Text = trimSpace(s[:len(s)-len(after)])
	return r, after, nil
}

// cutUpper reads the upper end of a range, with the dash or the word before
// it. Its value is nil if there is none.
func (g grammar) cutUpper(s string, or bool) (high sum, rest string, err error) {
	after, ok := cutTo(s, or)
	if !ok {
		return sum{}, s, nil
	}
	high, rest, err = g.cutSum(after)
	if err == errNoNumber {
		return sum{}, s, nil
	}
	return high, rest, err
}

// cutTo cuts what stands between the ends of a range: a dash or "to", and if
// it is allowed "or".
func cutTo(s string, or bool) (rest string, ok bool) {
	s = skipSpace(s)
	if r, size := utf8.DecodeRuneInString(s); isDash(r) {
		rest = skipSpace(s[size:])
		if after, ok := cutWord(rest, "to"); ok { // 3- to 4-inch
			return after, true
		}
		return rest, true
	}
	if rest, ok := cutWord(s, "to"); ok || !or {
		return rest, ok
	}
	return cutWord(s, "or")
}

// level brings the ends of a range to one unit. It reports false if they do
// not make a range.
func level(low, high *sum) bool {
	switch {
	case low.unit == high.unit:
		return true
	case low.unit == nil:
		low.unit, low.joined = high.unit, high.joined
		return high.terms == 1
	case high.unit == nil || !addable(low.unit, high.unit):
		return false
	}
	least := smaller(low.unit, high.unit)
	low.value, high.value = convert(low.value, low.unit, least), convert(high.value, high.unit, least)
	low.unit, high.unit = least, least
	return true
}

// addable reports whether amounts in both units can be added up.
func addable(a, b *knownUnit) bool {
	return a.dim == b.dim && a.factor != nil && b.factor != nil && a.dim != TemperatureDim
}

func smaller(a, b *knownUnit) *knownUnit {
	if compare(a.factor, b.factor) < 0 {
		return a
	}
	return b
}

// maxTerms is the most that a sum is made of: 1 week 2 days 3 h 30 min.
const maxTerms = 4

// cutSum reads a number with its unit, and what is added to it.
func (g grammar) cutSum(s string) (t sum, rest string, err error) {
	n, rest, err := g.number(s)
	if err != nil {
		return sum{}, s, err
	}
	t = sum{value: n.rat(), terms: 1}
	t.unit, rest, t.joined = cutUnit(rest, g.in)
	for t.unit != nil && !t.joined && t.terms < maxTerms {
		next, after := g.cutTerm(t.unit, rest)
		if next.value == nil {
			break
		}
		t.add(next)
		rest = after
	}
	return t, rest, nil
}

// cutTerm reads what is added to an amount in unit: the 30 min of 1 h 30 min.
// Its value is nil if there is nothing.
func (g grammar) cutTerm(unit *knownUnit, s string) (next sum, rest string) {
	after, plus := cutPlus(s)
	n, after, err := cutNumber(after)
	if err != nil {
		return sum{}, s
	}
	m, after, joined := cutUnit(after, g.in)
	if m == nil || joined || !addable(unit, m) {
		return sum{}, s
	}
	next = sum{value: n.rat(), unit: m, terms: 1}
	if !plus && convert(next.value, m, unit).Cmp(one) >= 0 {
		return sum{}, s // 1 h 90 min is no way to write a time
	}
	return next, after
}

// cutPlus cuts what may stand between the terms of a sum. Plus reports
// whether it says that they are added.
func cutPlus(s string) (rest string, plus bool) {
	s = skipSpace(s)
	if rest, ok := strings.CutPrefix(s, "+"); ok {
		return skipSpace(rest), true
	}
	if rest, ok := cutWord(s, "plus"); ok {
		return rest, true
	}
	if rest, ok := cutWord(s, "and"); ok {
		return rest, false
	}
	return skipSpace(strings.TrimPrefix(s, ",")), false
}

// add adds to a sum, in the smaller unit of the two.
func (t *sum) add(next sum) {
	least := smaller(t.unit, next.unit)
	t.value = new(big.Rat).Add(convert(t.value, t.unit, least), convert(next.value, next.unit, least))
	t.unit = least
	t.terms++
}
