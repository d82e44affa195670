package main

import (
	"fmt"
	"io"
	"strings"
	"text/tabwriter"

	"stillroom/validate"
)

const rulesHelp = `List what is checked, or explain one rule and say who published it.

    stillroom rules [ID]

    --all    explain every rule: the whole handbook

The ID is what stands in brackets at the end of a finding. Each rule is shown
with a text that it finds fault with and one that it lets pass. For example:

    stillroom rules time-short
`

type rulesCommand struct {
	ID  string `arg:"" optional:""`
	All bool
}

func (c *rulesCommand) run(p *program) int {
	switch {
	case c.All:
		writeHandbook(p.out)
		return succeeded
	case c.ID == "":
		return listRules(p.out)
	}
	r := validate.FindRule(c.ID)
	if r == nil {
		return p.fail(fmt.Errorf("there is no rule %s%s; to list them, stillroom rules", c.ID, didYouMean(validate.NearestRule(c.ID))))
	}
	writeRule(p.out, r)
	return succeeded
}

// writeHandbook explains every rule.
func writeHandbook(w io.Writer) {
	for i, r := range validate.Rules {
		if i > 0 {
			fmt.Fprintf(w, "\n%s\n\n", strings.Repeat("-", 72))
		}
		writeRule(w, r)
	}
}

// writeRule explains a rule, with examples and its source.
func writeRule(w io.Writer, r *validate.Rule) {
	fmt.Fprintf(w, "%s (%s): %s\n\n%s\n\n", r.ID, r.Severity, r.Summary, strings.TrimSpace(r.Doc))
	refused, passed := r.Examples()
	fmt.Fprintf(w, "It finds fault with %s:\n\n%s\n%s\n", refused.Name, indented(refused.Text), indented(strings.Join(refused.Says, "\n")))
	fmt.Fprintf(w, "And none with %s:\n\n%s\n", passed.Name, indented(passed.Text))
	fmt.Fprintf(w, "Source: %s\n", dated(r.Source))
}

// indented moves every line of a text to the right.
func indented(text string) string {
	var b strings.Builder
	for line := range strings.Lines(strings.TrimRight(text, "\n") + "\n") {
		if strings.TrimSpace(line) != "" {
			b.WriteString("    ")
		}
		b.WriteString(line)
	}
	return b.String()
}

func listRules(w io.Writer) int {
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	for _, r := range validate.Rules {
		fmt.Fprintf(t, "%s\t%s\t%s\n", r.ID, r.Severity, r.Summary)
	}
	t.Flush()
	return succeeded
}

// dated names a source with the day on which it was read, if that was noted.
func dated(s validate.Source) string {
	if s.Read != "" {
		return sourceText(s) + " (read on " + s.Read + ")"
	}
	return sourceText(s)
}

// didYouMean offers the word that is nearest to a misspelt one, if any is.
func didYouMean(near string) string {
	if near == "" {
		return ""
	}
	return " (did you mean " + near + "?)"
}
