package validate

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

var update = flag.Bool("update", false, "rewrite the wanted findings in testdata")

// TestRules runs each rule on the files of its testdata/ID.txtar, by itself,
// and compares what it says with the file named want. Files whose names begin
// with content/ make up a site; each of the others is a recipe of its own.
func TestRules(t *testing.T) {
	for _, rule := range Rules {
		t.Run(rule.ID, func(t *testing.T) {
			name := filepath.Join("testdata", rule.ID+".txtar")
			ar, err := txtar.ParseFile(name)
			if err != nil {
				t.Fatal(err)
			}
			i := slices.IndexFunc(ar.Files, func(f txtar.File) bool { return f.Name == "want" })
			if i < 0 {
				t.Fatalf("%s has no file named want", name)
			}
			got := findingsOf(t, rule, ar)
			if *update {
				ar.Files[i].Data = []byte(got)
				if err := os.WriteFile(name, txtar.Format(ar), 0o666); err != nil {
					t.Fatal(err)
				}
				return
			}
			if want := string(ar.Files[i].Data); got != want {
				t.Errorf("%s\ngot\n%swant\n%s", name, got, want)
			}
		})
	}
}

// findingsOf prints what the rule finds in the files of the archive, a line a
// finding.
func findingsOf(t *testing.T, rule *Rule, ar *txtar.Archive) string {
	var fs []Finding
	site := fstest.MapFS{}
	for _, f := range ar.Files {
		switch {
		case f.Name == "want":
		case strings.HasPrefix(f.Name, "content/"):
			site[f.Name] = &fstest.MapFile{Data: recorded(t, f.Data)}
		default:
			fs = append(fs, ofRecipe(rule, f)...)
		}
	}
	if len(site) > 0 {
		fs = append(fs, ofSite(t, rule, site)...)
	}
	sortFindings(fs)
	var b strings.Builder
	for _, f := range fs {
		if f.Rule == rule.ID {
			fmt.Fprintln(&b, f)
		}
	}
	return b.String()
}

// recorded gives the recording that the text of a file names, which itself
// could not stand in an archive of texts; else the text.
func recorded(t *testing.T, text []byte) []byte {
	name, ok := strings.CutPrefix(strings.TrimSpace(string(text)), "recording: ")
	if !ok {
		return text
	}
	data, err := os.ReadFile(filepath.Join("../content/testdata/recordings", name))
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func ofRecipe(rule *Rule, f txtar.File) []Finding {
	r, faults := content.ReadRecipe(f.Name, f.Data)
	var fs []Finding
	for _, f := range faults {
		fs = append(fs, faultFinding(f))
	}
	rules := []*Rule{rule}
	if rule == acceptRule {
		rules = Rules
	}
	return append(fs, checkRecipe(r, rules)...)
}

func ofSite(t *testing.T, rule *Rule, fsys fstest.MapFS) []Finding {
	s, faults, err := content.Read(fsys, nil)
	if err != nil {
		t.Fatal(err)
	}
	rep, _, _ := Check(s, faults, content.Date{Year: 2026, Month: 11, Day: 25})
	return rep.Findings
}

// TestRulesComplete holds for every rule: it is in its place in the list, says
// what it is and who published it, and its cases show text that it refuses
// beside text that it lets pass.
func TestRulesComplete(t *testing.T) {
	if !slices.IsSortedFunc(Rules, func(a, b *Rule) int { return strings.Compare(a.ID, b.ID) }) {
		t.Error("Rules is not in order of ID")
	}
	for i, r := range Rules {
		if i > 0 && r.ID == Rules[i-1].ID {
			t.Errorf("%s stands twice", r.ID)
		}
		if r.Severity == 0 || r.Summary == "" || r.Doc == "" || r.Source.Title == "" {
			t.Errorf("%s lacks a severity, a summary, a doc or a source", r.ID)
		}
		if strings.HasSuffix(r.Summary, ".") {
			t.Errorf("%s: the summary ends in a full stop", r.ID)
		}
		shown(t, r)
	}
}

// shown reports a rule whose cases refuse nothing, or let nothing pass.
func shown(t *testing.T, r *Rule) {
	ar, err := txtar.ParseFile(filepath.Join("testdata", r.ID+".txtar"))
	if err != nil {
		t.Error(err)
		return
	}
	var want string
	passed := 0
	for _, f := range ar.Files {
		if f.Name == "want" {
			want = string(f.Data)
		}
	}
	for _, f := range ar.Files {
		if f.Name != "want" && !strings.Contains(want, f.Name+":") {
			passed++
		}
	}
	if want == "" {
		t.Errorf("%s: no case is refused", r.ID)
	}
	if passed == 0 {
		t.Errorf("%s: no case passes", r.ID)
	}
}

// TestRulesListed finds rules that were written but never put in the list.
func TestRulesListed(t *testing.T) {
	files, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range files {
		src, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		for line := range strings.Lines(string(src)) {
			id, ok := strings.CutPrefix(strings.TrimSpace(line), `ID:       "`)
			if !ok {
				continue
			}
			id = strings.TrimSuffix(id, `",`)
			if FindRule(id) == nil {
				t.Errorf("%s: the rule %s is not in Rules", name, id)
			}
		}
	}
}
