package validate

import (
	"math/big"
	"testing"

	"stillroom/content"
)

func TestTouches(t *testing.T) {
	lowest := TestedBand{From: 0, To: 1000}
	middle := TestedBand{From: 1001, To: 6000}
	top := TestedBand{From: 6001}
	for _, c := range []struct {
		band   string
		tested TestedBand
		want   bool
	}{
		{"0-1,000 ft", lowest, true},
		{"0-1,000 ft", middle, false},
		{"0-1,001 ft", middle, true},
		{"1,000-2,000 ft", lowest, true},
		{"above 1,000 ft", lowest, false},
		{"above 1,000 ft", middle, true},
		{"above 999 ft", lowest, true},
		{"above 6,000 ft", middle, false},
		{"above 6,000 ft", top, true},
		{"1,001-6,000 ft", top, false},
		{"0-305 m", middle, false},    // 305 m is 1,000.66 ft, before 1,001
		{"0-306 m", middle, true},     // 306 m is 1,003.94 ft
		{"305-1829 m", lowest, false}, // 1,000.66 ft is past 1,000
		{"304-1829 m", lowest, true},  // 304 m is 997.4 ft
		{"306-1829 m", top, false},    // 1,829 m is 6,000.66 ft
		{"306-1830 m", top, true},
		{"0-610 m", TestedBand{From: 2001, To: 4000}, true}, // 610 m is 2,001.3 ft
		{"0-609 m", TestedBand{From: 2001, To: 4000}, false},
	} {
		from, over, to, err := content.ParseBand(c.band)
		if err != nil {
			t.Fatal(err)
		}
		s := spanOf(content.Band[content.Duration]{From: from, Over: over, To: to})
		if got := c.tested.touches(s); got != c.want {
			t.Errorf("%q touches %s = %v, want %v", c.band, c.tested, got, c.want)
		}
	}
}

func TestTestedBandString(t *testing.T) {
	for _, c := range []struct {
		band TestedBand
		want string
	}{
		{TestedBand{From: 0, To: 1000}, "0-1,000 ft"},
		{TestedBand{From: 1001, To: 10000}, "1,001-10,000 ft"},
		{TestedBand{From: 6001}, "above 6,000 ft"},
	} {
		if got := c.band.String(); got != c.want {
			t.Errorf("%+v = %q, want %q", c.band, got, c.want)
		}
	}
}

// The metric figures are those of metric canning tables: 6, 13, 25 and 32 mm
// for 1/4, 1/2, 1 and 1 1/4 in (arithmetic from 25.4 mm to the inch).
func TestSameHeadspace(t *testing.T) {
	for _, c := range []struct {
		written string
		tested  *big.Rat
		want    bool
	}{
		{"1/4 in", big.NewRat(1, 4), true},
		{"¼ inch", big.NewRat(1, 4), true},
		{"0.25 in", big.NewRat(1, 4), true},
		{"6 mm", big.NewRat(1, 4), true},
		{"7 mm", big.NewRat(1, 4), false},
		{"5 mm", big.NewRat(1, 4), false},
		{"13 mm", big.NewRat(1, 2), true},
		{"12 mm", big.NewRat(1, 2), false},
		{"2.5 cm", big.NewRat(1, 1), true},
		{"32 mm", big.NewRat(5, 4), true},
		{"1/4-1/2 in", big.NewRat(1, 4), false},
		{"1/2 in", big.NewRat(1, 4), false},
	} {
		h, err := content.ParseLength(c.written)
		if err != nil {
			t.Fatal(err)
		}
		if got := sameHeadspace(h, c.tested); got != c.want {
			t.Errorf("%q agrees with %s in = %v, want %v", c.written, c.tested.RatString(), got, c.want)
		}
	}
}
