package content

import (
	"fmt"
	"math/big"
)

// ParseLength reads a length: 1/4 in, ¼", 6 mm.
func ParseLength(s string) (Length, error) {
	q, err := aLength.read(s)
	return Length{q}, err
}

// ParseVolume reads a volume: 1 1/2 cups, 250 ml, 2 qt. Ounces are fluid ounces
// here.
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
	aLength      = want{"a length", dimsOf(LengthDim), false, "inches, mm or cm", "1/4 in or 6 mm"}
	aVolume      = want{"a volume", dimsOf(VolumeDim), false, "cups, quarts or ml", "1 1/2 cups or 350 ml"}
	aWeight      = want{"a weight", dimsOf(WeightDim), false, "lb, oz or g", "1 lb 4 oz or 570 g"}
	aTemperature = want{"a temperature", dimsOf(TemperatureDim), false, "F or C", "220 F or 104 °C"}
	aDuration    = want{"a time", dimsOf(TimeDim), false, "min, h, days, weeks or months", "10 min or 1 h 30 min"}
	anAltitude   = want{"an altitude", dimsOf(AltitudeDim), false, "ft or m", "4,500 ft or 1370 m"}
	aPressure    = want{"a pressure", dimsOf(PressureDim), false, "psi or kPa", "11 psi or 76 kPa"}
	aShare       = want{"a strength", dimsOf(ShareDim), false, "per cent", "5% or 2.5%"}
)

// read reads the whole of s as what is wanted.
func (w *want) read(s string) (Quantity, error) {
	text := trimSpace(s)
	if text == "" {
		return Quantity{}, &misreading{"nothing is written", w.what + " is written as in " + w.example}
	}
	r, rest, err := grammar{in: w.in, number: cutNumber}.cut(text)
	rest = trimSpace(rest)
	switch {
	case err != nil:
		return Quantity{}, misread(text, err)
	case rest != "":
		return Quantity{}, w.refuse(r, rest, text)
	case r.unit == nil && !w.bare:
		return Quantity{}, &misreading{fmt.Sprintf("%q has no unit", clip(text)), w.what + " is written as in " + w.example}
	}
	return r.Quantity, nil
}

// refuse tells what is wrong with what follows the quantity that was read.
func (w *want) refuse(r reading, rest, text string) error {
	word := leadingLetters(rest)
	m, _, _ := cutUnit(rest, anyDim)
	switch {
	case r.unit != nil || word == "" && m == nil:
		return &misreading{fmt.Sprintf("%q is no part of %s", clip(rest), w.what), "it is written as in " + w.example}
	case w.in == dimsOf(TimeDim) && m != nil && m.unit == Metre:
		return &misreading{fmt.Sprintf("%q may be minutes or months", clip(text)), "write min or months"}
	case m != nil:
		return &misreading{fmt.Sprintf("%q is not %s", clip(text), w.what), "write it in " + w.units + ", as in " + w.example}
	case word != rest && (isDigit(rest[len(word)]) || rest[len(word)] == '_'):
		return misread(text, errPlainDigits)
	}
	advice := w.what + " is written in " + w.units + ", as in " + w.example
	if near := spelt.nearest(word, w.in); near != "" {
		advice = "did you mean " + string(near) + "?"
	}
	return &misreading{fmt.Sprintf("there is no unit %q", clip(rest)), advice}
}
