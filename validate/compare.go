package validate

import (
	"cmp"
	"math/big"
	"math/bits"
)

// compare compares two numbers exactly, as big.Rat.Cmp does, and without memory
// where their parts fit into 64 bits, as those of a kitchen do.
func compare(x, y *big.Rat) int {
	if x == y {
		return 0
	}
	a, b, small := parted(x)
	c, d, smallToo := parted(y)
	if !small || !smallToo {
		return x.Cmp(y)
	}
	if sign := x.Sign(); sign != y.Sign() {
		return cmp.Compare(sign, y.Sign())
	} else if sign < 0 {
		a, b, c, d = c, d, a, b // of -1/2 and -1/3 the one that is larger without its sign is less
	}
	return compareParts(a, b, c, d)
}

// compareParts compares a/b with c/d.
func compareParts(a, b, c, d uint64) int {
	high, low := bits.Mul64(a, d)
	otherHigh, otherLow := bits.Mul64(c, b)
	return cmp.Or(cmp.Compare(high, otherHigh), cmp.Compare(low, otherLow))
}

// compareSum compares a number with the sum of two, exactly.
func compareSum(x, y, z *big.Rat) int {
	const most = 1 << 62
	a, _, ok := parted(x)
	b, _, okToo := parted(y)
	c, _, okAll := parted(z)
	if ok && okToo && okAll && x.IsInt() && y.IsInt() && z.IsInt() && x.Sign() >= 0 && y.Sign() >= 0 && z.Sign() >= 0 && b < most && c < most {
		return cmp.Compare(a, b+c)
	}
	return x.Cmp(new(big.Rat).Add(y, z))
}

// parted gives a number without its sign as a fraction, if its parts fit.
func parted(x *big.Rat) (num, den uint64, ok bool) {
	den = 1
	if !x.IsInt() {
		if !x.Denom().IsUint64() {
			return 0, 0, false
		}
		den = x.Denom().Uint64()
	}
	if !x.Num().IsInt64() {
		return 0, 0, false
	}
	n := x.Num().Int64()
	if n < 0 {
		return uint64(-n), den, true
	}
	return uint64(n), den, true
}
