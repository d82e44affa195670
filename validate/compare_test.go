package validate

import (
	"math"
	"math/big"
	"testing"
)

// TestCompare holds compare against big.Rat.Cmp, on both sides of 64 bits.
func TestCompare(t *testing.T) {
	parts := []int64{0, 1, 2, 3, 254, 1000, 473176473, math.MaxInt64 - 1, math.MaxInt64}
	var all []*big.Rat
	for _, n := range parts {
		for _, d := range parts[1:] {
			x := big.NewRat(n, d)
			all = append(all, x, new(big.Rat).Neg(x), new(big.Rat).Mul(x, x), new(big.Rat).Sub(big.NewRat(math.MinInt64, 1), x))
		}
	}
	for _, x := range append(all, new(big.Rat)) {
		for _, y := range all {
			if got, want := compare(x, y), x.Cmp(y); got != want {
				t.Fatalf("compare(%v, %v) = %d, want %d", x, y, got, want)
			}
		}
	}
}
