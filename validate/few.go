package validate

import (
	"slices"
	"strings"
)

// Rules ask for words in lists that are parted by spaces: "boil boils boiling".
// Lists that are asked of every sentence are taken apart once.

// A few is a list that is taken apart.
type few struct {
	words []string
	bits  []uint8 // of the words, in a sieve
	sieve sieve
}

func fewOf(list string) (f few) {
	f.words = strings.Fields(list)
	for _, w := range f.words {
		f.bits = append(f.bits, sieveBit(w))
		f.sieve.add(sieveBit(w))
	}
	return f
}

// isOne reports whether a word is one of a few.
func (s *sentence) isOne(i int, f *few) bool {
	return 0 <= i && i < s.len() && f.sieve.has(s.at(i).bit) && s.isIn(i, f)
}

func (s *sentence) isIn(i int, f *few) bool {
	return slices.Contains(f.words, s.word(i))
}

// holds reports whether one of a few words stands in the sentence.
func (s *sentence) holds(f *few) bool { return s.holdsIn(f, 0, s.len()) }

// holdsIn reports whether one of them stands from a place to before another.
func (s *sentence) holdsIn(f *few, from, to int) bool {
	if !s.marks.meets(&f.sieve) {
		return false
	}
	from, to = max(from, 0), min(to, s.len())
	if to-from < len(f.words) {
		for i := from; i < to; i++ {
			if s.isOne(i, f) {
				return true
			}
		}
		return false
	}
	for i, b := range f.bits {
		if s.marks.has(b) && s.stands(f.words[i], b, from, to) {
			return true
		}
	}
	return false
}

// isAny reports whether a word is one of a few, which are parted by spaces.
func (s *sentence) isAny(i int, few string) bool {
	if i < 0 || i >= s.len() {
		return false
	}
	w := s.word(i)
	for at := 0; at < len(few); at++ {
		if end := at + len(w); few[at] == w[0] && end <= len(few) && few[at:end] == w && (end == len(few) || few[end] == ' ') {
			return true
		}
		for at < len(few) && few[at] != ' ' {
			at++
		}
	}
	return false
}

// anyOf reports whether one of a few words stands in the sentence.
func (s *sentence) anyOf(few string) bool { return s.anyIn(few, 0, s.len()) }

// anyIn reports whether one of a few words stands from a place to before
// another.
func (s *sentence) anyIn(few string, from, to int) bool {
	from, to = max(from, 0), min(to, s.len())
	if from >= to {
		return false
	}
	begin := 0
	for i := 0; i <= len(few); i++ {
		if i < len(few) && few[i] != ' ' {
			continue
		}
		if w := few[begin:i]; w != "" {
			if b := sieveBit(w); s.marks.has(b) && s.stands(w, b, from, to) {
				return true
			}
		}
		begin = i + 1
	}
	return false
}

// stands reports whether a word, which has a bit in sieves, stands from a place to
// before another.
func (s *sentence) stands(w string, bit uint8, from, to int) bool {
	for i := from; i < to; i++ {
		if t := s.at(i); t.bit == bit && s.word(i) == w {
			return true
		}
	}
	return false
}

// A sieve tells of most words that are not in a sentence that they are not:
// their bit is not set.
type sieve [4]uint64

func (v *sieve) add(b uint8) { v[b/64] |= 1 << (b % 64) }

// meets reports whether two sieves have a bit in common.
func (v *sieve) meets(w *sieve) bool {
	return v[0]&w[0]|v[1]&w[1]|v[2]&w[2]|v[3]&w[3] != 0
}

func (v *sieve) has(b uint8) bool { return v[b/64]&(1<<(b%64)) != 0 }

// sieveBit gives the bit of a word of one letter at least, by its ends and its
// length.
func sieveBit(w string) uint8 { return w[0]*37 + w[len(w)-1]*11 + uint8(len(w))*67 }
