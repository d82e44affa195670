package validate

// shelve puts the words of a lexicon where number finds them: at their hash, or
// at the next place that is free.
func (l *lexicon) shelve() {
	size := 1
	for size < 4*len(l.words) {
		size *= 2
	}
	l.slots = make([]slot, size)
	for id, w := range l.words[1:] {
		hash := hashOf(w)
		i := hash & uint32(size-1)
		for l.slots[i].id != 0 {
			i = (i + 1) & uint32(size-1)
		}
		l.slots[i] = slot{hash, int32(id + 1)}
	}
}

// A slot holds the number of a word. Its hash spares most other words a look.
type slot struct {
	hash uint32
	id   int32
}

// number gives the number of a word; 0 if the lexicon does not hold it.
func (l *lexicon) number(w string) int32 {
	hash, last := hashOf(w), uint32(len(l.slots)-1)
	for i := hash & last; ; i = (i + 1) & last {
		if s := l.slots[i]; s.id == 0 || s.hash == hash && l.words[s.id] == w {
			return s.id
		}
	}
}

// hashOf is FNV-1a, 32 bits.
func hashOf(w string) uint32 {
	h := uint32(2166136261)
	for i := range len(w) {
		h = (h ^ uint32(w[i])) * 16777619
	}
	return h
}
