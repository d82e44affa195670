package build

import (
	"runtime"
	"slices"
	"sync"
)

// lately keeps the last few of many values, of which each is made once while it
// is kept: for what is wanted several times in a row, and then no more. The zero
// value is ready, and several goroutines may use it.
type lately[K comparable, V any] struct {
	mu   sync.Mutex
	last []late[K, V] // the oldest first
}

type late[K comparable, V any] struct {
	key   K
	value func() (V, error)
}

// of gives the value of a key.
func (l *lately[K, V]) of(key K, make func() (V, error)) (V, error) {
	l.mu.Lock()
	i := slices.IndexFunc(l.last, func(v late[K, V]) bool { return v.key == key })
	if i < 0 {
		l.last = append(l.last, late[K, V]{key, sync.OnceValues(make)})
		l.last = slices.Delete(l.last, 0, max(0, len(l.last)-2*runtime.GOMAXPROCS(0)))
		i = len(l.last) - 1
	}
	value := l.last[i].value
	l.mu.Unlock()
	return value()
}
