package validate

import (
	"fmt"
	"slices"

	"stillroom/content"
)

// unknownRecipe reports an episode that names a recipe nobody wrote.
var unknownRecipe = &Rule{
	ID:       "unknown-recipe",
	Severity: Error,
	Summary:  "an episode that names a recipe which the site does not have",
	Doc: `An episode names its recipes by slug, the file's name without .md. The page of
each recipe then shows the episode; nobody writes that link twice.`,
	Source:       contract,
	CheckEpisode: checkUnknownRecipe,
}

func checkUnknownRecipe(e *content.Episode, s *content.Site) []Finding {
	var fs []Finding
	for _, slug := range e.Recipes {
		fs = append(fs, knownRecipe(slug, s)...)
	}
	for _, c := range e.Chapters {
		if c.Recipe.Set() {
			fs = append(fs, knownRecipe(c.Recipe, s)...)
		}
	}
	return fs
}

func knownRecipe(slug content.Field[string], s *content.Site) []Finding {
	if slices.ContainsFunc(s.Recipes, func(r *content.Recipe) bool { return r.Slug == slug.V }) {
		return nil
	}
	names := make([]string, len(s.Recipes))
	for i, r := range s.Recipes {
		names[i] = r.Slug
	}
	f := Finding{Pos: slug.Pos, Message: fmt.Sprintf("no recipe is called %q", slug.V), Advice: "Write the name of the recipe's file, without .md."}
	if n := nearest(slug.V, names, 1); len(n) > 0 {
		f.Advice = fmt.Sprintf("Is it %s? %s", n[0], f.Advice)
	}
	return []Finding{f}
}
