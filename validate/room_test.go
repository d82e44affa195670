package validate

import (
	"slices"
	"testing"
)

func TestRoomKeepsListsApart(t *testing.T) {
	r := room[int]{size: 256}
	var lists [][]int
	for n := range 40 {
		l := r.list(n / 2)
		for range n * n {
			l = append(l, n)
		}
		lists = append(lists, r.kept(l))
	}
	for n, l := range lists {
		if want := slices.Repeat([]int{n}, n*n); !slices.Equal(l, want) {
			t.Errorf("list %d is %v", n, l)
		}
		if cap(l) != len(l) {
			t.Errorf("list %d can grow into the next one", n)
		}
	}
}

func TestRoomIsUsedAgain(t *testing.T) {
	r := room[int]{size: 4}
	fill := func() {
		for range 8 {
			r.kept(append(r.list(2), 1, 2))
		}
		r.clear()
	}
	fill() // it learns how much comes
	if n := testing.AllocsPerRun(10, fill); n > 1.0/5 {
		t.Errorf("%v allocations to fill it again", n)
	}
}
