package content

import (
	"fmt"
	"testing"
)

// bandOf writes down a band: an arrow stands for "just above".
func bandOf(from Altitude, over bool, to Altitude) string {
	arrow := ""
	if over {
		arrow = "> "
	}
	if to.IsZero() {
		return fmt.Sprintf("%s%s and on", arrow, exactly(from.Quantity))
	}
	return fmt.Sprintf("%s%s to %s", arrow, exactly(from.Quantity), exactly(to.Quantity))
}

func TestParseBand(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{"0-1,000 ft", "0 ft to 1000 ft"},
		{"0-1000 ft", "0 ft to 1000 ft"},
		{"0–1,000 ft", "0 ft to 1000 ft"},
		{"0 - 1,000 feet", "0 ft to 1000 ft"},
		{"0 ft to 1,000 ft", "0 ft to 1000 ft"},
		{"0 to 305 m", "0 m to 305 m"},
		{"1,001-6,000 ft", "1001 ft to 6000 ft"},
		{"1,001 ft - 6,000 ft", "1001 ft to 6000 ft"},
		{"305.1-914 m", "3051/10 m to 914 m"},
		{"up to 1,000 ft", "0 ft to 1000 ft"},
		{"to 1,000 ft", "0 ft to 1000 ft"},
		{"at or below 1,000 ft", "0 ft to 1000 ft"},
		{"sea level to 1,000 ft", "0 ft to 1000 ft"},
		{"Sea level-1,000 ft.", "0 ft to 1000 ft"},
		{"above 6,000 ft", "> 6000 ft and on"},
		{"Above 6,000 ft", "> 6000 ft and on"},
		{"over 1829 m", "> 1829 m and on"},
		{"more than 1829 m", "> 1829 m and on"},
		{"6,001 ft and above", "6001 ft and on"},
		{"6,001 ft and up", "6001 ft and on"},
		{"6,001 ft or more", "6001 ft and on"},
		{"6,001+ ft", "6001 ft and on"},
		{"6,001 ft+", "6001 ft and on"},
		{"0 ft and above", "0 ft and on"},
	} {
		from, over, to, err := ParseBand(tt.text)
		if err != nil {
			t.Errorf("ParseBand(%q): %v", tt.text, err)
			continue
		}
		if got := bandOf(from, over, to); got != tt.want {
			t.Errorf("ParseBand(%q) = %s, want %s", tt.text, got, tt.want)
		}
	}
}

func TestParseBandRefuses(t *testing.T) {
	for _, tt := range []struct {
		text string
		want error
	}{
		{"1,000 ft", errNoBand},
		{"0-1,000 ft above the sea", errNoBand},
		{"0-1,000-2,000 ft", errNoBand},
		{"0-1,000", errBandUnit},
		{"above 6,000", errBandUnit},
		{"0 ft-1,000", errBandUnit},
		{"0-1,000 in", errBandUnit},
		{"0 ft-305 m", errBandUnits},
		{"0 m to 1,000 ft", errBandUnits},
		{"1,000-0 ft", errBandFalls},
		{"6,000-6,000 ft", errBandFalls},
		{"below 1,000 ft", errBandBelow},
		{"under 1,000 ft", errBandBelow},
		{"0-1,00 ft", errComma},
		{"0-01,000 ft", errLeadingZero},
		{"high up", errNoNumber},
		{"above", errNoNumber},
		{"-10-1,000 ft", errNegative},
	} {
		from, over, to, err := ParseBand(tt.text)
		if want := misread(tt.text, tt.want).Error(); err == nil || err.Error() != want {
			t.Errorf("ParseBand(%q): %v\nwant %s", tt.text, err, want)
		}
		if !from.IsZero() || over || !to.IsZero() {
			t.Errorf("ParseBand(%q) = %s beside its error", tt.text, bandOf(from, over, to))
		}
	}
}

// checkBand checks what holds of every text: a band rises, and its ends are in
// one unit.
func checkBand(t *testing.T, text string) {
	t.Helper()
	from, over, to, err := ParseBand(text)
	switch {
	case err != nil:
		return
	case from.Feet() == nil || from.Low.Sign() < 0 || from.IsRange():
		t.Errorf("ParseBand(%q) from %v", text, from)
	case to.IsZero():
		return
	case to.Unit != from.Unit || to.Low.Cmp(from.Low) <= 0 || over || to.IsRange():
		t.Errorf("ParseBand(%q) = %s", text, bandOf(from, over, to))
	}
}

var bandTexts = []string{
	"0-1,000 ft", "1,001-6,000 ft", "above 6,000 ft", "over 1829 m", "6,001+ ft", "up to 305 m", "sea level to 1,000 ft",
	"6,001 ft and above", "0 ft-305 m", "1,000-0 ft", "-10-1,000 ft",
}
