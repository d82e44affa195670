package build

import (
	"io"
	"path/filepath"
	"runtime"
	"sync/atomic"
	"testing"
)

// Whatever the size of a site, no more of its files are in memory at a time than
// there are processors to write them, and of its recipes no more than a few are
// told.
func TestFilesAreLetGo(t *testing.T) {
	c := exampleChecked(t)
	a, err := NewAssets(c, theme(t), darkroom)
	if err != nil {
		t.Fatal(err)
	}
	e := newEdition(c.Site(), c.Day(), a)
	files, err := pages(e, theme(t))
	if err != nil {
		t.Fatal(err)
	}
	var made, held, most atomic.Int64
	for i, f := range files {
		files[i].Open = func() (io.ReadSeekCloser, error) {
			made.Add(1)
			if n := held.Add(1); n > most.Load() {
				most.Store(n)
			}
			r, err := f.Open()
			return lent{r, &held}, err
		}
	}
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, files)
	mustWrite(t, dir, files)
	procs := runtime.GOMAXPROCS(0)
	if int(made.Load()) != 2*len(files) || held.Load() != 0 || int(most.Load()) > procs {
		t.Errorf("%d files were made %d times, %d at a time, and %d are held", len(files), made.Load(), most.Load(), held.Load())
	}
	if n := len(e.told.last); n == 0 || n > 2*procs || n >= len(e.recipes) && len(e.recipes) > 2*procs {
		t.Errorf("%d of %d recipes are held as they were told", n, len(e.recipes))
	}
}

// lent is a file that is counted until it is given back.
type lent struct {
	io.ReadSeekCloser
	held *atomic.Int64
}

func (l lent) Close() error {
	l.held.Add(-1)
	return l.ReadSeekCloser.Close()
}

func TestLately(t *testing.T) {
	var l lately[int, int]
	made := make(map[int]int)
	ask := func(k int) {
		t.Helper()
		got, err := l.of(k, func() (int, error) { made[k]++; return k * k, nil })
		if err != nil || got != k*k {
			t.Errorf("of(%d) = %d, %v", k, got, err)
		}
	}
	many := 5 * runtime.GOMAXPROCS(0)
	for k := range many {
		ask(k)
		ask(k)
	}
	ask(0)
	if made[0] != 2 || made[many-1] != 1 || len(l.last) != 2*runtime.GOMAXPROCS(0) {
		t.Errorf("the first was made %d times, the last %d times, %d are kept", made[0], made[many-1], len(l.last))
	}
}
