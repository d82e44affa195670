package validate

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"stillroom/content"
)

// What readers are told of every recipe of the example, and of those of
// testdata/changes, is kept in testdata/remarks.txt. Run with -update, and read
// what changed.
func TestRemarks(t *testing.T) {
	const golden = "testdata/remarks.txt"
	var b strings.Builder
	for _, pattern := range []string{"../content/recipes/*.md", "testdata/changes/*.md"} {
		names, _ := filepath.Glob(pattern)
		for _, name := range names {
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			r, _ := content.ReadRecipe(filepath.Base(name), text)
			if r.Withdrawn != nil {
				continue // nothing is told of it
			}
			writeRemarks(t, &b, r)
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
	got := b.String()
	if got != string(want) {
		t.Errorf("got\n%s", got)
	}
	for id, m := range remarks() {
		first, _, _ := strings.Cut(m.Says, "{")
		if !strings.Contains(got, strings.TrimPrefix(first, " ")) && first != "" {
			t.Errorf("%s is said of no recipe", id)
		}
	}
	if strings.ContainsAny(got, "{}") || strings.Contains(got, "safe") {
		t.Error("a brace is left open, or something is called safe")
	}
}

func writeRemarks(t *testing.T, b *strings.Builder, r *content.Recipe) {
	line := func(what string, m Remark) {
		fmt.Fprintf(b, "    %s: %s\n", what, m.Says)
		if m.Source.Title == "" {
			t.Errorf("%s, %s: no source", r.Slug, what)
		}
	}
	fmt.Fprintln(b, r.Slug)
	for _, term := range KeepingTimes(r) {
		own := ""
		if term.Own {
			own = ", its own"
		}
		line(fmt.Sprintf("%s (%s%s)", term.State, term.Time, own), Remark{term.Says, term.Source})
	}
	for i := range r.Keeping {
		k := &r.Keeping[i]
		if m, ok := BeforeClock(k); ok {
			line(string(k.Way.V)+", before", m)
		}
		if m, ok := ClockStart(k.Way.V); ok {
			line(string(k.Way.V)+", clock", m)
		}
		if m, ok := WhyHeadspace(k); ok {
			line(string(k.Way.V)+", headspace", m)
		}
		if m, ok := WhyAcid(r, k); ok {
			line(string(k.Way.V)+", acid", m)
		}
		for _, m := range UnsealedJar(k) {
			line(string(k.Way.V)+", unsealed", m)
		}
	}
}
