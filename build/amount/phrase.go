package amount

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"stillroom/content"
)

// numbers gives the places where a number begins.
func numbers(s string) []int {
	if !Numbered(s) {
		return nil
	}
	var all []int
	before := ' '
	for at, r := range s {
		if isNumber(r) && !isNumber(before) && !strings.ContainsRune(".,/-–⁄°", before) && !isLetter(before) {
			all = append(all, at)
		}
		if r != ' ' || !isNumber(before) { // 1 1/2 is one number
			before = r
		}
	}
	return all
}

const signs = "½¼¾⅓⅔⅛⅜⅝⅞" // of fractions

// Numbered reports whether a text has a digit or the sign of a fraction.
func Numbered(s string) bool {
	for i := range len(s) {
		if c := s[i]; '0' <= c && c <= '9' {
			return true
		} else if c >= utf8.RuneSelf {
			return strings.ContainsAny(s[i:], "0123456789"+signs)
		}
	}
	return false
}

func isNumber(r rune) bool {
	return '0' <= r && r <= '9' || r >= utf8.RuneSelf && strings.ContainsRune(signs, r)
}

func isLetter(r rune) bool { return 'a' <= r && r <= 'z' || 'A' <= r && r <= 'Z' || r >= utf8.RuneSelf }

// readAmount reads the amount that begins a text, with what follows it.
func readAmount(text string) (content.Ingredient, bool) {
	if end := strings.IndexAny(text, ",;:()"); end > 0 {
		text = text[:end]
	}
	in := content.ParseIngredient(text)
	ok := !in.Amount.IsZero() && in.Unread == "" && in.Each.IsZero() && measured(in.Amount.Unit) &&
		in.Amount.Unit.Dimension() != content.LengthDim && in.Amount.Text != "" && strings.HasPrefix(text, in.Amount.Text)
	return in, ok
}

// phraseWords gives the words behind an amount up to where the text turns to
// something else, in the singular and without articles.
func phraseWords(s string) []string {
	if end := strings.IndexAny(s, ",;:().!?&"); end >= 0 {
		s = s[:end]
	}
	var words []string
	for _, w := range nameWords(s) {
		if turns[w] {
			break
		}
		if !fillers[w] {
			words = append(words, w)
		}
	}
	return words
}

// nameWords gives the words of a name, in the singular. They are never none.
func nameWords(s string) []string {
	words := strings.FieldsFunc(strings.ToLower(s), func(c rune) bool { return !unicode.IsLetter(c) })
	for i := range words {
		words[i] = singular(words[i])
	}
	if len(words) == 0 {
		return []string{""}
	}
	return words
}

var turns = wordSet("and as at before for from if in into on onto or over so than that then to until when while with")

var fillers = wordSet("a an the of more hot cold warm this your")

func wordSet(s string) map[string]bool {
	set := map[string]bool{"": true}
	for w := range strings.FieldsSeq(s) {
		set[w] = true
	}
	return set
}

// singular is rough; it only has to bring both forms of a name together.
func singular(w string) string {
	for _, end := range [...][2]string{{"ies", "y"}, {"oes", "o"}, {"ches", "ch"}, {"shes", "sh"}, {"xes", "x"}} {
		if stem, ok := strings.CutSuffix(w, end[0]); ok {
			return stem + end[1]
		}
	}
	if strings.HasSuffix(w, "s") && !strings.HasSuffix(w, "ss") && len(w) > 3 {
		return w[:len(w)-1]
	}
	return w
}

// within reports whether every word is one of a name's.
func within(words, name []string) bool {
	return !slices.ContainsFunc(words, func(w string) bool { return !slices.Contains(name, w) })
}
