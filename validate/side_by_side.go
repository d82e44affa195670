package validate

import (
	"runtime"
	"slices"
	"sync"
	"sync/atomic"
)

// sideBySide runs a check on each of n things, several at a time, and gives all that
// they find in the order of the things. A check may not change what another
// reads.
func sideBySide(n int, check func(i int) []Finding) []Finding {
	found := make([][]Finding, n)
	var next atomic.Int64
	var group sync.WaitGroup
	for range min(n, runtime.GOMAXPROCS(0)) {
		group.Go(func() {
			for {
				i := int(next.Add(1)) - 1
				if i >= n {
					return
				}
				found[i] = check(i)
			}
		})
	}
	group.Wait()
	return slices.Concat(found...)
}
