package content

import "strings"

// cutUnread leaves in Unread what looks like an amount at the start of s.
func (l *line) cutUnread(s string) {
	l.in.Amount, l.in.Each, l.in.Manner = Quantity{}, Quantity{}, ""
	_, rest := cutField(s)
	for rest != "" {
		after := afterAmountPart(rest)
		if after == rest {
			break
		}
		rest = after
	}
	l.in.Unread, l.rest = trimSpace(s[:len(s)-len(rest)]), rest
}

// afterAmountPart skips a unit, or what else may belong to an amount that
// could not be read.
func afterAmountPart(s string) string {
	if m, rest, _ := cutUnit(s, anyDim); m != nil {
		return skipSpace(rest)
	}
	if inside, rest, ok := cutBracket(s); ok {
		if _, _, ok := sameIn(inside); ok {
			return skipSpace(rest)
		}
	}
	field, rest := cutField(s)
	if partOfAmount(field, rest) || isSlipOfMeasure(field) {
		return rest
	}
	return s
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

// isSlipOfMeasure reports whether a word is a misspelt unit of weight or
// volume.
func isSlipOfMeasure(word string) bool {
	return spelt.slip(word, dimsOf(WeightDim, VolumeDim)) != nil
}
