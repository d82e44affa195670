package content

import (
	"strings"
	"unicode/utf8"
)

// splitItem parts the item from the notes. Adjectives in a row belong to the
// item: peeled, cored and sliced apples.
func splitItem(s string) (head, tail string) {
	const separators = ",;:-"
	first, width := separator(s, 0, separators)
	end, from := first, 0
	for end < len(s) && s[end] == ',' && describes(s[from:end]) {
		from = end + 1
		end, width = separator(s, from, separators)
	}
	if end == len(s) && describes(s[from:]) {
		end, width = separator(s, 0, separators)
	}
	return s[:end], s[end+width:]
}

// itemEnd gives the end of the item at the start of s.
func itemEnd(s string) int {
	at, _ := separator(s, 0, ",;:-(")
	return at
}

// separator finds the first of the separators in s, outside brackets and
// numbers, and its width. A colon separates only before a space, a dash only
// between spaces unless it is the long one. It gives the length of s if there
// is none.
func separator(s string, from int, separators string) (at, width int) {
	closed := true
	for i := from; i < len(s); i++ {
		c := s[i]
		switch {
		case isLetter(c) || c == ' ':
			continue
		case (c == '(' || c == '[') && closed:
			if strings.IndexByte(separators, '(') >= 0 {
				return i, 1
			}
			_, rest, ok := cutBracket(s[i:])
			if closed = ok; ok {
				i = len(s) - len(rest) - 1
			}
		default:
			if width := separates(s, i, separators); width > 0 {
				return i, width
			}
		}
	}
	return len(s), 0
}

// separates gives the width of the separator that stands at i, 0 for none.
func separates(s string, i int, separators string) int {
	r, size := utf8.DecodeRuneInString(s[i:])
	sign := r
	if isDash(r) {
		sign = '-'
	}
	if !strings.ContainsRune(separators, sign) {
		return 0
	}
	before, after := i > 0 && s[i-1] == ' ', i+size < len(s) && s[i+size] == ' '
	switch {
	case r == ',' && i > 0 && isDigit(s[i-1]) && i+1 < len(s) && isDigit(s[i+1]):
		return 0
	case r == ':' && !after:
		return 0
	case sign == '-' && r != '—' && !(before && after):
		return 0
	}
	return size
}

// descriptions are adjectives that stand before an item, and words among them,
// beside those that end in -ed and -less.
var descriptions = map[string]bool{
	"and": true, "or": true, "very": true, "not": true, "fully": true, "just": true, "slightly": true, "well": true,
	"finely": true, "coarsely": true, "freshly": true, "thinly": true, "thickly": true, "roughly": true, "lightly": true,
	"fresh": true, "ripe": true, "unripe": true, "underripe": true, "firm": true, "soft": true, "tender": true, "crisp": true,
	"large": true, "medium": true, "small": true, "big": true, "long": true, "short": true, "thin": true, "thick": true, "plump": true,
	"sweet": true, "sour": true, "tart": true, "hot": true, "mild": true, "bitter": true, "dry": true, "raw": true, "frozen": true,
	"whole": true, "lean": true, "plain": true, "pure": true, "clean": true, "good": true, "young": true,
	"red": true, "green": true, "yellow": true, "white": true, "black": true, "purple": true,
}

// describes reports whether a piece of an item is nothing but adjectives.
func describes(piece string) bool {
	found := false
	for word := range strings.FieldsSeq(piece) {
		word = strings.ToLower(word)
		participle := strings.HasSuffix(word, "ed") && !strings.HasSuffix(word, "eed") || strings.HasSuffix(word, "less")
		if !participle && !descriptions[word] {
			return false
		}
		found = true
	}
	return found
}
