package validate

import "stillroom/content"

// episodeAlone gives advice where an episode names no recipe.
var episodeAlone = &Rule{
	ID:       "episode-alone",
	Severity: Advice,
	Summary:  "an episode that names no recipe",
	Doc: `The recipes of an episode stand on its page as cards, and each of their pages leads
back to it. What an episode says in figures is compared with the recipes that it
names: of one that names none nothing can be compared. Name them under "recipes:", or
say under "recipes: []" that there are none.`,
	Source: contract,
	CheckEpisode: func(e *content.Episode, _ *content.Site) []Finding {
		if _, said := e.Keys["recipes"]; said {
			return nil
		}
		for _, c := range e.Chapters {
			if c.Recipe.Set() {
				return nil
			}
		}
		return []Finding{{
			Pos:     e.Name.Pos,
			Message: "the episode names no recipe",
			Advice:  `Write the recipes that it is about under recipes:, or "recipes: []" if it is about none.`,
		}}
	},
}
