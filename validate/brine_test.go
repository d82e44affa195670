package validate

import (
	"math/big"
	"testing"
)

func TestStrengths(t *testing.T) {
	tests := []struct {
		name        string
		of          func(a, b *big.Rat) *big.Rat
		salt, other int64
		want        string // per cent, two decimals
	}{
		{"dill brine of AIB 539: 144 g to 1,896 g of water", BrineStrength, 144, 1896, "7.06"},
		{"kraut of AIB 539: 54 g to 2,268 g of cabbage", DrySaltStrength, 54, 2268, "2.38"},
		{"equal parts", BrineStrength, 100, 100, "50.00"},
		{"equal parts, dry", DrySaltStrength, 100, 100, "100.00"},
		{"no salt", BrineStrength, 0, 1000, "0.00"},
	}
	for _, tt := range tests {
		got := tt.of(big.NewRat(tt.salt, 1), big.NewRat(tt.other, 1))
		if got.FloatString(2) != tt.want {
			t.Errorf("%s: %s %%, want %s", tt.name, got.FloatString(2), tt.want)
		}
	}
	if got := BrineStrength(new(big.Rat), new(big.Rat)); got != nil {
		t.Errorf("nothing at all has a strength of %v", got)
	}
}
