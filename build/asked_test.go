package build

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"stillroom/content"
	"stillroom/validate"
)

// Every answer of the validator's is on the page once, with its source; what
// readers ask every year stands open, in their order.
func TestAskedHoldsEveryAnswer(t *testing.T) {
	safe := regexp.MustCompile(`(?i)\bsafe(ly|ty)?\b`)
	for _, r := range newEdition(exampleChecked(t).Site(), exampleChecked(t).Day(), &Assets{}).recipes {
		a := asked(r)
		for i, w := range validate.Changes(r) {
			way := a.Ways[i]
			all := slices.Clone(way.First)
			for _, topic := range way.Topics {
				all = append(all, topic.Answers...)
			}
			if len(all) != len(w.Changes) || len(all) != len(way.First)+way.Rest {
				t.Errorf("%s: %d answers of %d", r.Slug, len(all), len(w.Changes))
			}
			for _, c := range w.Changes {
				if !slices.ContainsFunc(all, func(a Answer) bool { return a.Asks == c.Asks && a.Verdict == c.Verdict && a.Says == typeset(c.Says) }) {
					t.Errorf("%s lacks %q", r.Slug, c.Asks)
				}
			}
			for _, answer := range all {
				if answer.By.Name == "" || answer.Word == "" || safe.MatchString(answer.Says) {
					t.Errorf("%s: %+v", r.Slug, answer)
				}
			}
		}
	}
}

func TestAsked(t *testing.T) {
	a := asked(recipeOf(t, `
kind: tomato
produce: [tomatoes]
keeping:
  - way: boiling-water
    process: tomatoes-crushed-hot
    pack: hot
    acid: 2 tbsp bottled lemon juice per quart
    headspace: 1/2 in
    processing: [{jar: quart, altitude: {"0-1,000 ft": 45 min, "above 1,000 ft": 50 min}}]
    keeps: 12 months
  - {way: freezer, headspace: 1 in, container: pint tubs, keeps: 8 months}
`))
	var got []string
	for _, answer := range a.Ways[0].First {
		got = append(got, answer.Word+": "+answer.Asks)
	}
	want := []string{"You may not: A double batch", "You may not: Fresh juice for bottled", "You may not: A larger jar", "You may: Less sugar", "You may not: Less vinegar or lemon juice"}
	if !slices.Equal(got, want) {
		t.Errorf("first %q, want %q", got, want)
	}
	if w := a.Ways[0]; w.Table != "#keeping-boiling-water" || len(w.Unsealed) != 4 || w.Heading == "" {
		t.Errorf("canned: %+v", w)
	}
	if w := a.Ways[1]; w.Table != "" || w.Unsealed != nil || w.Rest != 0 || len(w.First) == 0 {
		t.Errorf("frozen: %+v", w)
	}
	got = nil
	for _, k := range a.Keeps {
		got = append(got, strings.ReplaceAll(k.Name+" "+k.Time, "\u00a0", " "))
	}
	if want := []string{"Sealed 12 months", "Opened 3–4 days", "Frozen 8 months"}; !slices.Equal(got, want) {
		t.Errorf("keeps %q, want %q", got, want)
	}
	if ways := asked(&content.Recipe{}).Ways; ways != nil {
		t.Errorf("asked of nothing: %+v", ways)
	}
}

// What stands on no page of the web leads nowhere, and a copy is not taken for
// the publisher's own.
func TestSourced(t *testing.T) {
	for _, c := range []struct{ address, name, link, copied string }{
		{"https://nchfp.uga.edu/a", "A guide", "https://nchfp.uga.edu/a", ""},
		{"https://www.example.org/a", "A guide", "https://www.example.org/a", "example.org"},
		{"https://uga.edu.example.org/a", "A guide", "https://uga.edu.example.org/a", "uga.edu.example.org"},
		{"page 3", "A guide, page 3", "", ""},
		{"", "A guide", "", ""},
	} {
		got := sourced("1/2 in", validate.Source{Title: "A guide", Address: c.address})
		if got.Says != "½\u00a0in" || got.By.Name != c.name || got.By.Address != c.link || got.By.Copy != c.copied {
			t.Errorf("%q: %+v", c.address, got)
		}
	}
}
