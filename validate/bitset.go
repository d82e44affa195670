package validate

// A bitset is a set of small numbers.
type bitset []uint64

func (set bitset) add(n int32)      { set[n>>6] |= 1 << (n & 63) }
func (set bitset) has(n int32) bool { return set[n>>6]&(1<<(n&63)) != 0 }
