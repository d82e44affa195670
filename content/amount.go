package content

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// kitchen is how amounts are read in lines of ingredients.
var kitchen = grammar{in: kitchenDim, number: cutCount, words: true}

// Words that say how an amount is meant.
var (
	aboutWords = []string{
		"about", "approximately", "approx", "around", "roughly", "circa", "ca", "nearly", "almost",
		"at least", "up to", "just over", "just under",
	}
	heapedWords = []string{"heaped", "heaping", "scant", "generous", "rounded", "level", "good", "full"}
	sizeWords   = []string{"large", "medium", "small", "big", "thick", "thin", "whole"}
	packedWords = []string{
		"packed", "firmly packed", "lightly packed", "loosely packed", "tightly packed", "well packed",
		"heaped", "heaping", "scant", "level",
	}
)

// impliedOne are the units that mean one of them without a number: pinch salt.
var impliedOne = []Unit{"pinch", "dash", "handful", "splash", "bunch", "knob"}

// cutAmount reads the amount at the start of the line.
func (l *line) cutAmount() {
	whole := l.rest
	about, s := cutAbout(l.rest)
	l.in.Manner, l.rest = about, s
	l.cutManner(heapedWords)
	r, rest, err := kitchen.cut(l.rest)
	switch {
	case err == errNoNumber:
		if !l.cutImplied() && !l.cutPartOf(whole) {
			l.noAmount(whole)
		}
	case err != nil || r.High.Sign() == 0:
		l.cutUnread(whole)
	case r.unit == nil:
		l.takeCount(r, rest, whole)
	default:
		l.takeMeasured(r, rest, whole)
	}
}

// noAmount leaves the whole line to the item.
func (l *line) noAmount(whole string) {
	l.in.Manner = ""
	l.rest = whole
}

// cutManner reads words that say how the amount is meant.
func (l *line) cutManner(lists ...[]string) {
	l.rest = skipSpace(l.rest)
	for _, words := range lists {
		if word, rest := cutAnyWord(l.rest, words); word != "" {
			l.manner(word)
			l.rest = rest
		}
	}
}

// manner adds a word to the manner.
func (l *line) manner(word string) {
	if l.in.Manner != "" {
		word = l.in.Manner + " " + word
	}
	l.in.Manner = word
}

// takeCount takes a bare number, and the unit or the size that may stand
// behind other words.
func (l *line) takeCount(r reading, rest, whole string) {
	after := skipSpace(rest)
	glued := after != "" && !endsInSpace(whole[:len(whole)-len(after)])
	if m, _, _ := cutUnit(rest, ^kitchenDim); m != nil {
		l.noAmount(whole) // 5% vinegar, 110 °F water
		return
	}
	l.in.Amount, l.rest = r.Quantity, after
	if size, ok := cutTimes(after); ok {
		if !l.cutEach(size, true) {
			l.cutUnread(whole)
		}
		return
	}
	switch {
	case glued && after[0] != '(' && after[0] != '[':
		l.cutUnread(whole) // 7up, 1_0, 2-3-4
	case startsNumber(after) != errNoNumber:
		if !l.cutEach(after, false) {
			l.cutUnread(whole) // 1 500 g
		}
	case !l.cutBracketSize(after) && !l.cutLateUnit() && l.slipped():
		l.cutUnread(whole)
	default:
		l.cutSame()
	}
}

// cutLateUnit reads a unit behind words of manner: 1 heaped tsp, 2 large heads.
func (l *line) cutLateUnit() bool {
	manner, rest := l.in.Manner, l.rest
	l.cutManner(heapedWords, packedWords, sizeWords)
	m, after, joined := cutUnit(l.rest, kitchenDim)
	if m == nil || joined {
		l.in.Manner, l.rest = manner, rest
		return false
	}
	l.in.Amount.Unit, l.rest = m.unit, after
	return true
}

// slipped reports whether a misspelt unit of weight or volume and something
// more follow the number.
func (l *line) slipped() bool {
	word := leadingLetters(l.rest)
	return skipSpace(l.rest[len(word):]) != "" && isSlipOfMeasure(word)
}

// takeMeasured takes a number with its unit.
func (l *line) takeMeasured(r reading, rest, whole string) {
	if l.takeSized(r, rest, whole) {
		return
	}
	switch {
	case r.joined && r.unit.dim == Count:
		l.noAmount(whole) // 3-piece
		return
	case r.joined && r.unit.dim == LengthDim:
		l.in.Each, l.rest = r.Quantity, skipSpace(rest) // 1/4-inch cucumber slices
		return
	case r.joined && !isLetter(r.Text[0]), addsMore(rest):
		l.cutUnread(whole) // 5-lb chicken: how many?
		return
	}
	l.in.Amount, l.rest = r.Quantity, rest
	l.cutUpToTwo()
	l.cutSame()
	if addsMore(l.rest) {
		l.in.Same = nil
		l.cutUnread(whole)
	}
}

// addsMore reports whether the amount goes on in a way that cannot be counted:
// minus 1 tbsp, plus 100 g after 1 cup, a second dash.
func addsMore(s string) bool {
	s = skipSpace(s)
	if after, ok := cutTimes(s); ok && after != "" {
		return true
	}
	if r, size := utf8.DecodeRuneInString(s); isDash(r) || r == '+' {
		return startsNumber(skipSpace(s[size:])) == nil
	}
	word, rest := cutAnyWord(s, []string{"plus", "and", "minus", "less", "to"})
	return word != "" && startsNumber(rest) == nil
}

// cutUpToTwo reads what is said behind a single unit: a pinch or two, a cup
// and a half.
func (l *line) cutUpToTwo() {
	if compare(l.in.Amount.High, one) != 0 || l.in.Amount.IsRange() {
		return
	}
	if rest, ok := cutWords(skipSpace(l.rest), "or two"); ok {
		l.in.Amount.High, l.rest = ratio{2, 1}.rat(), rest
	}
	if n, rest := cutAndHalf(ratio{1, 1}, l.rest); n.den > 1 {
		l.in.Amount.Low, l.rest = n.rat(), rest
		l.in.Amount.High = l.in.Amount.Low
	}
}

// cutImplied reads a unit without a number that means one of it: a pinch is
// one, and so is the head of head of cabbage.
func (l *line) cutImplied() bool {
	m, rest, joined := cutUnit(l.rest, kitchenDim)
	if m == nil || joined || trimSpace(rest) == "" {
		return false
	}
	word := l.rest[:len(l.rest)-len(rest)]
	_, of := cutWord(skipSpace(rest), "of")
	singular := len(word) > 2 && (lower(lastByte(word)) != 's' || word == string(m.unit))
	switch {
	case of && singular, slices.Contains(impliedOne, m.unit) && singular, l.in.Manner != "":
		l.in.Amount = Quantity{Low: one, High: one, Unit: m.unit, Text: word}
		l.rest = rest
		l.cutSame()
		return true
	}
	return false
}

// cutPartOf reads an amount that stands behind a part of the thing: juice of 2
// lemons.
func (l *line) cutPartOf(whole string) bool {
	if l.before != "" {
		return false
	}
	for _, of := range [...]string{" of ", " from "} {
		before, after, ok := strings.Cut(whole[:itemEnd(whole)], of)
		if _, _, err := cutCount(after); !ok || err == errNoNumber {
			continue
		}
		l.before = before + strings.TrimRight(of, " ")
		l.in.Manner = ""
		l.rest = whole[len(before)+len(of):]
		l.cutAmount()
		return true
	}
	return false
}
