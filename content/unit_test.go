package content

import (
	"math/big"
	"strings"
	"testing"
)

func ratOf(t testing.TB, s string) *big.Rat {
	t.Helper()
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		t.Fatalf("%q is no number", s)
	}
	return r
}

// inUnit gives how many of a unit the written quantity is.
func inUnit(t testing.TB, text string, u Unit) *big.Rat {
	t.Helper()
	q, err := ParseQuantity(text)
	if err != nil {
		t.Fatal(err)
	}
	c, ok := q.In(u)
	if !ok {
		t.Fatalf("%s is not given in %s", text, u)
	}
	return c.Low
}

// Relations that are exact by definition: NIST Handbook 44, appendix C,
// "General Tables of Units of Measurement"; NIST SP 811 (2008), appendix B.
// Both from memory.
func TestUnitsExact(t *testing.T) {
	for _, tt := range []struct {
		text string
		unit Unit
		want string
	}{
		{"1 in", Millimetre, "25.4"},
		{"1 in", Centimetre, "2.54"},
		{"10 mm", Centimetre, "1"},
		{"1 ft", Metre, "0.3048"},
		{"1 lb", Gram, "453.59237"},
		{"1 lb", Ounce, "16"},
		{"1 oz", Gram, "28.349523125"},
		{"1 kg", Gram, "1000"},
		{"1 g", Milligram, "1000"},
		{"1 gal", Millilitre, "3785.411784"},
		{"1 gal", Quart, "4"},
		{"1 qt", Pint, "2"},
		{"1 pt", Cup, "2"},
		{"1 cup", FluidOunce, "8"},
		{"1 cup", Tablespoon, "16"},
		{"1 tbsp", Teaspoon, "3"},
		{"1 fl oz", Millilitre, "29.5735295625"},
		{"1 bushel", Peck, "4"},
		{"1 bushel", Millilitre, "35239.07016688"},
		{"1 l", Millilitre, "1000"},
		{"1 l", Decilitre, "10"},
		{"1 l", Centilitre, "100"},
		{"32 °F", Celsius, "0"},
		{"212 °F", Celsius, "100"},
		{"0 °F", Celsius, "-160/9"},
		{"100 °C", Fahrenheit, "212"},
		{"37 °C", Fahrenheit, "98.6"},
		{"1 min", Second, "60"},
		{"1 h", Minute, "60"},
		{"1 day", Hour, "24"},
		{"1 week", Day, "7"},
		{"1 year", Month, "12"},
		{"1 year", Day, "365.25"}, // the Julian year, as the doc of Duration says
	} {
		if got := inUnit(t, tt.text, tt.unit); got.Cmp(ratOf(t, tt.want)) != 0 {
			t.Errorf("%s = %s %s, want %s", tt.text, got.RatString(), tt.unit, tt.want)
		}
	}
}

// The gallon is 231 cubic inches, the bushel 2,150.42 (NIST Handbook 44,
// appendix C, from memory); the psi is the weight of a pound on a square inch
// at standard gravity, 9.80665 m/s² (SP 811, appendix B, from memory).
func TestUnitsFromDefinitions(t *testing.T) {
	inch := ratOf(t, "2.54") // cm
	cubic := new(big.Rat).Mul(new(big.Rat).Mul(inch, inch), inch)
	for unit, inches := range map[string]string{"1 gal": "231", "1 bushel": "2150.42"} {
		want := new(big.Rat).Mul(cubic, ratOf(t, inches))
		if got := inUnit(t, unit, Millilitre); got.Cmp(want) != 0 {
			t.Errorf("%s = %s ml, want %s", unit, got.RatString(), want.RatString())
		}
	}
	newtons := new(big.Rat).Mul(ratOf(t, "0.45359237"), ratOf(t, "9.80665"))
	square := new(big.Rat).Mul(ratOf(t, "0.0254"), ratOf(t, "0.0254"))
	want := new(big.Rat).Quo(newtons, square)
	want.Quo(want, ratOf(t, "1000"))
	if got := inUnit(t, "1 psi", Kilopascal); got.Cmp(want) != 0 {
		t.Errorf("1 psi = %s kPa, want %s", got.RatString(), want.RatString())
	}
}

// Rounded values as printed in NIST SP 811 (2008), appendix B.8, seven digits,
// from memory.
func TestUnitsPrinted(t *testing.T) {
	for _, tt := range []struct {
		text   string
		unit   Unit
		places int
		want   string
	}{
		{"1 psi", Kilopascal, 6, "6.894757"},
		{"1 tsp", Millilitre, 6, "4.928922"},
		{"1 tbsp", Millilitre, 5, "14.78676"},
		{"1 fl oz", Millilitre, 5, "29.57353"},
		{"1 cup", Millilitre, 4, "236.5882"},
		{"1 pint", Millilitre, 4, "473.1765"},
		{"1 quart", Millilitre, 4, "946.3529"},
		{"1 gallon", Millilitre, 3, "3785.412"},
		{"1 peck", Millilitre, 3, "8809.768"},
		{"1 bushel", Millilitre, 2, "35239.07"},
		{"1 oz", Gram, 5, "28.34952"},
		{"1 lb", Gram, 4, "453.5924"},
	} {
		if got := inUnit(t, tt.text, tt.unit).FloatString(tt.places); got != tt.want {
			t.Errorf("%s = %s %s, want %s", tt.text, got, tt.unit, tt.want)
		}
	}
}

