package content

import (
	"math"
	"math/big"
	"math/bits"
)

// A Quantity is an exact amount with its unit, or a range of amounts: 1 1/2
// cups, 4 to 5 lb, 10 min. The zero Quantity means none was given.
//
// Low and High are in Unit, equal unless a range was written, and are never
// changed once made. A sum of units (1 h 30 min, 1 lb 4 oz) is held in the
// smallest of them.
type Quantity struct {
	Low, High *big.Rat
	Unit      Unit   // zero for a bare number
	Text      string // as written
}

// A Dimension is what a unit measures.
type Dimension int

// The dimensions. Count is for things that are counted: 6 apples, 2 tins.
const (
	Count Dimension = iota
	LengthDim
	WeightDim
	VolumeDim
	TemperatureDim
	TimeDim
	AltitudeDim // feet and metres above the sea; a length, but never in inches
	PressureDim
	ShareDim // per cent by weight
)

// The measures of the front matter: a Quantity whose dimension is known.
type (
	// A Length is a headspace or a size, in inches, centimetres or millimetres.
	Length struct{ Quantity }
	// A Volume is a jar's or a cup's content.
	Volume struct{ Quantity }
	// A Weight is a mass in ounces, pounds, grams or kilograms.
	Weight struct{ Quantity }
	// A Temperature is in degrees Fahrenheit or Celsius.
	Temperature struct{ Quantity }
	// A Duration runs from seconds to years. Months and years have no fixed
	// length: in minutes a month counts as a twelfth of 365.25 days.
	Duration struct{ Quantity }
	// An Altitude is a height above the sea in feet or metres.
	Altitude struct{ Quantity }
	// A Pressure is a gauge pressure in psi or kPa.
	Pressure struct{ Quantity }
	// A Share is a strength in per cent by weight.
	Share struct{ Quantity }
)

// ParseQuantity reads an amount with or without a unit: 6, 1 1/2 cups, 4-5 lb,
// 1 lb 4 oz. The whole of s must be the amount.
func ParseQuantity(s string) (Quantity, error) { return anAmount.read(s) }

// IsZero reports whether no amount was given. An amount of 0 is one.
func (q Quantity) IsZero() bool { return q.Low == nil }

// IsRange reports whether the amount runs from one number to another.
func (q Quantity) IsRange() bool { return compare(q.Low, q.High) != 0 }

// In gives the amount in another unit of the same dimension, exactly. It
// reports false if u measures something else, or there is no amount.
func (q Quantity) In(u Unit) (Quantity, bool) {
	switch {
	case q.IsZero():
		return Quantity{}, false
	case q.Unit == u:
		return q, true
	}
	from, to := unitTable[q.Unit], unitTable[u]
	switch {
	case from == nil || to == nil || from.dim != to.dim || from.factor == nil:
		return Quantity{}, false
	}
	c := Quantity{Low: convert(q.Low, from, to), Unit: u, Text: q.Text}
	c.High = c.Low
	if q.IsRange() {
		c.High = convert(q.High, from, to)
	}
	return c, true
}

// convert gives x in another unit, exactly.
func convert(x *big.Rat, from, to *knownUnit) *big.Rat {
	num, ok := product(x.Num(), from.factor.Num(), to.factor.Denom())
	den, fits := product(x.Denom(), from.factor.Denom(), to.factor.Num())
	switch {
	case !ok || !fits || from.unit == Celsius || to.unit == Celsius:
		return convertLong(x, from, to)
	case num%den == 0:
		return new(big.Rat).SetInt64(num / den)
	}
	return big.NewRat(num, den)
}

// product multiplies numbers that are not below zero. It reports false if they
// take more than a word.
func product(a, b, c *big.Int) (n int64, ok bool) {
	if !a.IsUint64() || !b.IsUint64() || !c.IsUint64() {
		return 0, false
	}
	over, ab := bits.Mul64(a.Uint64(), b.Uint64())
	more, abc := bits.Mul64(ab, c.Uint64())
	return int64(abc), over|more == 0 && abc <= math.MaxInt64
}

// convertLong is convert for all numbers and units.
func convertLong(x *big.Rat, from, to *knownUnit) *big.Rat {
	y := new(big.Rat).Mul(x, from.factor)
	if from.unit == Celsius {
		y.Add(y, freezing)
	}
	if to.unit == Celsius {
		y.Sub(y, freezing)
	}
	return y.Quo(y, to.factor)
}

var (
	one      = big.NewRat(1, 1)
	freezing = big.NewRat(32, 1) // where water freezes, in degrees Fahrenheit
)
