package validate

import (
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
)

// What the handbook shows of a rule is what the rule says of it.
func TestExamples(t *testing.T) {
	for _, r := range Rules {
		refused, passed := r.Examples()
		if refused.Name == "" || passed.Name == "" || refused.Name == passed.Name {
			t.Errorf("%s: examples %q and %q", r.ID, refused.Name, passed.Name)
			continue
		}
		all, err := caseFiles.ReadFile("testdata/" + r.ID + ".txtar")
		if err != nil {
			t.Fatal(err)
		}
		said := strings.Split(findingsOf(t, r, txtar.Parse(all)), "\n")
		for _, e := range r.cases() {
			for _, line := range e.Says {
				if !slices.Contains(said, line) {
					t.Errorf("%s says no longer %q", r.ID, line)
				}
			}
		}
	}
}

func TestExamplesOfTimeShort(t *testing.T) {
	refused, passed := timeShort.Examples()
	if len(refused.Says) == 0 || len(passed.Says) > 0 {
		t.Errorf("refused %+v, passed %+v", refused, passed)
	}
	if r, p := (&Rule{ID: "none"}).Examples(); r.Name != "" || p.Name != "" {
		t.Errorf("a rule without cases has examples %+v and %+v", r, p)
	}
}
