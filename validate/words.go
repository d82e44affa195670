package validate

import "strings"

// A phraseBook finds the longest known phrase at a place in a text. It is
// built once and then only read.
type phraseBook struct {
	words    map[string]int32 // the number, from 1, of each word that occurs in a phrase
	opening  []int32          // by the number of a word, the branch of phrases that begin with it; 0 for none
	branches []branch         // the first stands for none
}

// A branch holds the phrases that begin with the same words.
type branch struct {
	meaning meaning // of those words, if ends
	ends    bool    // they are a phrase
	next    []step
}

// A step leads to a branch by one more word.
type step struct{ word, to int32 }

// A meaning is what a phrase stands for.
type meaning struct {
	kind    ItemKind
	variety string // cider, pickling, powdered
	produce int    // number of the produce, from 1; 0 for none
}

func newPhraseBook() *phraseBook {
	return &phraseBook{words: map[string]int32{}, opening: make([]int32, 1), branches: make([]branch, 1)}
}

// add takes in a phrase and the plural of its last word; a phrase that ends
// in "=" has no plural. It reports whether the phrase is new: one that is
// known keeps its first meaning.
func (b *phraseBook) add(phrase string, m meaning) bool {
	phrase, alone := strings.CutSuffix(phrase, "=")
	words := strings.Fields(phrase)
	if !b.end(words, m) {
		return false
	}
	if !alone {
		last := len(words) - 1
		words[last] = plural(words[last])
		b.end(words, m)
	}
	return true
}

// end gives words a meaning, unless they have one.
func (b *phraseBook) end(words []string, m meaning) bool {
	br := &b.branches[b.path(words)]
	if br.ends {
		return false
	}
	br.meaning, br.ends = m, true
	return true
}

// path makes the branches of a phrase and gives the last.
func (b *phraseBook) path(words []string) int32 {
	at := int32(0)
	for _, w := range words {
		n, ok := b.words[w]
		if !ok {
			n = int32(len(b.words) + 1)
			b.words[w] = n
			b.opening = append(b.opening, 0)
		}
		to := b.after(at, n)
		if to == 0 {
			to = b.grow(at, n)
		}
		at = to
	}
	return at
}

// grow adds a branch behind another.
func (b *phraseBook) grow(at, word int32) int32 {
	to := int32(len(b.branches))
	b.branches = append(b.branches, branch{})
	if at == 0 {
		b.opening[word] = to
	} else {
		b.branches[at].next = append(b.branches[at].next, step{word, to})
	}
	return to
}

// after gives the branch that a word leads to; 0 if there is none.
func (b *phraseBook) after(at, word int32) int32 {
	if at == 0 {
		return b.opening[word]
	}
	for _, s := range b.branches[at].next {
		if s.word == word {
			return s.to
		}
	}
	return 0
}

// longest gives the meaning of the longest phrase that begins a text, and how
// many of its words it takes; 0 if there is none.
func (b *phraseBook) longest(text []textWord) (m meaning, taken int) {
	at := int32(0)
	for i, w := range text {
		if at = b.after(at, w.number); at == 0 {
			break
		}
		if br := &b.branches[at]; br.ends {
			m, taken = br.meaning, i+1
		}
	}
	return m, taken
}

// head gives the meaning of what a text speaks of: the last phrase before it
// turns to something else, as peppers in "finely chopped red bell peppers, in
// strips". A word that only names the kind once more says nothing new, as the
// leaves of "mint leaves".
func (b *phraseBook) head(text []textWord) (m meaning, ok bool) {
	for i := 0; i < len(text); {
		found, taken := b.longest(text[i:])
		switch {
		case taken > 0:
			if !ok || found.kind != m.kind || found.produce > 0 {
				m, ok = found, true
			}
			i += taken
		case text[i].turns && ok:
			return m, true
		default:
			i++
		}
	}
	return m, ok
}

// holds reports whether a phrase of that kind stands anywhere in a text.
func (b *phraseBook) holds(text []textWord, kind ItemKind) bool {
	for i := range text {
		if m, taken := b.longest(text[i:]); taken > 0 && m.kind == kind {
			return true
		}
	}
	return false
}

// A textWord is a word of a text, or a mark of punctuation.
type textWord struct {
	number int32 // of the book; 0 if the book does not know it
	turns  bool  // after it the text speaks of something else
}

// isTurning reports whether a text speaks of something else after a word.
func isTurning(w string) bool {
	switch w {
	case "and", "as", "for", "from", "in", "into", "or", "plus", "to", "until", "with", "without":
		return true
	}
	return false
}

// cut splits a text into words and appends them to list.
func (b *phraseBook) cut(text string, list []textWord) []textWord {
	text = plain(text)
	start := 0
	for i := 0; i <= len(text); i++ {
		if i < len(text) && 'a' <= text[i] && text[i] <= 'z' {
			continue
		}
		if start < i {
			w := text[start:i]
			list = append(list, textWord{b.words[w], isTurning(w)})
		}
		start = i + 1
		if i < len(text) && strings.IndexByte(",;:(/", text[i]) >= 0 {
			list = append(list, textWord{turns: true})
		}
	}
	return list
}
