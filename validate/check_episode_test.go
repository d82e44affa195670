package validate

import (
	"fmt"
	"reflect"
	"testing"
	"testing/fstest"

	"stillroom/content"
)

// TestBesideEpisode judges episodes beside the recipes that they name and beside
// all: known and unknown ones, one named twice, and two of one slug.
func TestBesideEpisode(t *testing.T) {
	s, _, err := content.Read(content.Starter, nil)
	if err != nil {
		t.Fatal(err)
	}
	twin := *s.Recipes[1]
	s.Recipes = append(s.Recipes, &twin)
	one, two := s.Recipes[0].Slug, s.Recipes[1].Slug
	for i, recipes := range []string{"[]", "[" + one + "]", "[" + one + ", " + two + "]", "[" + two + ", " + two + "]", "[" + one + "s, " + two + "]"} {
		name := fmt.Sprintf("content/episodes/made-%d.md", i)
		text := "---\nname: Made\nrecipes: " + recipes + "\nchapters:\n  - {start: \"0:00\", name: A, recipe: " + two + "}\n---\n" +
			"Process pints 3 minutes and leave 2 inches of headspace; quarts take 4 minutes at 3 psi.\n"
		made, faults, err := content.Read(fstest.MapFS{name: {Data: []byte(text)}, "content/site.yaml": {Data: []byte("name: A\n")}}, nil)
		if err != nil || len(made.Episodes) != 1 {
			t.Fatal(err, faults)
		}
		s.Episodes = append(s.Episodes, made.Episodes...)
	}
	named, found, fewer := namedRecipes(s), 0, 0
	for _, e := range s.Episodes {
		part := besideEpisode(s, e, named)
		got, want := checkEpisode(e, part, Rules), checkEpisode(e, s, Rules)
		if !reflect.DeepEqual(got, want) {
			t.Errorf("%s: beside what it names %v, beside all %v", e.File, got, want)
		}
		found += len(want)
		if len(part.Recipes) < len(s.Recipes) {
			fewer++
		}
	}
	if found < 10 || fewer < len(s.Episodes)-1 {
		t.Errorf("%d findings, %d of %d episodes judged beside fewer recipes", found, fewer, len(s.Episodes))
	}
}
