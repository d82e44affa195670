package validate

import (
	"strconv"
	"strings"
	"testing"

	"stillroom/content"
)

// The times that were seen with a recipe are those of its process: two
// tables, compiled apart.
func TestPublishedRecipesAgree(t *testing.T) {
	for _, r := range PublishedRecipes() {
		p, _ := FindProcess(r.Process, content.BoilingWater, "")
		if p == nil {
			t.Errorf("%s: there is no process %s", r.Name, r.Process)
			continue
		}
		if r.Source.Title == "" || r.Fruit == "" || r.Yield == "" {
			t.Errorf("%s lacks something: %+v", r.Name, r)
		}
		for part := range strings.SplitSeq(r.Minutes, " | ") {
			jars, bands, _ := strings.Cut(part, ": ")
			for jar := range strings.SplitSeq(jars, " or ") {
				checkPublished(t, r, p, jar, bands)
			}
		}
	}
}

func checkPublished(t *testing.T, r PublishedRecipe, p *Process, jar, bands string) {
	for _, j := range p.Jars {
		if j.Jar != jar {
			continue
		}
		if got := printed(j.Schedules[0].Bands); got != bands || j.Headspace.Cmp(r.Headspace) != 0 {
			t.Errorf("%s, %s: %s with %s in, but %s has %s with %s in",
				r.Name, jar, bands, r.Headspace.RatString(), p.ID, got, j.Headspace.RatString())
		}
		return
	}
	t.Errorf("%s: %s has no %s", r.Name, p.ID, jar)
}

func printed(bands []TestedBand) string {
	var out []string
	for _, b := range bands {
		to := strconv.Itoa(b.To)
		if b.To == 0 {
			to = ""
		}
		out = append(out, strconv.Itoa(b.From)+"-"+to+"="+strconv.Itoa(b.Minutes))
	}
	return strings.Join(out, "; ")
}
