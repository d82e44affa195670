package validate

import (
	"slices"
	"strings"
)

// A phrase is a way of saying something, as words that follow one another. It
// is written in a small notation:
//
//	turn~      a word in all its forms: turn, turns, turning, turned
//	turn~|flip~  either
//	@jar       any word of a family
//	slow_cooker  words that belong together as one
//	#          a number
//	a?         that may be missing
//	..         up to 4 words, whatever they are
//	...        up to 9
//	a & b & c  in any order, with up to 9 words between them
//
// Words of a phrase stand in one clause: nothing but a comma may part them, or a
// colon in a long gap. A phrase that begins with "maybe " is not certain by itself.
type phrase struct {
	owner    int32
	maybe    bool
	denies   bool // one of its own words is a denial
	elements []element
}

// An element is one word of a phrase, or one of several.
type element struct {
	text     string // as it is written
	families families
	ids      []int32
	runs     [][]int32 // several words that stand for one
	number   bool
	optional bool
	gap      int   // how many words may stand before it
	opens    sieve // of the numbers of the words that it may begin with, by their last eight bits
}

func (l *lexicon) element(w string) (e element) {
	w, e.optional = strings.CutSuffix(w, "?")
	e.text = w
	for alt := range strings.SplitSeq(w, "|") {
		switch {
		case alt == "#":
			e.number = true
		case alt[0] == '@':
			e.families |= 1 << familyNamed(alt[1:])
		case strings.Contains(alt, "_"):
			e.runs = append(e.runs, l.runs(strings.Split(alt, "_"))...)
		default:
			for _, form := range variants(alt) {
				e.ids = append(e.ids, l.id(form))
			}
		}
	}
	return e
}

const (
	shortGap = 4
	longGap  = 9
)

// addPhrases compiles a phrase, or every order of one that has no order.
func (l *lexicon) addPhrases(text string, owner int32) {
	parts := strings.Split(text, " & ")
	for i := range parts {
		parts[i] = strings.TrimSpace(parts[i])
	}
	orders(parts, func(order []string) { l.addPhrase(strings.Join(order, " ... "), owner) })
}

// orders calls do with every order of a few parts.
func orders(parts []string, do func([]string)) {
	if len(parts) == 1 {
		do(parts)
		return
	}
	for i := range parts {
		rest := slices.Concat(parts[:i], parts[i+1:])
		orders(rest, func(order []string) { do(slices.Concat(parts[i:i+1], order)) })
	}
}

// addPhrase compiles a phrase.
func (l *lexicon) addPhrase(text string, owner int32) {
	p := phrase{owner: owner}
	text, p.maybe = strings.CutPrefix(strings.TrimSpace(text), "maybe ")
	gap := 0
	for _, w := range strings.Fields(text) {
		switch w {
		case "..":
			gap = shortGap
			continue
		case "...":
			gap = longGap
			continue
		}
		e := l.element(w)
		e.gap, gap = gap, 0
		if n := len(p.elements); n > 0 && p.elements[n-1].optional {
			e.gap = max(e.gap, p.elements[n-1].gap) // where that one is missing
		}
		p.denies = p.denies || isDenial(w) || strings.Contains(w, "leave~") && strings.Contains(text, " out")
		p.elements = append(p.elements, e)
	}
	if len(p.elements) == 0 {
		return
	}
	if p.elements[0].optional || p.elements[0].number {
		panic("a phrase begins with a word that must be there: " + text)
	}
	l.phrases = append(l.phrases, p)
}

// isDenial reports whether an element of a phrase is a word of denial.
func isDenial(w string) bool {
	for alt := range strings.SplitSeq(strings.TrimSuffix(w, "?"), "|") {
		switch alt {
		case "no", "not", "never", "without", "don't", "can't", "cannot", "doesn't", "won't", "nothing", "rather_than", "instead_of", "do_not", "skip~", "no_need", "need_not", "needn't", "omit~", "forgo", "lacking", "lack":
			return true
		}
	}
	return false
}

// runs gives every way of writing several words: slow cooker, slow cookers.
func (l *lexicon) runs(words []string) [][]int32 {
	all := [][]int32{nil}
	for _, w := range words {
		var longer [][]int32
		for _, run := range all {
			for _, form := range variants(w) {
				longer = append(longer, append(run[:len(run):len(run)], l.id(form)))
			}
		}
		all = longer
	}
	return all
}

// opening gives the words that an element may begin with.
func (l *lexicon) opening(e element) map[int32]bool {
	ids := map[int32]bool{}
	for _, id := range e.ids {
		ids[id] = true
	}
	for _, run := range e.runs {
		ids[run[0]] = true
	}
	if e.families == 0 {
		return ids
	}
	for id := range l.words {
		if l.words[id].families&e.families != 0 {
			ids[int32(id)] = true
		}
	}
	return ids
}
