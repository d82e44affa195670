package build

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"stillroom/build/amount"
	"stillroom/content"
)

// typeset gives a measure as a printer would set it: 1 1/2 cups becomes 1½
// cups, 4-5 lb becomes 4–5 lb, and a number never parts from its unit at the
// end of a line. Thirds and eighths stay written out, since the fonts have no
// sign for them, but draw 1/3 as a fraction.
func typeset(s string) string {
	s = strings.TrimSpace(s)
	if !amount.Numbered(s) {
		return s
	}
	s = setRanges(setFractions(s))
	if strings.Contains(s, "\xe2\x85") { // with which the signs that are written out begin
		s = writtenOut.Replace(s)
	}
	return strings.TrimSpace(strings.ReplaceAll(bindUnits(s), "\u00a0to ", " to "))
}

// bindUnits keeps each number on one line with the word after it.
func bindUnits(s string) string {
	var b strings.Builder
	from := 0
	for i := range len(s) {
		if s[i] == ' ' && endsNumber(s[:i]) && beginsUnit(s[i+1:]) {
			b.WriteString(s[from:i])
			b.WriteString("\u00a0")
			from = i + 1
		}
	}
	if from == 0 {
		return s
	}
	b.WriteString(s[from:])
	return b.String()
}

func beginsUnit(s string) bool {
	r, _ := utf8.DecodeRuneInString(s)
	return unicode.IsLetter(r) || r == '°' || r == '%'
}

var writtenOut = strings.NewReplacer("⅓", " 1/3", "⅔", " 2/3", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8")

// capital makes the first letter of a text a capital one.
func capital(s string) string {
	for i, c := range s {
		return string(unicode.ToUpper(c)) + s[i+len(string(c)):]
	}
	return s
}

// sentence begins with a capital and ends with a stop.
func sentence(s string) string {
	s = capital(strings.TrimSpace(s))
	if s == "" || strings.ContainsAny(s[len(s)-1:], ".!?") || strings.HasSuffix(s, "…") {
		return s
	}
	return s + "."
}

// list joins words as in speech: pints, quarts and half-pints.
func list(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " and " + words[last]
}

// A Day is a date as a page shows it; the zero Day shows none.
type Day struct {
	ISO   string // 2026-08-07
	Text  string // 7 August 2026
	Short string // 7 Aug, where the year is known
}

func day(d content.Date) Day {
	if d.IsZero() {
		return Day{}
	}
	return Day{ISO: d.String(), Text: d.Time().Format("2 January 2006"), Short: d.Time().Format("2 Jan")}
}

// sortKey puts names in the order in which a reader looks for them: without
// regard to capitals, accents or marks.
func sortKey(name string) string { return slug(name) }
