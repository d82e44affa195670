package validate

import (
	"fmt"

	"stillroom/content"
)

// recheckRule reports a recipe that was last checked against an older edition
// of the tables, where something that concerns it is newer.
var recheckRule = &Rule{
	ID:       "recheck",
	Severity: Warning,
	Summary:  "a recipe that something newer than its last check concerns",
	Doc: `Guidance changes. Processes are withdrawn, steps are added, and something has to be
said that nobody asked for before. "checked:" names the edition of the tables that a
recipe was last compared with; what concerns its food or its process and came into the
tables later is told here.

Figures and notices are compared on every run, so what is told here is for you: read
the steps with it in mind, and then let "stillroom fill" write the new edition, or write
it yourself.`,
	Source: Source{
		Title:   "Kansas State University Extension, What changed in the USDA guide of 2015",
		Address: "https://enewsletters.k-state.edu/youaskedit/2016/05/12/usda-complete-guide-to-home-canning",
	},
	Check: checkRecheck,
}

func checkRecheck(r *content.Recipe) []Finding {
	c := r.Checked
	if !c.Edition.Set() {
		return nil
	}
	fs := oddCheck(c)
	for _, reason := range reasonsSince(r, c.Edition.V) {
		if reason.Notice {
			continue
		}
		fs = append(fs, Finding{
			Pos:     c.Edition.Pos,
			Message: fmt.Sprintf("last checked against the edition of %s; since then: %s", c.Edition.V, reason.Says),
			Advice:  reason.Look,
			Source:  reason.Source,
		})
	}
	return fs
}

// oddCheck reports a check that cannot have been made.
func oddCheck(c content.Checked) []Finding {
	switch {
	case c.Edition.V.String() > Edition:
		return []Finding{{
			Pos:     c.Edition.Pos,
			Message: fmt.Sprintf("checked against the edition of %s, which is newer than the tables of this program, %s", c.Edition.V, Edition),
			Advice:  "Use the newer program, or write the edition that stands here.",
			Source:  contract,
		}}
	case c.Date.Set() && c.Date.V.Before(c.Edition.V):
		return []Finding{{
			Pos:     c.Date.Pos,
			Message: fmt.Sprintf("checked on %s, before the edition of %s was there", c.Date.V, c.Edition.V),
			Advice:  "Write the day on which the recipe was compared with that edition.",
			Source:  contract,
		}}
	}
	return nil
}
