package build

import (
	"strings"
	"unicode/utf8"
)

var signs = map[string]string{"1/2": "½", "1/4": "¼", "3/4": "¾"}

// setFractions writes ½ for 1/2, and 1½ for 1 1/2, where it is a word.
func setFractions(s string) string {
	var b strings.Builder
	from := 0
	for i := 1; i+1 < len(s); i++ {
		if s[i] != '/' {
			continue
		}
		at, end := i-1, i+2
		sign, ok := signs[s[at:end]]
		if !ok || at < from || at > 0 && isWordByte(s[at-1]) || end < len(s) && isWordByte(s[end]) {
			continue
		}
		if at-2 >= from && s[at-1] == ' ' && isDigit(s[at-2]) {
			at--
		}
		b.WriteString(s[from:at])
		b.WriteString(sign)
		from = end
	}
	if from == 0 {
		return s
	}
	b.WriteString(s[from:])
	return b.String()
}

// setRanges writes 4–5 for 4-5 and for 4 - 5. What ends one range begins no
// other: 1–2-3.
func setRanges(s string) string {
	var b strings.Builder
	from, ended := 0, 0 // where what is not written yet begins, and where the last range ends
	for i := range len(s) {
		if s[i] != '-' {
			continue
		}
		left, right := strings.TrimSuffix(s[:i], " "), strings.TrimPrefix(s[i+1:], " ")
		first, n := utf8.DecodeLastRuneInString(left)
		last, m := utf8.DecodeRuneInString(right)
		if !inNumber(first) || !inNumber(last) || len(left)-n < ended {
			continue
		}
		b.WriteString(s[from:len(left)])
		b.WriteString("–")
		from = len(s) - len(right)
		ended = from + m
	}
	if from == 0 {
		return s
	}
	b.WriteString(s[from:])
	return b.String()
}

// inNumber reports whether a sign is one of a number that typeset makes.
func inNumber(r rune) bool {
	return '0' <= r && r <= '9' || r == '½' || r == '¼' || r == '¾'
}

func endsNumber(s string) bool {
	r, _ := utf8.DecodeLastRuneInString(s)
	return inNumber(r)
}
