package build

import (
	"math/big"
	"strconv"
	"strings"

	"stillroom/content"
)

// A Figure is a number that matters, and its unit.
type Figure struct {
	Number, Unit string
	Also         string // in another unit; may be empty
}

// minutes gives a time in whole minutes, as canning tables print it, or as it
// was written if there is a part of a minute in it.
func minutes(d content.Duration) Figure {
	if m := d.Minutes(); m != nil && m.IsInt() && !d.IsRange() {
		return Figure{Number: m.Num().String(), Unit: "min"}
	}
	return written(d.Quantity)
}

// pressure gives a gauge pressure as written, and pounds in kilopascals beside
// it, rounded up: the figure may not come out weaker than it was tested.
func pressure(p content.Pressure) Figure {
	f := written(p.Quantity)
	if p.Unit != content.PSI {
		return f
	}
	if c, ok := p.In(content.Kilopascal); ok && c.Low != nil {
		up := new(big.Int).Add(c.Low.Num(), new(big.Int).Sub(c.Low.Denom(), big.NewInt(1)))
		f.Also = up.Div(up, c.Low.Denom()).String() + "\u00a0kPa"
	}
	return f
}

// written parts a measure into its number and its unit, as they were written.
func written(q content.Quantity) Figure {
	text := typeset(q.Text)
	i := strings.LastIndex(text, "\u00a0")
	if i < 0 {
		return Figure{Number: text}
	}
	return Figure{Number: text[:i], Unit: text[i+len("\u00a0"):]}
}

// nearest gives a quantity to the nearest whole number of another unit.
func nearest(q content.Quantity, unit content.Unit) (int, bool) {
	c, ok := q.In(unit)
	if !ok || c.Low == nil {
		return 0, false
	}
	half := new(big.Rat).Add(c.Low, big.NewRat(1, 2))
	return int(new(big.Int).Div(half.Num(), half.Denom()).Int64()), true
}

// down gives a quantity in whole ones of another unit, without what is left.
func down(q content.Quantity, unit content.Unit) (int, bool) {
	c, ok := q.In(unit)
	if !ok || c.Low == nil {
		return 0, false
	}
	return int(new(big.Int).Div(c.Low.Num(), c.Low.Denom()).Int64()), true
}

// thousands writes 6000 as 6,000.
func thousands(n int) string {
	s := strconv.Itoa(n)
	for i := len(s) - 3; i > 0; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
}
