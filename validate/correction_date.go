package validate

import (
	"fmt"

	"stillroom/content"
)

// correctionDate reports a correction or a withdrawal on a day that cannot be.
var correctionDate = &Rule{
	ID:       "correction-date",
	Severity: Error,
	Summary:  "a correction or a withdrawal on a day that cannot be",
	Doc: `Readers compare the day of a correction with that of their own copy, and programs
fetch a recipe again when its day is newer. So a correction, and a withdrawal, cannot
be of a day to come, nor of one before the recipe was published; and where a recipe was
corrected, "updated:" is not earlier than that:

    updated: 2026-11-20
    corrections:
      - {date: 2026-11-20, text: "Half an inch of headspace was said; it is a quarter."}`,
	Source: Source{
		Title:   "RFC 4287, The Atom Syndication Format, 4.2.15: updated is when an entry last changed in a way that the publisher considers significant",
		Address: "https://www.rfc-editor.org/rfc/rfc4287",
	},
	CheckDay: func(s *content.Site, day content.Date) []Finding {
		var fs []Finding
		for _, r := range s.Recipes {
			for _, c := range r.Corrections {
				fs = append(fs, oddDay(r, "corrected", c.Date, day)...)
				fs = append(fs, notUpdated(r, c)...)
			}
			if w := r.Withdrawn; w != nil {
				fs = append(fs, oddDay(r, "withdrawn", w.Date, day)...)
			}
		}
		return fs
	},
}

// oddDay compares with a day that is zero where nobody knows it.
func oddDay(r *content.Recipe, what string, on content.Field[content.Date], day content.Date) []Finding {
	switch {
	case !on.Set():
		return nil
	case !day.IsZero() && day.Before(on.V):
		return []Finding{{
			Pos:     on.Pos,
			Message: fmt.Sprintf("%s on %s, which is to come", what, on.V),
			Advice:  "Write the day on which readers are told.",
		}}
	case on.V.Before(r.Published.V):
		return []Finding{{
			Pos:     on.Pos,
			Message: fmt.Sprintf("%s on %s, before it was published", what, on.V),
			Advice:  "What was put right before anybody read it needs no correction; otherwise write its day.",
			Notes:   []Note{{Pos: r.Published.Pos, Message: "published here"}},
		}}
	}
	return nil
}

// notUpdated reports a correction that the recipe's own day does not know of.
func notUpdated(r *content.Recipe, c content.Correction) []Finding {
	if !r.Updated.Set() || !r.Updated.V.Before(c.Date.V) {
		return nil
	}
	return []Finding{{
		Pos:      c.Date.Pos,
		Severity: Warning,
		Message:  fmt.Sprintf("corrected on %s, but last updated on %s", c.Date.V, r.Updated.V),
		Advice:   fmt.Sprintf("Write updated: %s.", c.Date.V),
		Notes:    []Note{{Pos: r.Updated.Pos, Message: "updated here"}},
	}}
}
