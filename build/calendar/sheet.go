package calendar

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// How wide a sheet is in letters, and where its second column begins: a page
// of A4 or letter paper at ten letters an inch.
const (
	width  = 72
	column = 18
)

// A sheet is text in two columns.
type sheet struct{ strings.Builder }

// head writes the top line, with a name at the left and a day at the right.
func (s *sheet) head(name, day string) {
	gap := width - utf8.RuneCountInString(name) - utf8.RuneCountInString(day)
	if gap < 2 {
		fmt.Fprintf(s, "%s\n%s\n", name, day)
	} else {
		fmt.Fprintf(s, "%s%s%s\n", name, strings.Repeat(" ", gap), day)
	}
	s.WriteString(strings.Repeat("=", width) + "\n")
}

func (s *sheet) section(name string) { fmt.Fprintf(s, "\n%s\n", name) }

// entry writes a line of two columns; what does not fit goes on below.
func (s *sheet) entry(left, right string) {
	lines := wrap(right, width-column)
	if utf8.RuneCountInString(left) > column-4 {
		fmt.Fprintf(s, "  %s\n", left)
		left = ""
	}
	for _, l := range lines {
		fmt.Fprintf(s, "  %-*s%s\n", column-2, left, l)
		left = ""
	}
}

// more writes a line below the right column.
func (s *sheet) more(text string) {
	for i, l := range wrap(text, width-column-2) {
		mark := "- "
		if i > 0 {
			mark = "  "
		}
		fmt.Fprintf(s, "%*s%s%s\n", column, "", mark, l)
	}
}

// wrap breaks text at its spaces; a longer word stands alone.
func wrap(text string, width int) []string {
	var lines []string
	line := ""
	for _, w := range strings.Fields(text) {
		switch {
		case line == "":
			line = w
		case utf8.RuneCountInString(line)+1+utf8.RuneCountInString(w) > width:
			lines = append(lines, line)
			line = w
		default:
			line += " " + w
		}
	}
	return append(lines, line)
}
