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

The ID is what stands in brackets at the end of a finding. For example:

    stillroom rules time-short
`

type rulesCommand struct {
	ID string `arg:"" optional:""`
}

func (c *rulesCommand) run(p *program) int {
	if c.ID == "" {
		return listRules(p.out)
	}
	r := validate.FindRule(c.ID)
	if r == nil {
		return p.fail(fmt.Errorf("there is no rule %s%s; to list them, stillroom rules", c.ID, didYouMean(validate.NearestRule(c.ID))))
	}
	fmt.Fprintf(p.out, "%s (%s): %s\n\n%s\n\nSource: %s\n",
		r.ID, r.Severity, r.Summary, strings.TrimSpace(r.Doc), dated(r.Source))
	return succeeded
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
