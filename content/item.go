package content

import "strings"

// cutItem reads the item, and the notes behind it.
func (l *line) cutItem() {
	if l.in.Amount.Unit.Dimension() != Count || l.in.Amount.Unit == "" {
		l.rest = strings.TrimLeft(l.rest, " \t,.;:") // "6 cloves, tied" has its item before the comma
	}
	head, tail := splitItem(l.rest)
	if l.each { // 1 tsp each: cumin, coriander
		head, tail = l.rest, ""
		l.notes = append(l.notes, "each")
	}
	item := tidy(l.cutBrackets(l.cutTails(head), false))
	if l.before != "" {
		item = l.before + " " + item
	}
	l.in.Item = item
	for tail != "" {
		at, width := separator(tail, 0, ",;")
		l.note(tail[:at])
		tail = tail[at+width:]
	}
}

// cutBrackets takes the brackets out of a piece of the line. Remarks among
// them become notes, or stay where they are in a note.
func (l *line) cutBrackets(s string, inNote bool) string {
	var left strings.Builder
	for {
		i := strings.IndexAny(s, "([")
		inside, rest, ok := cutBracket(s[max(i, 0):])
		if !ok {
			break
		}
		left.WriteString(s[:i])
		switch {
		case l.takeBracket(inside):
		case inNote:
			left.WriteString(s[i : len(s)-len(rest)])
		default:
			l.notes = append(l.notes, tidy(inside))
		}
		s = rest
	}
	if left.Len() == 0 {
		return s
	}
	return left.String() + s
}

// cutTails cuts from an item what belongs to the notes, and takes an amount
// that stands at its end: sugar to taste, sugar 500 g.
func (l *line) cutTails(item string) string {
	for i := 0; i < len(item); i++ {
		if _, rest, ok := cutBracket(item[i:]); ok {
			i = len(item) - len(rest) - 1
			continue
		}
		if i > 0 && item[i-1] == ' ' && l.leadsAway(item[i:]) {
			l.note(item[i:])
			return item[:i]
		}
	}
	return item
}

// leadsAway reports whether the end of an item begins with a word that leads
// away from it, or is an amount.
func (l *line) leadsAway(s string) bool {
	switch lower(s[0]) {
	case 't', 'a', 'i', 'p', 'f', 'o', '+':
		word, rest := cutAnyWord(s, awayWords)
		switch word {
		case "":
			return strings.HasPrefix(s, "+ ") && counts(s[2:])
		case "or", "and":
			return counts(rest)
		}
		return true
	}
	if !l.unmeasured() || startsNumber(s) != nil {
		return false
	}
	trial := *l
	if trial.takeLate(s) && trial.in.Amount.Unit != "" {
		return true
	}
	l.second(s) // use 2 cups sugar
	return false
}

// awayWords lead from the item to a note; "or" and "and" only before a number.
var awayWords = []string{
	"to taste", "to cover", "to fill", "to serve", "to garnish", "as needed", "as required", "if needed",
	"plus", "for", "per", "or to taste", "or as needed", "or", "and", "optional",
}

// counts reports whether s begins with a number.
func counts(s string) bool {
	n, _, err := cutCount(s)
	return err == nil && (n.den == 1 || startsNumber(s) == nil)
}

// tidy gives a piece of the line with single spaces, and without the signs of
// punctuation around it.
func tidy(s string) string {
	return singleSpaced(strings.Trim(s, " ,.;:-–—"))
}
