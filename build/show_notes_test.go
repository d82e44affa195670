package build

import (
	"fmt"
	"strings"
	"testing"
)

// TestShowNotesFolded holds both sides of the limit: up to it every episode is
// shown in full, above it the newest year alone, and each with its recipes.
func TestShowNotesFolded(t *testing.T) {
	for _, n := range []int{unfolded, unfolded + 1} {
		site := map[string]string{
			"content/site.yaml":      "name: Larder\nprogramme: {name: Talk}\n",
			"content/recipes/jam.md": recipeText("Jam", "published: 2020-01-01\n---\n\n1. Cook it.\n"),
		}
		for i := range n {
			site[fmt.Sprintf("content/episodes/e%02d.md", i)] = fmt.Sprintf(
				"---\nname: Talk %d\nsummary: Talk.\nseries: %d\npublished: %d-01-02\nrecipes: [jam]\n---\n", i, i/20+1, 2021+i/10)
		}
		c := checked(t, "2026-06-01", site)
		p := newEdition(c.Site(), c.Day(), &Assets{}).showNotesPage()
		var got []string
		for _, s := range p.Series {
			for _, y := range s.Years {
				got = append(got, fmt.Sprintf("%s %s %d %v", s.Name, y.Year, len(y.Episodes), y.Full))
				for _, e := range y.Episodes {
					if len(e.Recipes) != 1 || e.Recipes[0].Address != "/recipes/jam/" {
						t.Errorf("%s is shown with %v", e.Name, e.Recipes)
					}
				}
			}
		}
		want := "Series 2 2024 10 true, Series 2 2023 10 true, Series 1 2022 10 true, Series 1 2021 10 true"
		if n > unfolded {
			want = "Series 3 2025 1 true, Series 2 2024 10 false, Series 2 2023 10 false, Series 1 2022 10 false, Series 1 2021 10 false"
		}
		if strings.Join(got, ", ") != want || p.Folded != (n > unfolded) {
			t.Errorf("%d episodes: %q, folded %v; want %q", n, got, p.Folded, want)
		}
	}
}
