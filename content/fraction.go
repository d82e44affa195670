package content

import (
	"strings"
	"unicode/utf8"
)

// afterWhole skips what may stand between a whole number and its fraction:
// nothing, spaces, "and", or a hyphen without spaces.
func afterWhole(s string) string {
	if strings.HasPrefix(s, "-") {
		return s[1:]
	}
	s = skipSpace(s)
	if rest, ok := cutWord(s, "and"); ok {
		return rest
	}
	return s
}

// cutFraction reads 3/4 or ¾. It gives errNoNumber if there is none at the
// start of s.
func cutFraction(s string) (f ratio, rest string, err error) {
	if r, size := utf8.DecodeRuneInString(s); vulgar(r).den != 0 {
		return vulgar(r), s[size:], nil
	}
	top := leadingDigits(s)
	rest, ok := cutStroke(s[len(top):])
	below := leadingDigits(rest)
	switch {
	case top == "" || !ok || below == "":
		return ratio{}, s, errNoNumber
	case len(top) > 3 || len(below) > 3:
		return ratio{}, s, errOddFraction
	}
	f = ratio{wholeOf(top), wholeOf(below)}
	switch {
	case f.den == 0:
		return ratio{}, s, errByZero
	case top[0] == '0' || below[0] == '0' || f.den > maxDenominator:
		return ratio{}, s, errOddFraction
	case f.num >= f.den:
		return ratio{}, s, errFraction
	}
	return f, rest[len(below):], nil
}

// vulgar gives the value of a fraction that is one sign, or a zero ratio.
func vulgar(r rune) ratio {
	switch r {
	case '½':
		return ratio{1, 2}
	case '⅓':
		return ratio{1, 3}
	case '⅔':
		return ratio{2, 3}
	case '¼':
		return ratio{1, 4}
	case '¾':
		return ratio{3, 4}
	case '⅕':
		return ratio{1, 5}
	case '⅖':
		return ratio{2, 5}
	case '⅗':
		return ratio{3, 5}
	case '⅘':
		return ratio{4, 5}
	case '⅙':
		return ratio{1, 6}
	case '⅚':
		return ratio{5, 6}
	case '⅛':
		return ratio{1, 8}
	case '⅜':
		return ratio{3, 8}
	case '⅝':
		return ratio{5, 8}
	case '⅞':
		return ratio{7, 8}
	}
	return ratio{}
}

// cutStroke cuts the stroke of a fraction.
func cutStroke(s string) (rest string, ok bool) {
	for _, stroke := range [...]string{"/", "⁄", "∕"} {
		if rest, ok := strings.CutPrefix(s, stroke); ok {
			return rest, true
		}
	}
	return s, false
}
