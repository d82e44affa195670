package validate

import (
	"cmp"
	"fmt"
	"slices"

	"stillroom/content"
)

// A Severity says how much a finding weighs. The zero Severity is no
// severity.
type Severity int

// The severities. An Error stops publication and cannot be accepted.
const (
	_ Severity = iota
	Advice
	Warning
	Error
)

// String gives the word of the printed finding.
func (s Severity) String() string {
	switch s {
	case Advice:
		return "advice"
	case Warning:
		return "warning"
	case Error:
		return "error"
	}
	return fmt.Sprintf("severity %d", int(s))
}

// A Source is the publication that a rule or a value stands on.
type Source struct {
	Title   string // never empty in a rule
	Address string // where it can be read; may be empty
	Read    string // the day on which it was read, YYYY-MM-DD; empty if it was not noted
}

// A Finding is something in the cook's text that is wrong, or could be better.
type Finding struct {
	Pos      content.Pos
	Rule     string // stamped by Check
	Severity Severity
	Message  string // what is wrong: one clause, lower case, no full stop
	Advice   string // what to do: a sentence
	Source   Source // the rule's own if a check leaves it empty
	Notes    []Note
	Accepted string // the author's reason for taking it as read; empty if not accepted
}

// A Note is a second place that a finding speaks of.
type Note struct {
	Pos     content.Pos
	Message string // "first given here"
}

// String gives the finding's first line: file:line:column: severity: message [rule].
func (f Finding) String() string {
	return fmt.Sprintf("%s: %s: %s [%s]", f.Pos, f.Severity, f.Message, f.Rule)
}

// sortFindings puts findings in order of file, line, column and rule.
func sortFindings(fs []Finding) {
	slices.SortStableFunc(fs, func(a, b Finding) int {
		return cmp.Or(
			cmp.Compare(a.Pos.File, b.Pos.File),
			cmp.Compare(a.Pos.Line, b.Pos.Line),
			cmp.Compare(a.Pos.Col, b.Pos.Col),
			cmp.Compare(a.Rule, b.Rule),
			cmp.Compare(a.Message, b.Message),
		)
	})
}
