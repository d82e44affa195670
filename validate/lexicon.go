package validate

import (
	"fmt"
	"strings"
	"sync"

	"stillroom/content"
)

// A lexicon knows the words that the rules on texts look for, by number, and
// the phrases that are made of them. It is built once and then only read.
type lexicon struct {
	ids       map[string]int32
	words     []entry // by their numbers
	slots     []slot  // words by their hash, for number
	phrases   []phrase
	openers   []opener       // of one word after another
	anchors   []uint16       // of one word after another
	practices int32          // how many it knows the phrases of
	units     []content.Unit // the first is none
}

// An entry is what a lexicon knows of a word. Reading a text looks at all of it,
// so it fills one line of a processor's cache.
type entry struct {
	word     string
	spelling spelling
	families families
	openers  stretch // the phrases that it may open, in their order
	anchors  stretch // that it is of
	food     uint16  // its number in the kitchen's book; 0 if it has none
	singular uint16  // the number of its singular
	unit     uint8   // that the word names, among units; 0 for most
	bit      uint8   // in a sieve
	numeral  uint8   // 1 more than the number that it is; 0 for most
}

// A stretch is a part of a list.
type stretch struct{ from, to int32 }

// families is a set of families.
type families uint64

// is reports whether a word belongs to a family.
func (l *lexicon) is(id int32, f family) bool { return l.words[id].families&(1<<f) != 0 }

// learnt is the lexicon of all rules. Only what reads texts may speak of it:
// the checks of rules meet it through the sentences that they are given.
var learnt = sync.OnceValue(func() *lexicon { return newLexicon(Rules) })

func newLexicon(rules []*Rule) *lexicon {
	l := &lexicon{ids: map[string]int32{"": 0}, words: make([]entry, 1), units: []content.Unit{""}}
	for f, words := range familyWords {
		for _, w := range strings.Fields(words) {
			for _, form := range variants(w) {
				l.words[l.id(form)].families |= 1 << f
			}
		}
	}
	for kind, lines := range cuePhrases {
		for _, p := range split(lines) {
			l.addPhrase(p, int32(kind))
		}
	}
	for _, r := range rules {
		if r.Practice == nil {
			continue
		}
		owner := int32(len(cuePhrases)) + l.practices
		r.Practice.owner = owner
		l.practices++
		for _, p := range split(r.Practice.Phrases) {
			l.addPhrases(p, owner)
		}
	}
	l.learnUnits()
	l.learnNumerals()
	l.learnFoods(kitchen().book)
	l.learnSingulars()
	l.index()
	l.shelve()
	return l
}

// split gives the phrases of a list, one a line or parted by ";".
func split(lines string) []string {
	return strings.FieldsFunc(lines, func(r rune) bool { return r == '\n' || r == ';' })
}

// id gives the number of a word, a new one if it has none.
func (l *lexicon) id(word string) int32 {
	if n, ok := l.ids[word]; ok {
		return n
	}
	n := int32(len(l.words))
	l.ids[word] = n
	l.words = append(l.words, entry{word: word})
	return n
}

// learnFoods takes in the words that foods and other ingredients are named by.
func (l *lexicon) learnFoods(b *phraseBook) {
	for w, n := range b.words {
		id := l.id(w)
		l.words[id].food = uint16(n)
	}
}

// learnSingulars takes in the singular of every word.
func (l *lexicon) learnSingulars() {
	for id := 0; id < len(l.words); id++ {
		one := l.id(singular(l.words[id].word))
		l.words[id].singular = uint16(one)
	}
}

// variants gives the forms of a word that ends in "~", or the word alone.
func variants(w string) []string {
	if base, ok := strings.CutSuffix(w, "~"); ok {
		return forms(base)
	}
	return []string{w}
}

// familyNamed gives the family that "@name" speaks of.
func familyNamed(name string) family {
	for f, n := range familyNames {
		if n == name {
			return family(f)
		}
	}
	panic(fmt.Sprintf("no family of words is called %q", name))
}
