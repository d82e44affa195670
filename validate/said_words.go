package validate

import "slices"

// saidWords are words that were said, in the singular.
type saidWords struct {
	lex   *lexicon
	known bitset   // the numbers of those that the lexicon knows
	rare  []string // the others, plain
}

func newSaidWords(l *lexicon) saidWords {
	return saidWords{lex: l, known: make(bitset, len(l.words)/64+1)}
}

// take notes the words of a sentence; numbers are none.
func (w *saidWords) take(s *sentence) {
	for i := range s.len() {
		switch t := s.at(i); {
		case t.simple && t.id != 0:
			w.known.add(int(w.lex.words[t.id].singular))
		case t.simple:
			w.addUnknown(s.word(i))
		case !t.number().set():
			w.add(s.word(i))
		}
	}
}

// addUnknown notes a plain word that the lexicon does not know.
func (w *saidWords) addUnknown(word string) {
	if one := singular(word); one != word {
		w.note(one)
	} else {
		w.rare = append(w.rare, word)
	}
}

// add notes a word.
func (w *saidWords) add(word string) { w.note(singular(plain(word))) }

// note is add for a plain word in the singular.
func (w *saidWords) note(word string) {
	if id := w.lex.number(word); id != 0 {
		w.known.add(int(id))
	} else {
		w.rare = append(w.rare, word)
	}
}

// have reports whether a word was said. It is plain and in the singular.
func (w *saidWords) have(word string) bool {
	if id := w.lex.number(word); id != 0 {
		return w.known.has(int(id))
	}
	return slices.Contains(w.rare, word)
}
