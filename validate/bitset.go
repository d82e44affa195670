package validate

// A bitset is a set of small numbers.
type bitset []uint64

func (set bitset) add(n int)      { set[n>>6] |= 1 << (n & 63) }
func (set bitset) has(n int) bool { return set[n>>6]&(1<<(n&63)) != 0 }
