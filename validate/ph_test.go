package validate

import (
	"math/big"
	"testing"
)

func TestPHRanges(t *testing.T) {
	lowest, highest := big.NewRat(0, 1), big.NewRat(14, 1)
	for _, p := range PHRanges() {
		if p.Low.Cmp(lowest) <= 0 || p.High.Cmp(p.Low) < 0 || p.High.Cmp(highest) >= 0 {
			t.Errorf("the pH of %s runs from %s to %s", p.Food, p.Low, p.High)
		}
		if p.Source.Title == "" || p.Evidence == "" {
			t.Errorf("the pH of %s has no source", p.Food)
		}
	}
}

func TestAcidityOf(t *testing.T) {
	tests := []struct {
		low, high string
		want      Acidity
	}{
		{"3.3", "4.6", Acid}, {"3.3", "4.61", Borderline}, {"4.6", "4.61", Borderline}, {"4.61", "6", LowAcid}, {"2", "2", Acid},
	}
	for _, tt := range tests {
		low, _ := new(big.Rat).SetString(tt.low)
		high, _ := new(big.Rat).SetString(tt.high)
		if got := acidityOf(low, high); got != tt.want {
			t.Errorf("pH %s to %s is %v, want %v", tt.low, tt.high, got, tt.want)
		}
	}
}

// Acidities are printed by the words of the tables.
func TestAcidityString(t *testing.T) {
	for word, a := range acidities {
		if a.String() != word {
			t.Errorf("%q is printed as %q", word, a)
		}
	}
}
