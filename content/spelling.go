package content

import (
	"cmp"
	"math/big"
	"strings"
	"unicode/utf8"
)

// A knownUnit is what is known of a unit.
type knownUnit struct {
	unit   Unit
	dim    Dimension
	factor *big.Rat // how many of the base unit one is; nil for what is counted
	many   string   // the plural as it is printed
	form   form
}

// A phrase is the spelling of a unit in several words.
type phrase struct {
	rest string // the words after the first
	unit *knownUnit
}

// A known spelling leads to one unit.
type known struct {
	spelling string
	unit     *knownUnit
}

// A lexicon leads from spellings to units.
type lexicon struct {
	words   map[string][]*knownUnit // the likeliest first
	phrases map[string][]phrase     // by their first word
	known   []known                 // all spellings of a word that a wrong one can be compared with
}

var (
	unitTable = tabulate()
	spelt     = newLexicon()
)

// tabulate gives what is known of each unit, from the tables.
func tabulate() map[Unit]*knownUnit {
	all := make(map[Unit]*knownUnit, len(units)+len(counted))
	for _, row := range units {
		factor, ok := new(big.Rat).SetString(row.factor)
		if !ok {
			panic("the factor of " + string(row.unit) + " is no number")
		}
		all[row.unit] = &knownUnit{row.unit, row.dim, factor, row.many, loose}
	}
	for _, row := range counted {
		all[Unit(row.one)] = &knownUnit{Unit(row.one), Count, nil, row.many, row.form}
	}
	return all
}

func newLexicon() *lexicon {
	l := &lexicon{words: make(map[string][]*knownUnit, 300), phrases: make(map[string][]phrase, 20)}
	for _, row := range units {
		for s := range strings.SplitSeq(row.spellings, ", ") {
			l.add(s, unitTable[row.unit])
		}
	}
	for _, row := range counted {
		for s := range strings.SplitSeq(row.one+", "+row.many+", "+row.also, ", ") {
			l.add(s, unitTable[Unit(row.one)])
		}
	}
	return l
}

func (l *lexicon) add(spelling string, m *knownUnit) {
	if spelling == "" {
		return
	}
	l.known = append(l.known, known{spelling, m})
	if first, rest, ok := strings.Cut(spelling, " "); ok {
		l.phrases[first] = append(l.phrases[first], phrase{rest, m})
		return
	}
	l.words[spelling] = append(l.words[spelling], m)
}

// dims is a set of dimensions: those whose units are understood in a place.
type dims uint16

func dimsOf(list ...Dimension) (set dims) {
	for _, d := range list {
		set |= 1 << d
	}
	return set
}

func (d dims) has(dim Dimension) bool { return d&(1<<dim) != 0 }

var (
	anyDim     = ^dims(0)
	kitchenDim = dimsOf(Count, LengthDim, WeightDim, VolumeDim)
)

// cutUnit cuts the unit at the start of s, with the full stop of its
// abbreviation. Joined tells that a hyphen ties it to its number, as in 14-oz.
// It gives nil if no unit of the dimensions is there.
func cutUnit(s string, in dims) (m *knownUnit, rest string, joined bool) {
	word := skipSpace(s)
	if r, size := utf8.DecodeRuneInString(word); isHyphen(r) && len(word) == len(s) {
		word, joined = word[size:], true
	}
	first := firstSpelling(word)
	rest = word[len(first):]
	if first == "" {
		return nil, s, false
	}
	if m, rest := spelt.cutPhrase(first, rest, in); m != nil {
		return m, rest, joined
	}
	if m = spelt.find(first, in); m == nil || goesOn(first, rest) {
		return nil, s, false
	}
	return m, strings.TrimPrefix(rest, "."), joined
}

// firstSpelling gives the one sign that stands for a unit, or the letters at
// the start of s.
func firstSpelling(s string) string {
	r, size := utf8.DecodeRuneInString(s)
	switch r {
	case '"', '″', '”', '“', '#', '%', '°', 'º', '˚', '℉', '℃':
		return s[:size]
	}
	return leadingLetters(s)
}

// goesOn reports whether what follows a spelling makes another word of it:
// 8-oz-can, or the #10 of a size of tin.
func goesOn(spelling, rest string) bool {
	if isLetter(spelling[0]) {
		return startsWord(rest)
	}
	return spelling == "#" && rest != "" && isDigit(rest[0])
}

// find gives the unit of a word in any case.
func (l *lexicon) find(word string, in dims) *knownUnit {
	for _, m := range l.words[word] {
		if in.has(m.dim) {
			return m
		}
	}
	var lowered [24]byte
	for _, m := range l.words[string(appendLower(lowered[:0], word))] {
		if in.has(m.dim) {
			return m
		}
	}
	return nil
}

// nearest gives the unit that a misspelt word most likely means, or an empty
// Unit if none is like it. The word must not be empty.
func (l *lexicon) nearest(word string, in dims) Unit {
	var alike, others []string // by the first letter, which is seldom wrong
	for _, k := range l.known {
		switch {
		case len(k.spelling) < 3 || !in.has(k.unit.dim):
		case k.spelling[0] == lower(word[0]):
			alike = append(alike, k.spelling)
		default:
			others = append(others, k.spelling)
		}
	}
	if m := l.find(cmp.Or(nearest(word, alike), nearest(word, others)), in); m != nil {
		return m.unit
	}
	return ""
}

// slip gives the unit that a word with a slip of the hand was meant to be, or
// nil.
func (l *lexicon) slip(word string, in dims) *knownUnit {
	if word == "" {
		return nil
	}
	first := lower(word[0])
	for _, k := range l.known {
		if k.spelling[0] == first && in.has(k.unit.dim) && isSlip(word, k.spelling) {
			return k.unit
		}
	}
	return nil
}

// cutPhrase cuts the unit that the first word and those after it make.
func (l *lexicon) cutPhrase(first, after string, in dims) (m *knownUnit, rest string) {
	if first == "º" || first == "˚" { // signs that are taken for that of a degree
		first = "°"
	}
	var lowered [24]byte
	for _, p := range l.phrases[string(appendLower(lowered[:0], first))] {
		if !in.has(p.unit.dim) {
			continue
		}
		if rest, ok := cutWords(skipSpace(strings.TrimPrefix(after, ".")), p.rest); ok {
			return p.unit, rest
		}
	}
	return nil, after
}
