package build

import "strings"

// says reports whether one of some words of small letters stands in a text,
// whatever its capitals.
func says(text string, words []string) bool {
	first := initials(words)
	for at := first.next(text, 0); at < len(text); at = first.next(text, at+1) {
		for _, w := range words {
			if begins(text[at:], w) && (at+len(w) == len(text) || !isWordByte(text[at+len(w)])) {
				return true
			}
		}
	}
	return false
}

// firstStem gives the first of some beginnings of words that a text has, whatever
// its capitals; empty if it has none.
func firstStem(text string, stems []string) string {
	first := initials(stems)
	for at := first.next(text, 0); at < len(text); at = first.next(text, at+1) {
		for _, s := range stems {
			if begins(text[at:], s) {
				return s
			}
		}
	}
	return ""
}

// A letterSet has a bit for each letter, whatever its case. Other signs share
// the bits of letters, so that having one is only a hint.
type letterSet uint32

// initials are the letters that words begin with.
func initials(words []string) letterSet {
	var set letterSet
	for _, w := range words {
		set |= 1 << (w[0] & 0x1f)
	}
	return set
}

// next gives the first place from one on where a word of ASCII letters and
// digits begins with one of the letters; the end of the text if there is none.
func (l letterSet) next(text string, from int) int {
	for i := from; i < len(text); i++ {
		if l>>(text[i]&0x1f)&1 != 0 && isWordByte(text[i]) && (i == 0 || !isWordByte(text[i-1])) {
			return i
		}
	}
	return len(text)
}

func begins(text, word string) bool {
	return len(text) >= len(word) && text[0]|0x20 == word[0] && strings.EqualFold(text[:len(word)], word)
}

func isWordByte(c byte) bool {
	return 'a' <= c|0x20 && c|0x20 <= 'z' || '0' <= c && c <= '9' || c == '_'
}
