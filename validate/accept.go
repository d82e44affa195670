package validate

import (
	"fmt"
	"slices"
	"strings"

	"stillroom/content"
)

// acceptRule reports an acceptance of a rule that does not exist, of an error,
// or without a reason.
var acceptRule = &Rule{
	ID:       "accept",
	Severity: Error,
	Summary:  "an acceptance of a rule that does not exist, or of an error, or without a reason",
	Doc: `"accept:" takes the warnings and advice of a rule as read, with the reason that
the report then shows. The rule must be one that "stillroom rules" lists. An error
cannot be accepted: a recipe with one is not published.`,
	Source: contract,
}

// checkAccept compares what the author accepts with what was found. It is run
// by Check itself, after all other rules.
func checkAccept(r *content.Recipe, found []Finding) []Finding {
	var fs []Finding
	for _, a := range r.Accept {
		switch is := func(f Finding) bool { return f.Rule == a.Rule.V && f.Severity == Error }; {
		case FindRule(a.Rule.V) == nil:
			fs = append(fs, Finding{
				Pos:     a.Rule.Pos,
				Message: fmt.Sprintf("no rule is called %q", a.Rule.V),
				Advice:  `"stillroom rules" lists them.`,
			})
		case slices.ContainsFunc(found, is):
			fs = append(fs, Finding{
				Pos:     a.Rule.Pos,
				Message: fmt.Sprintf("%s finds an error here, which cannot be accepted", a.Rule.V),
				Advice:  "Put the recipe right, or keep it as a draft.",
			})
		case strings.TrimSpace(a.Reason.V) == "":
			fs = append(fs, Finding{
				Pos:     a.Rule.Pos,
				Message: "no reason is given",
				Advice:  "Say in a few words why, for whoever reads the report after you.",
			})
		}
	}
	return acceptRule.stamp(fs)
}
