package content

import (
	"errors"
	"fmt"
	"math/big"
	"strings"
)

// ParseLength reads a length: 1/4 in, ¼", 6 mm.
func ParseLength(s string) (Length, error) {
	q, err := aLength.read(s)
	return Length{q}, err
}

// ParseVolume reads a volume: 1 1/2 cups, 250 ml, 2 qt.
func ParseVolume(s string) (Volume, error) {
	q, err := aVolume.read(s)
	return Volume{q}, err
}

// ParseWeight reads a weight: 350 g, 1 lb 4 oz.
func ParseWeight(s string) (Weight, error) {
	q, err := aWeight.read(s)
	return Weight{q}, err
}

// ParseTemperature reads a temperature: 220 F, 104 °C.
func ParseTemperature(s string) (Temperature, error) {
	q, err := aTemperature.read(s)
	return Temperature{q}, err
}

// ParseDuration reads a time: 10 min, 1 h 30 min, 3 weeks. It refuses m, which
// may be a minute or a month.
func ParseDuration(s string) (Duration, error) {
	q, err := aDuration.read(s)
	return Duration{q}, err
}

// ParseAltitude reads a height above the sea: 4,500 ft, 1370 m.
func ParseAltitude(s string) (Altitude, error) {
	q, err := anAltitude.read(s)
	return Altitude{q}, err
}

// ParsePressure reads a gauge pressure: 11 psi, 76 kPa. Pounds are psi.
func ParsePressure(s string) (Pressure, error) {
	q, err := aPressure.read(s)
	return Pressure{q}, err
}

// ParseShare reads a strength: 5%, 2.5 per cent.
func ParseShare(s string) (Share, error) {
	q, err := aShare.read(s)
	return Share{q}, err
}

// Inches gives the length, or the lower end of a range, exactly. It is nil if
// there is none; nobody may change it.
func (l Length) Inches() *big.Rat { return l.lowIn(Inch) }

// Millilitres gives the volume, or the lower end of a range, exactly. It is
// nil if there is none; nobody may change it.
func (v Volume) Millilitres() *big.Rat { return v.lowIn(Millilitre) }

// Grams gives the weight, or the lower end of a range, exactly. It is nil if
// there is none; nobody may change it.
func (w Weight) Grams() *big.Rat { return w.lowIn(Gram) }

// Fahrenheit gives the temperature, or the lower end of a range, exactly. It
// is nil if there is none; nobody may change it.
func (t Temperature) Fahrenheit() *big.Rat { return t.lowIn(Fahrenheit) }

// Minutes gives the time, or the lower end of a range, exactly. It is nil if
// there is none; nobody may change it.
func (d Duration) Minutes() *big.Rat { return d.lowIn(Minute) }

// Feet gives the altitude, or the lower end of a range, exactly. It is nil if
// there is none; nobody may change it.
func (a Altitude) Feet() *big.Rat { return a.lowIn(Foot) }

// PSI gives the pressure, or the lower end of a range, exactly. It is nil if
// there is none; nobody may change it.
func (p Pressure) PSI() *big.Rat { return p.lowIn(PSI) }

// Percent gives the share, or the lower end of a range, exactly. It is nil if
// there is none; nobody may change it.
func (s Share) Percent() *big.Rat { return s.lowIn(Percent) }

// lowIn gives the lower end in a unit, or nil.
func (q Quantity) lowIn(u Unit) *big.Rat {
	c, _ := q.In(u)
	return c.Low
}

// A want is what stands in a place of the front matter, and how it is written.
type want struct {
	what    string // "a length"
	in      dims
	bare    bool // a number without a unit will do
	units   string
	example string
}

var (
	anAmount     = want{"an amount", anyDim, true, "cups, lb or g", "6, 1 1/2 cups or 350 g"}
	aLength      = want{"a length", dimsOf(LengthDim), false, "in, mm or cm", "1/4 in or 6 mm"}
	aVolume      = want{"a volume", dimsOf(VolumeDim), false, "cups, quarts or ml", "1 1/2 cups or 350 ml"}
	aWeight      = want{"a weight", dimsOf(WeightDim), false, "lb, oz or g", "1 lb 4 oz or 570 g"}
	aTemperature = want{"a temperature", dimsOf(TemperatureDim), false, "F or C", "220 F or 104 °C"}
	aDuration    = want{"a time", dimsOf(TimeDim), false, "min, h, days, weeks or months", "10 min or 1 h 30 min"}
	anAltitude   = want{"an altitude", dimsOf(AltitudeDim), false, "ft or m", "4,500 ft or 1370 m"}
	aPressure    = want{"a pressure", dimsOf(PressureDim), false, "psi or kPa", "11 psi or 76 kPa"}
	aShare       = want{"a strength", dimsOf(ShareDim), false, "%", "5% or 2.5%"}
)

// read reads the whole of s as what is wanted. Its errors are for the cook:
// what is wrong, and what would do.
func (w *want) read(s string) (Quantity, error) {
	text := trimSpace(s)
	if text == "" {
		return Quantity{}, fmt.Errorf("nothing is written: %s looks like %s", w.what, w.example)
	}
	r, rest, err := grammar{in: w.in, number: cutNumber}.cut(text)
	rest = trimSpace(rest)
	switch {
	case err != nil:
		return Quantity{}, fmt.Errorf("%q: %w", clip(text), err)
	case rest == "" && (r.unit != nil || w.bare):
		return r.Quantity, nil
	}
	return Quantity{}, fmt.Errorf("%q: %w", clip(text), w.refuse(r, rest))
}

// refuse tells what is wrong with what follows the quantity that was read.
func (w *want) refuse(r reading, rest string) error {
	switch {
	case rest == "":
		return fmt.Errorf("%s needs its unit, as in %s", w.what, w.example)
	case r.unit != nil:
		return fmt.Errorf("nothing follows %s, and here follows %q", r.Text, clip(rest))
	case !isLetter(rest[0]):
		return fmt.Errorf("%q is not part of a number; %s looks like %s", clip(rest), w.what, w.example)
	}
	return w.refuseUnit(rest)
}

// refuseUnit tells why what stands in the place of the unit is none.
func (w *want) refuseUnit(s string) error {
	word := leadingLetters(s)
	switch m, _, _ := cutUnit(s, anyDim); {
	case w.in.has(TimeDim) && strings.EqualFold(word, "m"):
		return errors.New("m may be a minute or a month: write min or months")
	case m != nil:
		return fmt.Errorf("%s is written in %s, not in %s", w.what, w.units, m.unit)
	case word != s && (isDigit(s[len(word)]) || s[len(word)] == '_'):
		return errPlainDigits
	}
	if near := spelt.nearest(word, w.in); near != "" {
		return fmt.Errorf("there is no unit %q; did you mean %s?", clip(word), near)
	}
	return fmt.Errorf("there is no unit %q; %s is written in %s", clip(s), w.what, w.units)
}
