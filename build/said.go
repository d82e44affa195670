package build

import "strings"

// says reports whether one of some words stands in a text, whatever its
// capitals.
func says(text string, words []string) bool {
	for at := range wordStarts(text) {
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
	for at := range wordStarts(text) {
		for _, s := range stems {
			if begins(text[at:], s) {
				return s
			}
		}
	}
	return ""
}

// wordStarts gives the places at which words of ASCII letters and digits begin.
func wordStarts(text string) func(yield func(int) bool) {
	return func(yield func(int) bool) {
		within := false
		for i := range len(text) {
			is := isWordByte(text[i])
			if is && !within && !yield(i) {
				return
			}
			within = is
		}
	}
}

func begins(text, word string) bool {
	return len(text) >= len(word) && text[0]|0x20 == word[0] && strings.EqualFold(text[:len(word)], word)
}

func isWordByte(c byte) bool {
	return 'a' <= c|0x20 && c|0x20 <= 'z' || '0' <= c && c <= '9' || c == '_'
}
