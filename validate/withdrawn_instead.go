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
	meant := instead(s)
	var fs []Finding
	for _, r := range s.Recipes {
		if r.Withdrawn == nil || !r.Withdrawn.Instead.Set() {
			continue
		}
		to := r.Withdrawn.Instead
		if len(meant[to.V]) == 0 {
			fs = append(fs, knownRecipe(to, s)...)
		} else if why := notToBeHad(meant[to.V], day); why != "" {
			fs = append(fs, Finding{
				Pos:     to.Pos,
				Message: fmt.Sprintf("%s %s", to.V, why),
				Advice:  "Name a recipe that readers can make today, or none.",
			})
		}
	}
	return fs
}

// instead gives the recipes to which readers of withdrawn ones are sent, by
// slug. Two may have one until their author sees it.
func instead(s *content.Site) map[string][]*content.Recipe {
	meant := make(map[string][]*content.Recipe)
	for _, r := range s.Recipes {
		if r.Withdrawn != nil && r.Withdrawn.Instead.Set() {
			meant[r.Withdrawn.Instead.V] = nil
		}
	}
	if len(meant) == 0 {
		return nil
	}
	for _, r := range s.Recipes {
		if all, ok := meant[r.Slug]; ok {
			meant[r.Slug] = append(all, r)
		}
	}
	return meant
}

// notToBeHad says why readers cannot have a recipe; nothing if they can.
func notToBeHad(meant []*content.Recipe, day content.Date) string {
	for _, r := range meant {
		switch {
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
