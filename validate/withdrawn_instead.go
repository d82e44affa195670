package validate

import (
	"fmt"

	"stillroom/content"
)

// withdrawnInstead reports a withdrawal that sends readers to a recipe which
// they cannot have.
var withdrawnInstead = &Rule{
	ID:       "withdrawn-instead",
	Severity: Error,
	Summary:  "a withdrawn recipe that sends readers to one they cannot have",
	Doc: `"withdrawn:" takes a recipe back. Its address then says since when and why, and
nothing else of it is published, so nothing else of it is judged. Whoever comes to make
it is sent on to the recipe under "instead:", by the name of its file: one that is
published, and not withdrawn itself. Where there is none, leave "instead:" out, and the
page says that.`,
	Source:   contract,
	CheckDay: checkWithdrawnInstead,
}

func checkWithdrawnInstead(s *content.Site, day content.Date) []Finding {
	var fs []Finding
	for _, r := range s.Recipes {
		if r.Withdrawn == nil || !r.Withdrawn.Instead.Set() {
			continue
		}
		instead := r.Withdrawn.Instead
		known := knownRecipe(instead, s)
		fs = append(fs, known...)
		if why := notToBeHad(instead.V, s, day); known == nil && why != "" {
			fs = append(fs, Finding{
				Pos:     instead.Pos,
				Message: fmt.Sprintf("%s %s", instead.V, why),
				Advice:  "Name a recipe that readers can make today, or none.",
			})
		}
	}
	return fs
}

// notToBeHad says why readers cannot have a recipe; nothing if they can.
func notToBeHad(slug string, s *content.Site, day content.Date) string {
	for _, r := range s.Recipes {
		switch {
		case r.Slug != slug:
		case r.Withdrawn != nil:
			return "is withdrawn"
		case r.Status.V == content.Draft:
			return "is a draft"
		case !day.IsZero() && day.Before(r.Published.V):
			return "is held back until " + r.Published.V.String()
		}
	}
	return ""
}
