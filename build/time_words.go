package build

import "strings"

// aroundTimes cuts a sentence down to what the times in it can take up, so that
// a search for them need not look through the rest: from a space well before
// the first place where a unit of time begins to well behind the last. It is
// empty if there is none.
func aroundTimes(sentence string, begins func(s string, at int) bool) (part string, at int) {
	first, last := -1, 0
	for i := range len(sentence) {
		if begins(sentence, i) {
			if first < 0 {
				first = i
			}
			last = i
		}
	}
	if first < 0 {
		return "", 0
	}
	at = max(0, first-longestCount)
	at = strings.LastIndexByte(sentence[:at], ' ') + 1
	return sentence[at:min(len(sentence), last+longestUnit)], at
}

// No number and no range of two is longer, nor is a unit and the sign behind it,
// which says where its word ends.
const (
	longestCount = len("twelve 1/2 to twelve 1/2 over ")
	longestUnit  = len(" minutes—")
)

// beginsTime reports whether the words of time that steps have a person wait for
// begin at a place.
func beginsTime(s string, at int) bool {
	for _, w := range [...]string{"min", "hour", "hr", "day", "wee", "night"} {
		if begins(s[at:], w) {
			return true
		}
	}
	return false
}
