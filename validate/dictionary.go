package validate

import (
	"math"
	"math/bits"
	"slices"
	"strings"
)

// shelve puts the words of a lexicon where number finds them: at their hash, or
// at the next place that is free.
func (l *lexicon) shelve() {
	if len(l.words) > math.MaxUint16 {
		panic("more words than a slot can number")
	}
	if slices.ContainsFunc(l.words, func(e entry) bool { return len(e.word) > longest }) {
		panic("a word that is longer than a spelling")
	}
	size := 1
	for size < 2*len(l.words) {
		size *= 2
	}
	l.slots = make([]slot, size)
	l.pack()
	for id := 1; id < len(l.words); id++ {
		w := &l.words[id]
		w.spelling, w.bit = spell(w.word), sieveBit(w.word)
		hash := w.spelling.hash()
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
func (l *lexicon) number(w string) int32 { return l.look(spell(w)) }

// look is number by the word's spelling.
func (l *lexicon) look(p spelling) int32 {
	hash, last := p.hash(), uint32(len(l.slots)-1)
	for i := hash & last; ; i = (i + 1) & last {
		s := l.slots[i]
		if s.id == 0 || s.hash == uint16(hash>>16) && l.words[s.id].spelling == p {
			return int32(s.id)
		}
	}
}

// A spelling is the letters of a word as two numbers, so that words are compared at
// once. A letter that is missing is 0.
type spelling struct{ head, tail uint64 }

// longest is how many letters a word of the lexicon has at most.
const longest = 16

// spell spells a word. Every longer one than longest has the same spelling, which
// is none of the lexicon's.
func spell(w string) (p spelling) {
	if len(w) > longest {
		return spelling{math.MaxUint64, math.MaxUint64}
	}
	for i := len(w) - 1; i >= 8; i-- {
		p.tail = p.tail<<8 | uint64(w[i])
	}
	for i := min(len(w), 8) - 1; i >= 0; i-- {
		p.head = p.head<<8 | uint64(w[i])
	}
	return p
}

// spellSmall spells a word of ASCII letters in small letters.
func spellSmall(w string) spelling {
	p := spell(w)
	return spelling{p.head | inSmall&letters(len(w)), p.tail | inSmall&letters(len(w)-8)}
}

// inSmall is what eight small letters have and capitals have not.
const inSmall = 0x2020202020202020

// spellShort spells the ASCII letters that begin at a place in small letters, eight
// at most, and gives how many there are.
func spellShort(text string, at int) (p spelling, n int) {
	if at+8 > len(text) {
		for n < 8 && at+n < len(text) && isLetterByte(text[at+n]) {
			n++
		}
		return spellSmall(text[at : at+n]), n
	}
	t := text[at : at+8] // read in one go
	eight := uint64(t[0]) | uint64(t[1])<<8 | uint64(t[2])<<16 | uint64(t[3])<<24 |
		uint64(t[4])<<32 | uint64(t[5])<<40 | uint64(t[6])<<48 | uint64(t[7])<<56
	small := eight | inSmall
	n = bits.TrailingZeros64(^(lettersBetween(small, 'a', 'z')&^eight)&highBits) / 8
	return spelling{head: small & letters(n)}, n
}

// highBits is the highest bit of each of eight letters.
const highBits = 0x8080808080808080

// lettersBetween sets the highest bit of those of eight letters that lie between
// two, as far as the other bits go.
func lettersBetween(eight, from, to uint64) uint64 {
	const ones = 0x0101010101010101
	low := eight &^ highBits
	return (low + (0x80-from)*ones) &^ (low + (0x7f-to)*ones)
}

// letters has every bit of the first n letters of a number, of eight at most.
func letters(n int) uint64 { return 1<<(8*uint(min(max(n, 0), 8))) - 1 }

// hash mixes the letters: as in Fibonacci hashing, by a factor near the golden
// ratio.
func (p spelling) hash() uint32 {
	const golden = 0x9e3779b97f4a7c15
	return uint32((p.head ^ bits.RotateLeft64(p.tail, 29)) * golden >> 32)
}
