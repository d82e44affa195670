package content

import (
	"math/big"
	"testing"
)

// The measures of the contract's front matter, each with its exact value in
// the unit in which it is compared.
func TestParseMeasures(t *testing.T) {
	for _, tt := range []struct {
		text string
		read func(string) (*big.Rat, error)
		want string
	}{
		{"1/4 in", inches, "1/4"},
		{"¼ inch", inches, "1/4"},
		{`1/2"`, inches, "1/2"},
		{"1 1/4 in", inches, "5/4"},
		{"6 mm", inches, "60/254"},
		{"2.54 cm", inches, "1"},
		{"250 ml", millilitres, "250"},
		{"1 1/2 cups", millilitres, "354.88235475"},
		{"2 qt", millilitres, "1892.705892"},
		{"350 g", grams, "350"},
		{"1 lb 4 oz", grams, "566.9904625"},
		{"220 F", fahrenheit, "220"},
		{"104 °C", fahrenheit, "219.2"},
		{"104 C", fahrenheit, "219.2"},
		{"10 min", minutes, "10"},
		{"1 h 30 min", minutes, "90"},
		{"8 hours", minutes, "480"},
		{"3 weeks", minutes, "30240"},
		{"12 months", minutes, "525960"},
		{"1 year", minutes, "525960"},
		{"4,500 ft", feet, "4500"},
		{"1370 m", feet, "1370/0.3048"},
		{"305 metres", feet, "305/0.3048"},
		{"0 ft", feet, "0"},
		{"11 psi", psi, "11"},
		{"10 pounds pressure", psi, "10"},
		{"10 lb", psi, "10"},
		{"15 lb. of pressure", psi, "15"},
		{"2.5%", percent, "5/2"},
		{"5 per cent", percent, "5"},
	} {
		got, err := tt.read(tt.text)
		if err != nil {
			t.Errorf("%q: %v", tt.text, err)
			continue
		}
		if want := quotient(t, tt.want); got.Cmp(want) != 0 {
			t.Errorf("%q = %s, want %s", tt.text, got.RatString(), want.RatString())
		}
	}
}

// quotient reads 1370/0.3048, which big.Rat does not.
func quotient(t *testing.T, s string) *big.Rat {
	t.Helper()
	for i := range s {
		if s[i] == '/' {
			return new(big.Rat).Quo(ratOf(t, s[:i]), ratOf(t, s[i+1:]))
		}
	}
	return ratOf(t, s)
}

func inches(s string) (*big.Rat, error)      { l, err := ParseLength(s); return l.Inches(), err }
func millilitres(s string) (*big.Rat, error) { v, err := ParseVolume(s); return v.Millilitres(), err }
func grams(s string) (*big.Rat, error)       { w, err := ParseWeight(s); return w.Grams(), err }
func fahrenheit(s string) (*big.Rat, error) {
	d, err := ParseTemperature(s)
	return d.Fahrenheit(), err
}
func minutes(s string) (*big.Rat, error) { d, err := ParseDuration(s); return d.Minutes(), err }
func feet(s string) (*big.Rat, error)    { a, err := ParseAltitude(s); return a.Feet(), err }
func psi(s string) (*big.Rat, error)     { p, err := ParsePressure(s); return p.PSI(), err }
func percent(s string) (*big.Rat, error) { p, err := ParseShare(s); return p.Percent(), err }

func TestParseMeasuresRefuses(t *testing.T) {
	for _, tt := range []struct {
		text string
		read func(string) (*big.Rat, error)
		want string
	}{
		{"", inches, "nothing is written: a length is written as in 1/4 in or 6 mm"},
		{"12", inches, `"12" has no unit: a length is written as in 1/4 in or 6 mm`},
		{"1/4 inhc", inches, `there is no unit "inhc": did you mean in?`},
		{"2 ft", inches, `"2 ft" is not a length: write it in inches, mm or cm, as in 1/4 in or 6 mm`},
		{"1/4 in from the rim", inches, `"from the rim" is no part of a length: it is written as in 1/4 in or 6 mm`},
		{"500 g", millilitres, `"500 g" is not a volume: write it in cups, quarts or ml, as in 1 1/2 cups or 350 ml`},
		{"2 cups", grams, `"2 cups" is not a weight: write it in lb, oz or g, as in 1 lb 4 oz or 570 g`},
		{"220", fahrenheit, `"220" has no unit: a temperature is written as in 220 F or 104 °C`},
		{"220°", fahrenheit, `"°" is no part of a temperature: it is written as in 220 F or 104 °C`},
		{"5 F 3 C", fahrenheit, `"3 C" is no part of a temperature: it is written as in 220 F or 104 °C`},
		{"10", minutes, `"10" has no unit: a time is written as in 10 min or 1 h 30 min`},
		{"10 m", minutes, `"10 m" may be minutes or months: write min or months`},
		{"10 minits", minutes, `there is no unit "minits": did you mean min?`},
		{"10 wekes", minutes, `there is no unit "wekes": did you mean week?`},
		{"010 min", minutes, `"010 min" cannot be read: a number does not begin with 0 unless a point follows, as in 0.5`},
		{"10 psi", minutes, `"10 psi" is not a time: write it in min, h, days, weeks or months, as in 10 min or 1 h 30 min`},
		{"10 fortnights", minutes, `there is no unit "fortnights": a time is written in min, h, days, weeks or months, as in 10 min or 1 h 30 min`},
		{"10 min.5", minutes, `"5" is no part of a time: it is written as in 10 min or 1 h 30 min`},
		{"1,000", feet, `"1,000" has no unit: an altitude is written as in 4,500 ft or 1370 m`},
		{"10 in", feet, `"10 in" is not an altitude: write it in ft or m, as in 4,500 ft or 1370 m`},
		{"11 bar", psi, `there is no unit "bar": a pressure is written in psi or kPa, as in 11 psi or 76 kPa`},
		{"5", percent, `"5" has no unit: a strength is written as in 5% or 2.5%`},
		{"about 10 min", minutes, `"about 10 min" cannot be read: a number comes first, as in 1/2 or 1.5`},
		{"-18 C", fahrenheit, `"-18 C" cannot be read: a measure is never below zero`},
	} {
		got, err := tt.read(tt.text)
		if err == nil || err.Error() != tt.want {
			t.Errorf("%q: %v\nwant %s", tt.text, err, tt.want)
		}
		if got != nil {
			t.Errorf("%q = %s beside its error", tt.text, got.RatString())
		}
	}
}

// A measure that was never written has no value.
func TestMeasuresZero(t *testing.T) {
	for _, r := range []*big.Rat{
		Length{}.Inches(), Volume{}.Millilitres(), Weight{}.Grams(), Temperature{}.Fahrenheit(), Duration{}.Minutes(),
		Altitude{}.Feet(), Pressure{}.PSI(), Share{}.Percent(), Jar{}.Millilitres(),
	} {
		if r != nil {
			t.Errorf("nothing is %s", r)
		}
	}
}
