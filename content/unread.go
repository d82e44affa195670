package content

import "strings"

// cutUnread leaves in Unread what looks like an amount at the start of s.
func (l *line) cutUnread(s string) {
	l.in.Amount, l.in.Each, l.in.Manner = Quantity{}, Quantity{}, ""
	_, rest := cutField(s)
	for rest != "" {
		word, after := cutField(rest)
		if m, behind, _ := cutUnit(rest, anyDim); m != nil {
			after = skipSpace(behind)
		} else if !partOfAmount(word, after) {
			break
		}
		rest = after
	}
	l.in.Unread, l.rest = trimSpace(s[:len(s)-len(rest)]), rest
}

// cutField cuts what stands before the first space.
func cutField(s string) (field, rest string) {
	i := strings.IndexFunc(s, isSpace)
	if i < 0 {
		return s, ""
	}
	return s[:i], skipSpace(s[i:])
}

// partOfAmount reports whether a field that is no unit belongs to an amount: a
// number, a sign, or a word between two numbers.
func partOfAmount(field, after string) bool {
	if startsNumber(field) != errNoNumber {
		return true
	}
	switch field {
	case "to", "or", "and", "plus", "minus", "less", "x", "X":
		return startsNumber(after) != errNoNumber
	}
	return !isLetter(field[0]) && field[0] < 0x80 && field[0] != '(' && field[0] != '['
}
