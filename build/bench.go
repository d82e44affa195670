package build

import "sync"

// A bench has room for so many pixels at a time. A picture that is larger has
// it to itself.
type bench struct {
	size, taken int
	mu          sync.Mutex
	free        *sync.Cond
}

// benchPixels is twice what a telephone takes, and about 100 MB once decoded.
const benchPixels = 24_000_000

func newBench(size int) *bench {
	b := &bench{size: size}
	b.free = sync.NewCond(&b.mu)
	return b
}

func (b *bench) take(pixels int) {
	b.mu.Lock()
	defer b.mu.Unlock()
	for b.taken > 0 && b.taken+pixels > b.size {
		b.free.Wait()
	}
	b.taken += pixels
}

func (b *bench) give(pixels int) {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.taken -= pixels
	b.free.Broadcast()
}
