package content

import "strings"

// IsPerJar reports whether a text speaks of one jar among several, so that an
// amount in it is not that of the batch: 2 tbsp in each.
func IsPerJar(text string) bool {
	for w := range strings.FieldsFuncSeq(text, isNotOfWord) {
		switch strings.ToLower(w) {
		case "each", "every", "per", "apiece":
			return true
		}
	}
	return false
}

func isNotOfWord(r rune) bool {
	return r != '_' && !('0' <= r && r <= '9') && !('a' <= r|0x20 && r|0x20 <= 'z')
}
