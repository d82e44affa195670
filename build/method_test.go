package build

import (
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

// Each file of testdata/method holds the body of a recipe and what is made of
// it: the head note, the parts of the method, and the notes.
func TestMethod(t *testing.T) {
	names, err := filepath.Glob("testdata/method/*.txtar")
	if err != nil || len(names) == 0 {
		t.Fatal("no testdata", err)
	}
	for _, name := range names {
		ar, err := txtar.ParseFile(name)
		if err != nil {
			t.Fatal(err)
		}
		got := methodText(t, string(ar.Files[0].Data))
		if *update {
			ar.Files[1].Data = []byte(got)
			rewrite(t, name, ar, map[string][]byte{"method": []byte(got)})
			continue
		}
		if diff := cmp.Diff(string(ar.Files[1].Data), got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

func methodText(t *testing.T, body string) string {
	t.Helper()
	text := "A method, as of 2026-09-01.\n-- content/site.yaml --\nname: A\n-- content/pictures/stones.jpg --\n-- content/recipes/a.md --\n---\n" +
		"name: A\nsummary: A.\npublished: 2026-01-01\nkind: jam\nproduce: [plums]\nyield: 6 cups\ningredients: [1 cup sugar]\n" +
		"keeping: [{way: refrigerator, keeps: 3 weeks}]\n---\n" + body
	e := editionOf(t, txtar.Parse([]byte(text)))
	m, err := e.md.method(e.recipes[0].Body)
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	b.WriteString("before:\n" + string(m.Before) + "\n")
	for _, p := range m.Parts {
		b.WriteString("part: " + p.Heading + "\n" + string(p.Aside) + "\n")
		for _, s := range p.Steps {
			b.WriteString(s.ID + ": " + string(s.HTML) + "\n")
		}
	}
	b.WriteString("after:\n" + string(m.After) + "\n")
	return b.String()
}

// The numbers of the steps are those of the structured data, whose addresses
// lead to them.
func TestStepsAreCountedThrough(t *testing.T) {
	e := editionOf(t, mustArchive(t, "testdata/pages/recipe.txtar"))
	r := e.recipe["damson-preserves"]
	told, err := e.tell(r)
	if err != nil {
		t.Fatal(err)
	}
	page := e.recipePage(told)
	var ids []string
	for _, p := range page.Method {
		for _, s := range p.Steps {
			ids = append(ids, s.ID)
		}
	}
	for _, id := range ids {
		if !strings.Contains(string(page.Data), "/recipes/damson-preserves/#"+id+`"`) {
			t.Errorf("%s is not in the structured data", id)
		}
	}
	if steps := countSteps(r.Body.Method); len(ids) != steps {
		t.Errorf("%d steps on the page, %d written", len(ids), steps)
	}
}

func countSteps(parts []content.Part) int {
	n := 0
	for _, p := range parts {
		n += len(p.Steps)
	}
	return n
}

func mustArchive(t *testing.T, name string) *txtar.Archive {
	t.Helper()
	ar, err := txtar.ParseFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return ar
}
