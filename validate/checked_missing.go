package validate

import "stillroom/content"

// checkedMissing reports a canned recipe that does not say when it was last
// checked.
var checkedMissing = &Rule{
	ID:       "checked-missing",
	Severity: Warning,
	Summary:  "a canned recipe that does not say when it was last checked, and against what",
	Doc: `Readers look for the day on which a canning recipe was last compared with the
published process, and so will you, when the guidance changes. "stillroom fill FILE"
writes it:

    checked: {edition: 2026-11-25, date: 2026-11-30}

The edition is that of the tables; the date is the day of the check. What becomes
known later and concerns the recipe is then told, by the rule recheck.`,
	Source: Source{
		Title:   "List of revisions of the USDA Complete Guide to Home Canning, 2009 against 1994",
		Address: "http://www.docstoc.com/docs/50933361/Complete-Guide-to-Home-Canning-USDA-NIFA-Agriculture-Information",
	},
	Check: func(r *content.Recipe) []Finding {
		if !isCanned(r) || !r.Checked.Pos.IsZero() {
			return nil
		}
		return []Finding{{
			Pos:     r.Keys["keeping"],
			Message: "not said when this was last checked against its process",
			Advice:  `"stillroom fill FILE" compares it, and writes checked: with the edition and the day.`,
		}}
	},
}
