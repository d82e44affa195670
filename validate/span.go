package validate

import (
	"cmp"
	"fmt"
	"math/big"
	"strconv"

	"stillroom/content"
)

// A span is a stretch of altitude at its exact bounds, in feet.
type span struct {
	from, to *big.Rat // to is nil where there is no upper end
	over     bool     // begins just above from
}

func spanOf[T any](b content.Band[T]) span {
	s := span{from: b.From.Feet(), over: b.Over}
	if !b.To.IsZero() {
		s.to = b.To.Feet()
	}
	return s
}

// touches reports whether some altitude of the span lies in the tested band.
// Published edges are whole feet: what lies between one band's end and the
// next one's beginning (1,000 and 1,001) belongs to neither, so that 305 m,
// the published metric edge for 1,000 ft, stays inside.
func (b TestedBand) touches(s span) bool {
	if s.to != nil && compareWhole(s.to, b.From) < 0 {
		return false
	}
	if b.To == 0 {
		return true
	}
	c := compareWhole(s.from, b.To)
	return c < 0 || c == 0 && !s.over
}

// overlaps reports whether two stretches of altitude have a height in common.
// A said edge that is the end of a band is the band's own, also where the next
// one begins a foot higher.
func (s span) overlaps(o span) bool {
	below := func(a, b span) bool { // a ends before b begins
		if a.to == nil {
			return false
		}
		c := compare(a.to, b.from)
		return c < 0 || c == 0 && (b.over || a.to.Sign() > 0 && compare(a.from, a.to) < 0)
	}
	return !below(s, o) && !below(o, s)
}

// String gives the band as it is printed: 0-1,000 ft, above 6,000 ft.
func (b TestedBand) String() string {
	if b.To == 0 {
		return "above " + thousands(b.From-1) + " ft"
	}
	return fmt.Sprintf("%s-%s ft", thousands(b.From), thousands(b.To))
}

// at gives the band with the word that leads to it: at 0-1,000 ft, above 6,000 ft.
func (b TestedBand) at() string {
	if b.To == 0 {
		return b.String()
	}
	return "at " + b.String()
}

// compareWhole compares a number with a whole one, as big.Rat.Cmp does.
func compareWhole(x *big.Rat, n int) int {
	if x.IsInt() && x.Num().IsInt64() {
		return cmp.Compare(x.Num().Int64(), int64(n))
	}
	return compare(x, feet(n))
}

func feet(n int) *big.Rat { return new(big.Rat).SetInt64(int64(n)) }

// thousands writes a whole number with a comma at the thousands.
func thousands(n int) string {
	if n < 1000 {
		return strconv.Itoa(n)
	}
	return fmt.Sprintf("%d,%03d", n/1000, n%1000)
}
