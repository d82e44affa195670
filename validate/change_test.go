package validate

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"stillroom/content"
)

// The changes to every recipe of the example, and to those of testdata/changes,
// are kept in testdata/changes.txt. Run with -update, and read what changed.
func TestChangesOfTheExample(t *testing.T) {
	const golden = "testdata/changes.txt"
	var b strings.Builder
	for _, pattern := range []string{"../content/recipes/*.md", "testdata/changes/*.md"} {
		names, err := filepath.Glob(pattern)
		if err != nil || len(names) == 0 {
			t.Fatalf("no recipes at %s", pattern)
		}
		for _, name := range names {
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			r, _ := content.ReadRecipe(filepath.Base(name), text)
			if r.Withdrawn != nil {
				continue // nothing is told of it
			}
			for _, w := range Changes(r) {
				fmt.Fprintf(&b, "%s, %s\n", r.Slug, w.Keeping.Way.V)
				for _, c := range w.Changes {
					fmt.Fprintf(&b, "    %-8s%s: %s\n", c.Verdict, c.ID, c.Says)
					if c.Asks == "" || c.Source.Title == "" {
						t.Errorf("%s, %s: asks %q, and has the source %+v", r.Slug, c.ID, c.Asks, c.Source)
					}
				}
			}
		}
	}
	if *update {
		if err := os.WriteFile(golden, []byte(b.String()), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if got := b.String(); got != string(want) {
		t.Errorf("got\n%s", got)
	}
}

// A recipe that cites no known process has no changes: nothing can be said of
// it.
func TestChangesOfNoProcess(t *testing.T) {
	r, _ := content.ReadRecipe("a.md", []byte("---\nkeeping: [{way: boiling-water, process: plums-hott}, {way: refrigerator}]\n---\n"))
	ways := Changes(r)
	if len(ways) != 2 || ways[0].Changes != nil || len(ways[1].Changes) == 0 {
		t.Errorf("changes %+v", ways)
	}
}

func ExampleChanges() {
	r, _ := content.ReadRecipe("content/recipes/beans.md", []byte(`---
name: Green beans
kind: vegetable
produce: [green beans]
ingredients: [9 lb green beans, 2 tsp salt]
keeping:
  - {way: pressure, process: green-beans-raw, pack: raw, processing: [{jar: pint, time: 20 min}]}
---
`))
	for _, c := range Changes(r)[0].Changes {
		if c.ID == "less-salt" || c.ID == "boiling-water" {
			fmt.Printf("%s: %s. %s (%s)\n", c.Asks, c.Verdict, c.Says, c.Source.Title)
		}
	}
	// Output:
	// Less salt, or none: may. The salt is for taste, and may be cut down or left out. (University of Nebraska-Lincoln Extension, salt in canning)
	// A boiling-water canner: may-not. Boiling never gets hotter than boiling, however long. The spores of botulism survive it in food that is low in acid. (University of New Hampshire Extension, top questions)
}

// Every row of answers.tsv is the answer to something, and every answer tells
// what to do without calling it safe.
func TestAnswers(t *testing.T) {
	given := map[string]bool{}
	for _, pattern := range []string{"../content/recipes/*.md", "testdata/changes/*.md"} {
		names, _ := filepath.Glob(pattern)
		for _, name := range names {
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			r, _ := content.ReadRecipe(name, text)
			items := itemsOf(r)
			for i := range r.Keeping {
				a := &asking{recipe: r, Match: match(&r.Keeping[i], items)}
				switch {
				case a.Keeping.TestedBy != nil:
					given["anything letter"] = true
				case !a.canned() || a.Process != nil:
					for _, q := range allQuestions() {
						given[q.id+" "+q.pick(a).which] = true
					}
				}
			}
		}
	}
	for key, a := range answers() {
		if !given[key] {
			t.Errorf("%s answers nothing", key)
		}
		if strings.Contains(strings.ToLower(a.says), "safe") || !strings.HasSuffix(a.says, ".") && !strings.HasSuffix(a.says, "}.") {
			t.Errorf("%s says %q", key, a.says)
		}
	}
}

func TestQuestions(t *testing.T) {
	seen := map[string]bool{}
	for _, q := range allQuestions() {
		if seen[q.id] || q.asks == "" {
			t.Errorf("%s stands twice, or asks nothing", q.id)
		}
		seen[q.id] = true
	}
}
