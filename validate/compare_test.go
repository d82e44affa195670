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

// TestCompareSum holds compareSum against big.Rat.Add and Cmp.
func TestCompareSum(t *testing.T) {
	all := sundry()
	for _, x := range all {
		for _, y := range all {
			for _, z := range all {
				if got, want := compareSum(x, y, z), x.Cmp(new(big.Rat).Add(y, z)); got != want {
					t.Fatalf("compareSum(%v, %v, %v) = %d, want %d", x, y, z, got, want)
				}
			}
		}
	}
}

// TestRatioCompare holds ratio.compare against big.Rat.Cmp.
func TestRatioCompare(t *testing.T) {
	parts := []int64{0, 1, 2, 3, 60, math.MaxInt32, math.MaxInt64}
	for _, num := range parts {
		for _, den := range parts[1:] {
			for _, x := range sundry() {
				if got, want := (ratio{num, den}).compare(x), big.NewRat(num, den).Cmp(x); got != want {
					t.Fatalf("%d/%d beside %v: %d, want %d", num, den, x, got, want)
				}
			}
		}
	}
}

// sundry gives numbers that fit into 64 bits and others.
func sundry() (all []*big.Rat) {
	for _, n := range []int64{0, 1, 3, 1000, 1 << 61, 1 << 62, math.MaxInt64} {
		x := big.NewRat(n, 1)
		all = append(all, x, new(big.Rat).Neg(x), new(big.Rat).Mul(x, big.NewRat(1, 3)), new(big.Rat).Mul(x, x))
	}
	return all
}
