package content

import "strings"

// numerals are the numbers that recipes write as words.
var numerals = map[string]ratio{
	"a": {1, 1}, "an": {1, 1}, "one": {1, 1}, "two": {2, 1}, "three": {3, 1}, "four": {4, 1},
	"five": {5, 1}, "six": {6, 1}, "seven": {7, 1}, "eight": {8, 1}, "nine": {9, 1}, "ten": {10, 1},
	"eleven": {11, 1}, "twelve": {12, 1}, "thirteen": {13, 1}, "fourteen": {14, 1}, "fifteen": {15, 1},
	"sixteen": {16, 1}, "eighteen": {18, 1}, "twenty": {20, 1},
	"half": {1, 2}, "quarter": {1, 4}, "dozen": {12, 1},
}

// partNames are the parts that are counted in words: two thirds.
var partNames = map[string]ratio{
	"half": {1, 2}, "third": {1, 3}, "thirds": {1, 3}, "quarter": {1, 4}, "quarters": {1, 4},
	"fourth": {1, 4}, "fourths": {1, 4}, "eighth": {1, 8}, "eighths": {1, 8},
}

// notOne are the words before which "a" does not mean one.
var notOne = []string{"few", "little", "couple", "lot", "bit", "touch", "small amount", "good amount", "large amount"}

// cutCount reads a number in digits or in words: 2, two, half a, two-thirds,
// one and a half, a dozen.
func cutCount(s string) (n ratio, rest string, err error) {
	if s != "" && isLetter(s[0]) {
		n, rest, err = cutNumeral(s)
	} else {
		n, rest, err = cutNumber(s)
	}
	if err != nil {
		return ratio{}, s, err
	}
	if n.num < n.den {
		rest = cutOfA(rest)
	}
	n, rest = cutAndHalf(n, rest)
	const mostDozens = 1_000_000 // more than anybody counts, and few enough to multiply
	if after, ok := cutWord(afterHyphen(rest), "dozen"); ok && n.num <= mostDozens {
		return ratio{n.num * 12, n.den}, after, nil
	}
	return n, rest, nil
}

// cutNumeral reads a number in words.
func cutNumeral(s string) (n ratio, rest string, err error) {
	n, rest = cutNamed(s, numerals)
	if n.den == 0 || !standsAlone(rest) {
		return ratio{}, s, errNoNumber
	}
	if phrase, _ := cutAnyWord(skipSpace(rest), notOne); phrase != "" {
		return ratio{}, s, errNoNumber
	}
	if part, after := cutNamed(afterHyphen(rest), partNames); n.den == 1 && part.den != 0 && standsAlone(after) {
		n, rest = ratio{n.num * part.num, part.den}, after
	}
	return n, rest, nil
}

// cutNamed reads the word at the start of s if it is in the table.
func cutNamed(s string, table map[string]ratio) (n ratio, rest string) {
	word := leadingLetters(s)
	var lowered [10]byte
	n = table[string(appendLower(lowered[:0], word))]
	if n.den == 0 {
		return n, s
	}
	return n, s[len(word):]
}

// standsAlone reports whether a number may end before rest: what a hyphen ties
// to it is a unit or a part of one, as in one-inch and two-thirds, unlike
// half-and-half.
func standsAlone(rest string) bool {
	if rest == "" || halfAndHalf(rest) {
		return false
	}
	if !startsWord(rest) {
		return true
	}
	m, _, _ := cutUnit(rest, kitchenDim)
	part, _ := cutNamed(afterHyphen(rest), partNames)
	_, dozen := cutWord(afterHyphen(rest), "dozen")
	return m != nil || part.den != 0 || dozen
}

func halfAndHalf(rest string) bool {
	rest = skipSpace(rest)
	return strings.HasPrefix(rest, "and half") || strings.HasPrefix(rest, "& half")
}

// afterHyphen skips the spaces or the hyphen between two words.
func afterHyphen(s string) string {
	if rest, ok := strings.CutPrefix(s, "-"); ok {
		return rest
	}
	return skipSpace(s)
}

// cutOfA cuts what stands between a part and its whole: half of a lemon.
func cutOfA(s string) string {
	after, of := cutWord(skipSpace(s), "of")
	if !of {
		after = skipSpace(s)
	}
	for _, article := range [...]string{"a", "an", "one"} {
		if rest, ok := cutWord(after, article); ok && (of || article != "one") {
			return rest
		}
	}
	return s
}

// cutAndHalf reads the "and a half" that adds to a whole number.
func cutAndHalf(n ratio, s string) (ratio, string) {
	rest, ok := cutWord(skipSpace(s), "and")
	if !ok || n.den != 1 {
		return n, s
	}
	for _, article := range [...]string{"a", "one"} {
		if after, ok := cutWord(rest, article); ok {
			rest = after
		}
	}
	part, after := cutNamed(afterHyphen(rest), partNames)
	if part.den == 0 || startsWord(after) {
		return n, s
	}
	return ratio{n.num*part.den + part.num, part.den}, after
}
