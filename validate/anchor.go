package validate

import (
	"cmp"
	"slices"
)

// The anchors of a phrase are the two rarest of the words that must follow its
// first one. Few sentences have both behind a word that may open the phrase, and
// it is not looked for elsewhere.

// An opener is a phrase that a word may open.
type opener struct {
	phrase  int32
	anchors [2]int32 // 0 for those that a phrase does not have
}

// mostAnchors is how many different anchors there may be.
const mostAnchors = 2048

// index notes for each word the phrases that it may open, and the anchors that
// it is of.
func (l *lexicon) index() {
	l.openers = make([][]opener, len(l.families))
	l.anchors = make([][]int32, len(l.families))
	numbers := map[string]int32{"": 0}
	uses := l.usesOfWords()
	for n := range l.phrases {
		o := opener{phrase: int32(n)}
		for k, e := range l.rarest(l.phrases[n].elements[1:], uses) {
			o.anchors[k] = l.anchor(e, numbers)
		}
		for id := range l.opening(l.phrases[n].elements[0]) {
			l.openers[id] = append(l.openers[id], o)
		}
	}
	if len(numbers) > mostAnchors {
		panic("more anchors than mostAnchors")
	}
}

// anchor gives the number of an anchor, a new one if it has none.
func (l *lexicon) anchor(e element, numbers map[string]int32) int32 {
	a, known := numbers[e.text]
	if known {
		return a
	}
	a = int32(len(numbers))
	numbers[e.text] = a
	for id := range l.opening(e) {
		l.anchors[id] = append(l.anchors[id], a)
	}
	return a
}

// usesOfWords counts for each word the phrases that it may open or stand in.
func (l *lexicon) usesOfWords() []int {
	uses := make([]int, len(l.families))
	for i := range l.phrases {
		for _, e := range l.phrases[i].elements {
			for id := range l.opening(e) {
				uses[id]++
			}
		}
	}
	return uses
}

// rarest gives the elements whose words stand in the fewest phrases, among those
// that must be there: two, or fewer if there are no more.
func (l *lexicon) rarest(es []element, uses []int) []element {
	weight := func(e element) (n int) {
		for id := range l.opening(e) {
			n += uses[id]
		}
		return n
	}
	must := slices.DeleteFunc(slices.Clone(es), func(e element) bool { return e.optional || e.number })
	slices.SortStableFunc(must, func(a, b element) int { return cmp.Compare(weight(a), weight(b)) })
	return must[:min(len(must), 2)]
}
