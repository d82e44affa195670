package validate

import "strings"

// shelve puts the words of a lexicon where number finds them: at their hash, or
// at the next place that is free.
func (l *lexicon) shelve() {
	size := 1
	for size < 2*len(l.words) {
		size *= 2
	}
	l.slots = make([]slot, size)
	l.pack()
	for id := 1; id < len(l.words); id++ {
		hash := hashOf(l.words[id].word)
		i := hash & uint32(size-1)
		for l.slots[i].id != 0 {
			i = (i + 1) & uint32(size-1)
		}
		l.slots[i] = slot{uint16(hash >> 16), uint16(id)}
	}
}

// pack puts the letters of all words into one string, so that they lie together.
func (l *lexicon) pack() {
	var b strings.Builder
	for id := range l.words {
		b.WriteString(l.words[id].word)
	}
	all, at := b.String(), 0
	for id := range l.words {
		w := &l.words[id].word
		end := at + len(*w)
		*w, at = all[at:end], end
	}
}

// A slot holds the number of a word. Its hash spares most other words a look.
type slot struct {
	hash uint16 // its upper half
	id   uint16
}

// number gives the number of a word; 0 if the lexicon does not hold it.
func (l *lexicon) number(w string) int32 { return l.look(w, hashOf(w)) }

// look is number with the word's hash.
func (l *lexicon) look(w string, hash uint32) int32 {
	last := uint32(len(l.slots) - 1)
	for i := hash & last; ; i = (i + 1) & last {
		if s := l.slots[i]; s.id == 0 || s.hash == uint16(hash>>16) && l.words[s.id].word == w {
			return int32(s.id)
		}
	}
}

// fnvBasis is the hash of no letters.
const fnvBasis = 2166136261

// hashOf is FNV-1a, 32 bits.
func hashOf(w string) uint32 {
	h := uint32(fnvBasis)
	for i := range len(w) {
		h = hashed(h, w[i])
	}
	return h
}

// hashed takes one more letter into a hash.
func hashed(hash uint32, letter byte) uint32 { return (hash ^ uint32(letter)) * 16777619 }
