package validate

import "stillroom/content"

// recipeUnspoken gives advice where a programme speaks of most recipes and
// leaves one out.
var recipeUnspoken = &Rule{
	ID:       "recipe-unspoken",
	Severity: Advice,
	Summary:  "a recipe that no episode names, where episodes name most of the others",
	Doc: `A recipe page shows the episodes that name it. Where a programme goes with the
recipes, so that more than half of them are spoken of, one that no episode names may
have been forgotten under "recipes:". Drafts are left out, and a site with few episodes
is told nothing.`,
	Source:    contract,
	CheckSite: checkRecipeUnspoken,
}

func checkRecipeUnspoken(s *content.Site) []Finding {
	if s.Settings.Programme == nil {
		return nil
	}
	spoken := map[string]bool{}
	for _, e := range s.Episodes {
		for _, slug := range namedIn(e) {
			spoken[slug] = true
		}
	}
	var fs []Finding
	ready := 0
	for _, r := range s.Recipes {
		if r.Status.V == content.Draft || r.Withdrawn != nil {
			continue
		}
		ready++
		if !spoken[r.Slug] {
			fs = append(fs, Finding{
				Pos:     r.Name.Pos,
				Message: "no episode names this recipe",
				Advice:  "Name it under recipes: of the episode that speaks of it.",
			})
		}
	}
	if 2*len(fs) >= ready {
		return nil
	}
	return fs
}
