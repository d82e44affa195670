package build

import (
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
)

const scheduled = `
A recipe and an episode that are out, and others that are not yet, or are
drafts, as of 2026-09-10.
-- content/site.yaml --
name: A
address: https://a.example
-- content/recipes/out.md --
---
name: Out
summary: Out.
published: 2026-09-10
kind: jam
produce: [plums]
yield: 1 cup
ingredients: [1 cup sugar]
keeping: [{way: refrigerator, keeps: 3 weeks}]
---
See [later](/recipes/later/), [the draft](/recipes/draft/#step-1), [what is
out](/show-notes/out/), [what is not](/show-notes/later/), [nothing](/nothing/)
and [elsewhere](https://b.example/recipes/later/).

1. Stir.
-- content/recipes/later.md --
---
name: Later recipe
summary: Later.
published: 2026-09-11
kind: chutney
produce: [pears]
season: [jan]
yield: 1 cup
ingredients: [1 cup sugar]
keeping: [{way: freezer, keeps: 3 months}]
---
1. Stir.
-- content/recipes/draft.md --
---
name: Draft recipe
summary: Draft.
status: draft
published: 2020-01-01
kind: jam
produce: [quinces]
yield: 1 cup
ingredients: [1 cup sugar]
keeping: [{way: refrigerator, keeps: 3 weeks}]
---
1. Stir.
-- content/episodes/out.md --
---
name: Heard
number: 1
published: 2026-09-10
summary: Heard.
audio: {address: "https://audio.example/1.mp3", duration: 1 min, bytes: 1, type: audio/mpeg}
recipes: [later, out, draft]
chapters: ["0:00 One", {at: "0:10", title: Two, recipe: later}, {at: "0:20", title: Three, recipe: out}]
guid: a
---
Notes.
-- content/episodes/later.md --
---
name: Unheard
number: 2
published: 2026-09-12
summary: Unheard.
audio: {address: "https://audio.example/2.mp3", duration: 1 min, bytes: 1, type: audio/mpeg}
recipes: [out]
guid: b
---
Notes.
-- content/pages/draft.md --
---
name: Draft page
summary: Draft.
status: draft
---
Not yet.
`

func TestHeldBack(t *testing.T) {
	ar := txtar.Parse([]byte(scheduled))
	for name, page := range pagesOf(t, ar) {
		for _, held := range []string{"Later recipe", "Draft recipe", "Unheard", "Draft page", "/produce/pears/", "/keeping/freezer/"} {
			if strings.Contains(string(page), held) {
				t.Errorf("%s speaks of %q", name, held)
			}
		}
		for _, held := range []string{"later", "draft", "pears", "quinces", "freezer"} {
			if strings.Contains(name, held) {
				t.Errorf("%s is published", name)
			}
		}
	}
}

func TestEpisodesBothWays(t *testing.T) {
	e := editionOf(t, txtar.Parse([]byte(scheduled)))
	heard := e.heardIn(e.recipe["out"])
	if len(heard) != 1 || heard[0].Name != "Heard" || heard[0].At != "0:20" || heard[0].Place != "Episode 1" {
		t.Errorf("the recipe is heard in %+v", heard)
	}
	page, err := e.episodePage(0)
	if err != nil {
		t.Fatal(err)
	}
	if len(page.Recipes) != 1 || page.Recipes[0].Name != "Out" {
		t.Errorf("the episode speaks of %+v", page.Recipes)
	}
	var marks []string
	for _, c := range page.Chapters {
		mark := c.At + " " + c.Title + " " + c.Address
		if c.Recipe != nil {
			mark += " " + c.Recipe.Address
		}
		marks = append(marks, mark)
	}
	want := []string{
		"0:00 One https://audio.example/1.mp3#t=0",
		"0:10 Two https://audio.example/1.mp3#t=10",
		"0:20 Three https://audio.example/1.mp3#t=20 /recipes/out/",
	}
	if !slices.Equal(marks, want) {
		t.Errorf("chapters %q, want %q", marks, want)
	}
}

// A link to what is held back, or to nothing, becomes its own words.
func TestLinksToWhatIsNotOut(t *testing.T) {
	e := editionOf(t, txtar.Parse([]byte(scheduled)))
	told, err := e.tell(e.recipe["out"])
	if err != nil {
		t.Fatal(err)
	}
	page := e.recipePage(told)
	want := `<p>See later, the draft, <a href="/show-notes/out/">what is
out</a>, what is not, nothing
and <a href="https://b.example/recipes/later/">elsewhere</a>.</p>`
	if string(page.HeadNote) != want {
		t.Errorf("head note:\n%s\nwant:\n%s", page.HeadNote, want)
	}
}

// Without an address nothing is written that needs one.
func TestNoAddress(t *testing.T) {
	text := strings.Replace(scheduled, "address: https://a.example\n", "", 1)
	for name, page := range pagesOf(t, txtar.Parse([]byte(text))) {
		for _, absolute := range []string{"canonical", "og:", "ld+json", "recipes.atom", "a.example/"} {
			if strings.Contains(strings.ReplaceAll(string(page), "audio.example", ""), absolute) {
				t.Errorf("%s holds %q", name, absolute)
			}
		}
	}
}

func TestEmptySite(t *testing.T) {
	made := pagesOf(t, txtar.Parse([]byte("Nothing yet, as of 2026-09-10.\n-- content/site.yaml --\nname: A\n")))
	for _, name := range []string{"index.html", "recipes/index.html", "search/index.html", "404.html", "season/july/index.html"} {
		if made[name] == nil {
			t.Errorf("%s is missing", name)
		}
	}
	if made["show-notes/index.html"] != nil {
		t.Error("there are show notes of no episodes")
	}
}
