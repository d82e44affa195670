package build

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// SideBySide does something for each of n things, some of them at a time, on
// every processor. They are begun in order.
func SideBySide(n int, do func(i int)) {
	var next atomic.Int64
	var group sync.WaitGroup
	for range min(n, runtime.GOMAXPROCS(0)) {
		group.Go(func() {
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				do(i)
			}
		})
	}
	group.Wait()
}
