package validate

import (
	"slices"
	"strings"

	"stillroom/content"
)

// A spoken is a recipe that an episode speaks of, as a text of its own.
type spoken struct {
	*Text
	names map[string]bool // the words of its name and produce, in the singular
}

// episodeRecipes gives the recipes that the episode names.
func (t *Text) episodeRecipes() (all []spoken) {
	slugs := slices.Clone(t.Episode.Recipes)
	for _, c := range t.Episode.Chapters {
		slugs = append(slugs, c.Recipe)
	}
	seen := map[string]bool{}
	for _, slug := range slugs {
		if seen[slug.V] {
			continue
		}
		seen[slug.V] = true
		for _, r := range t.Site.Recipes {
			if r.Slug == slug.V && r.Withdrawn == nil {
				all = append(all, spokenRecipe(r))
			}
		}
	}
	return all
}

func spokenRecipe(r *content.Recipe) spoken {
	items := itemsOf(r)
	s := spoken{Text: &Text{Recipe: r}, names: map[string]bool{}}
	for i := range r.Keeping {
		s.Matches = append(s.Matches, match(&r.Keeping[i], items))
	}
	words := r.Name.V
	for _, p := range r.Produce {
		words += " " + p.V
	}
	for w := range strings.FieldsFuncSeq(plain(words), func(r rune) bool { return r < 'a' || r > 'z' }) {
		if w = singular(w); !isEmptyWord(w) && len(w) > 2 {
			s.names[w] = true
		}
	}
	return s
}

// about gives the recipes that a passage is about: those that it links to, the
// one of its chapter, else all.
func (t *Text) about(p *passage, all []spoken) []spoken {
	var linked []spoken
	for _, l := range p.links {
		for _, r := range all {
			if strings.Contains(l, "/recipes/"+r.Recipe.Slug+"/") {
				linked = append(linked, r)
			}
		}
	}
	if len(linked) > 0 {
		return linked
	}
	if p.place == placeSpoken {
		if slug := t.chapterAt(p.second); slug != "" {
			return slices.DeleteFunc(slices.Clone(all), func(r spoken) bool { return r.Recipe.Slug != slug })
		}
	}
	return all
}

// chapterAt gives the recipe of the chapter that runs at a second; empty if it
// has none.
func (t *Text) chapterAt(second float64) (slug string) {
	for _, c := range t.Episode.Chapters {
		if float64(c.At.V) > second+1 {
			break
		}
		slug = c.Recipe.V
	}
	return slug
}

// spokenOf keeps the recipes whose food a sentence, or the one before, names;
// all of them if it names none.
func spokenOf(s *sentence, near []spoken) []spoken {
	for b, n := s, 0; b != nil && n < 3; b, n = b.before(), n+1 {
		var named []spoken
		for _, r := range near {
			for i := range b.len() {
				if r.names[singular(plain(b.word(i)))] {
					named = append(named, r)
					break
				}
			}
		}
		if len(named) > 0 {
			return named
		}
	}
	return near
}
