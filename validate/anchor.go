package validate

import "math"

// The anchor of a phrase is the rarest of the words that must follow its first
// one. Most sentences do not have it, and the phrase is not looked for in them.

// An opener is a phrase that a word may open.
type opener struct {
	phrase int32
	anchor int32 // 0 for a phrase that has none
}

// mostAnchors is how many different anchors there may be.
const mostAnchors = 1024

// anchored adds the anchors that stand in a sentence.
func (l *lexicon) anchored(s *sentence, there bitset) {
	there.add(0)
	for i := range s.len() {
		for _, n := range l.anchors[s.at(i).id] {
			there.add(n)
		}
	}
}

// index notes for each word the phrases that it may open, and the anchors that
// it is of.
func (l *lexicon) index() {
	l.openers = make([][]opener, len(l.families))
	l.anchors = make([][]int32, len(l.families))
	numbers := map[string]int32{"": 0}
	uses := l.usesOfWords()
	for n := range l.phrases {
		p := &l.phrases[n]
		anchor := l.rarest(p.elements[1:], uses)
		a, known := numbers[anchor.text]
		if !known {
			a = int32(len(numbers))
			numbers[anchor.text] = a
			for id := range l.opening(anchor) {
				l.anchors[id] = append(l.anchors[id], a)
			}
		}
		for id := range l.opening(p.elements[0]) {
			l.openers[id] = append(l.openers[id], opener{int32(n), a})
		}
	}
	if len(numbers) > mostAnchors {
		panic("more anchors than mostAnchors")
	}
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

// rarest gives the element whose words stand in the fewest phrases, among those
// that must be there; the zero element if there is none.
func (l *lexicon) rarest(es []element, uses []int) (rarest element) {
	least := math.MaxInt
	for _, e := range es {
		if e.optional || e.number {
			continue
		}
		n := 0
		for id := range l.opening(e) {
			n += uses[id]
		}
		if n < least {
			rarest, least = e, n
		}
	}
	return rarest
}
