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
	phrase  uint16
	anchors [2]uint16 // 0 for those that a phrase does not have
}

// mostAnchors is how many different anchors there may be.
const mostAnchors = 2048

// An anchorSet holds anchors below mostAnchors.
type anchorSet [mostAnchors]bool

func (set *anchorSet) add(n uint16)      { set[n%mostAnchors] = true }
func (set *anchorSet) has(n uint16) bool { return set[n%mostAnchors] }

// index notes for each word the phrases that it may open, and the anchors that
// it is of.
func (l *lexicon) index() {
	openers, anchors := make([][]opener, len(l.words)), make([][]uint16, len(l.words))
	numbers := map[string]uint16{"": 0}
	uses := l.usesOfWords()
	for n := range l.phrases {
		o := opener{phrase: uint16(n)}
		for k, e := range l.rarest(l.phrases[n].elements[1:], uses) {
			a, known := numbers[e.text]
			if !known {
				a = uint16(len(numbers))
				numbers[e.text] = a
				for id := range l.opening(e) {
					anchors[id] = append(anchors[id], a)
				}
			}
			o.anchors[k] = a
		}
		for id := range l.opening(l.phrases[n].elements[0]) {
			openers[id] = append(openers[id], o)
		}
	}
	if len(numbers) > mostAnchors {
		panic("more anchors than mostAnchors")
	}
	for id := range l.words {
		w := &l.words[id]
		l.openers, w.openers = lay(l.openers, openers[id])
		l.anchors, w.anchors = lay(l.anchors, anchors[id])
	}
}

// lay appends the list of a word to the lists of others, and says where it lies.
func lay[T any](all, list []T) ([]T, stretch) {
	from := len(all)
	all = append(all, list...)
	return all, stretch{int32(from), int32(len(all))}
}

// usesOfWords counts for each word the phrases that it may open or stand in, and
// notes it with their elements.
func (l *lexicon) usesOfWords() []int {
	uses := make([]int, len(l.words))
	for i := range l.phrases {
		es := l.phrases[i].elements
		for k := range es {
			for id := range l.opening(es[k]) {
				uses[id]++
				es[k].opens.add(uint8(id))
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
