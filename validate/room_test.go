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
