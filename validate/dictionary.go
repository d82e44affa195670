package validate

// shelve puts the words of a lexicon where number finds them: at their hash, or
// at the next place that is free.
func (l *lexicon) shelve() {
	size := 1
	for size < 4*len(l.words) {
		size *= 2
	}
	l.slots = make([]int32, size)
	for id, w := range l.words[1:] {
		i := hashOf(w) & uint32(size-1)
		for l.slots[i] != 0 {
			i = (i + 1) & uint32(size-1)
		}
		l.slots[i] = int32(id + 1)
	}
}

// number gives the number of a word; 0 if the lexicon does not hold it.
func (l *lexicon) number(w string) int32 {
	last := uint32(len(l.slots) - 1)
	for i := hashOf(w) & last; ; i = (i + 1) & last {
		if id := l.slots[i]; id == 0 || l.words[id] == w {
			return id
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
