package content

import "strings"

// isSlip reports whether a word is a spelling with one slip of the hand in it:
// two neighbours swapped, a letter doubled, or one left out after the first.
// It is strict, for where a unit may stand an ingredient may stand as well,
// and three mint leaves are not three pints.
func isSlip(word, spelling string) bool {
	if len(word) < 3 || len(spelling) < 3 {
		return false
	}
	i := sameStart(word, spelling)
	if i == 0 {
		return false
	}
	switch len(word) - len(spelling) {
	case 0:
		return i+1 < len(word) && lower(word[i]) == spelling[i+1] && lower(word[i+1]) == spelling[i] &&
			strings.EqualFold(word[i+2:], spelling[i+2:])
	case 1:
		return lower(word[i]) == lower(word[i-1]) && strings.EqualFold(word[i+1:], spelling[i:])
	case -1:
		return strings.EqualFold(word[i:], spelling[i+1:])
	}
	return false
}

// sameStart counts the letters that a word and a spelling in lower case begin
// with alike.
func sameStart(word, spelling string) int {
	i := 0
	for i < len(word) && i < len(spelling) && lower(word[i]) == spelling[i] {
		i++
	}
	return i
}