// Going to another unit and back loses nothing.
func TestUnitsRoundTrip(t *testing.T) {
	amount := big.NewRat(355, 113)
	for _, from := range units {
		for _, to := range units {
			q := Quantity{Low: amount, High: amount, Unit: from.unit}
			there, ok := q.In(to.unit)
			if ok != (from.dim == to.dim) {
				t.Errorf("%s in %s: %v", from.unit, to.unit, ok)
			}
			if !ok {
				continue
			}
			if back, _ := there.In(from.unit); back.Low.Cmp(amount) != 0 {
				t.Errorf("%s in %s and back = %s", from.unit, to.unit, back.Low)
			}
		}
	}
}

func TestDimension(t *testing.T) {
	for _, tt := range []struct {
		unit Unit
		want Dimension
	}{
		{"", Count}, {"clove", Count}, {"no such thing", Count},
		{Inch, LengthDim}, {Pound, WeightDim}, {Cup, VolumeDim}, {Celsius, TemperatureDim},
		{Month, TimeDim}, {Metre, AltitudeDim}, {PSI, PressureDim}, {Percent, ShareDim},
	} {
		if got := tt.unit.Dimension(); got != tt.want {
			t.Errorf("Dimension of %q = %v, want %v", tt.unit, got, tt.want)
		}
	}
}

// Every spelling of the tables is read as its unit, alone and in capitals,
// unless an earlier row owns it.
func TestSpellings(t *testing.T) {
	for _, row := range units {
		for s := range strings.SplitSeq(row.spellings, ", ") {
			m, rest, _ := cutUnit(" "+s, dimsOf(row.dim))
			if m == nil || m.unit != row.unit || rest != "" {
				t.Errorf("%q in its dimension is read as %v, not as %s", s, m, row.unit)
			}
			if m, _, _ := cutUnit(strings.ToUpper(s), dimsOf(row.dim)); m == nil || m.unit != row.unit && s != "t" {
				t.Errorf("%q is read as %v, not as %s", strings.ToUpper(s), m, row.unit)
			}
		}
	}
	for _, row := range counted {
		for _, s := range []string{row.one, row.many, strings.ToUpper(row.many)} {
			if m, rest, _ := cutUnit(s, dimsOf(Count)); m == nil || m.unit != Unit(row.one) || rest != "" {
				t.Errorf("%q is read as %v, not as %s", s, m, row.one)
			}
		}
	}
}

func TestSpellingsInSentences(t *testing.T) {
	for _, tt := range []struct {
		text string
		want Unit
	}{
		{"1 t.", Teaspoon}, {"1 t", Teaspoon}, {"1 T.", Tablespoon}, {"1 T", Tablespoon}, {"1 Tbsp.", Tablespoon},
		{"1 c.", Cup}, {"1 C", Cup}, {"1 c", Cup}, {"1 fl. oz.", FluidOunce}, {"1 fluid  ounce", FluidOunce},
		{"1#", Pound}, {"1 lbs", Pound}, {"1 LB", Pound}, {"1 mL", Millilitre}, {"1 L", Litre}, {"1 gr", Gram},
		{`1"`, Inch}, {"1″", Inch}, {"1 inch", Inch}, {"1-inch", Inch}, {"1in.", Inch},
		{"1°F", Fahrenheit}, {"1 ° F", Fahrenheit}, {"1 ºF", Fahrenheit}, {"1 F", Fahrenheit}, {"1 degrees F", Fahrenheit},
		{"1 deg. F", Fahrenheit}, {"1 degree Fahrenheit", Fahrenheit}, {"1 °C", Celsius}, {"1 ˚c", Celsius}, {"1 ℃", Celsius},
		{"1 hr", Hour}, {"1h", Hour}, {"1 mins", Minute}, {"1 sec", Second}, {"1 wks", Week}, {"1 yr", Year},
		{"1 feet", Foot}, {"1 m", Metre}, {"1 metres", Metre}, {"1 kpa", Kilopascal}, {"1 PSI", PSI},
		{"1 %", Percent}, {"1%", Percent}, {"1 per cent", Percent}, {"1 percent", Percent},
		{"1 pkg.", "package"}, {"1 tins", "tin"}, {"1 cans", "can"}, {"1 leaves", "leaf"}, {"1 bunches", "bunch"},
		{"1 half-pint", "?"}, {"1 8-oz-can", "?"}, {"1 #10", "?"}, {"1 cupboard", "?"}, {"1 oz2", "?"},
	} {
		got := Unit("?")
		if q, err := ParseQuantity(tt.text); err == nil {
			got = q.Unit
		}
		if got != tt.want {
			t.Errorf("unit of %s = %q, want %q", tt.text, got, tt.want)
		}
	}
}

// A conversion gives the same in words of the machine and in numbers of any
// length, from the least amounts to those that a word does not hold.
func TestConvertInWords(t *testing.T) {
	for _, text := range []string{"0", "1", "1/3", "99/100", "12", "1234567/100", "999999999999", "1/999999999999", "-40"} {
		x, _ := new(big.Rat).SetString(text)
		for _, from := range unitTable {
			for _, to := range unitTable {
				if from.factor == nil || from.dim != to.dim {
					continue
				}
				if got, want := convert(x, from, to), convertLong(x, from, to); got.RatString() != want.RatString() {
					t.Errorf("%s %s is %s %s, want %s", text, from.unit, got.RatString(), to.unit, want.RatString())
				}
			}
		}
	}
}
