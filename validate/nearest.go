package validate

import (
	"cmp"
	"math/bits"
	"slices"
	"strings"
)

// nearest gives the known words that are most like one that is not known, at
// most n of them, best first. A word of which more than a third would have to
// change is not like it, unless all its parts occur.
func nearest(word string, known []string, n int) []string {
	type near struct {
		word string
		away int
	}
	var found []near
	letters := lettersOf(word)
	for _, k := range known {
		most := max(len(word), len(k)) / 3
		if mayBeWithin(most, letters^lettersOf(k), letters, len(word)-len(k)) {
			if away := distance(word, k); away <= most {
				found = append(found, near{k, away})
				continue
			}
		}
		if holdsParts(k, word) {
			found = append(found, near{k, len(word) + distance(word, k)})
		}
	}
	slices.SortStableFunc(found, func(a, b near) int { return cmp.Compare(a.away, b.away) })
	var out []string
	for _, f := range found[:min(n, len(found))] {
		out = append(out, f.word)
	}
	return out
}

// lettersOf has a bit for each letter that a word has, some sharing one.
func lettersOf(word string) (set uint64) {
	for i := range len(word) {
		set |= 1 << (word[i] % 64)
	}
	return set
}

// mayBeWithin reports whether a word may be made of another by so few steps, since
// one step adds or drops one letter at most: other has those that only one of the
// words has, letters those of the first, longer is by how much that one is longer.
func mayBeWithin(steps int, other, letters uint64, longer int) bool {
	return longer <= steps && -longer <= steps &&
		bits.OnesCount64(other&letters) <= steps && bits.OnesCount64(other&^letters) <= steps
}

// holdsParts reports whether every part of an ID stands in a longer one:
// tomato-sauce in tomato-sauce-standard-hot.
func holdsParts(long, short string) bool {
	for part := range strings.SplitSeq(short, "-") {
		if len(part) < 3 || !strings.Contains(long, part) {
			return false
		}
	}
	return true
}

// distance counts the letters that must be added, dropped, changed or swapped
// with a neighbour to turn a into b.
func distance(a, b string) int {
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
