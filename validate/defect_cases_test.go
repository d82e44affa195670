package validate

import (
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
)

// A defectCase shows a defect of the trade's list: in a file of an archive of
// testdata, or as a sentence in its place in a recipe of sentences.txtar.
type defectCase struct{ defect, rule, where, sentence string }

// TestDefectCases finds every defect that a rule is said to find, in a case of
// testdata/defects.tsv, by one of the rules of its row, and no less severe than
// the row says unless the row gives the reason.
func TestDefectCases(t *testing.T) {
	shown := map[string][]defectCase{}
	for _, c := range readDefectCases(t) {
		shown[c.defect] = append(shown[c.defect], c)
	}
	bases := readBases(t)
	found, less := 0, 0
	for _, r := range readTable("defects.tsv") {
		rules, most := r.list("rules"), Severity(0)
		for _, c := range shown[r.text("defect")] {
			s := c.severity(t, bases)
			if !slices.Contains(rules, c.rule) || s == 0 {
				t.Errorf("%s: %s does not find %s %s", c.defect, c.rule, c.where, c.sentence)
			}
			if most == 0 || s == Error || s == Warning && most == Advice {
				most = s
			}
		}
		switch {
		case len(rules) == 0:
		case most == 0:
			t.Errorf("no case shows %s, %s", r.text("defect"), r.text("words"))
		case weigh(most) >= weighNamed(r.text("severity")):
			found++
		case r.text("otherwise") == "":
			t.Errorf("%s is found as %s, should be %s, and no reason is given", r.text("defect"), most, r.text("severity"))
		default:
			less++
		}
	}
	t.Logf("%d defects are found in a case of their own as severely as they are listed, %d less so, with the reason", found, less)
}

// severity gives how the rule weighs what it finds in the case; 0 for nothing.
func (c defectCase) severity(t *testing.T, bases map[string][]byte) Severity {
	if c.sentence != "" {
		tr := trial{where: c.where, sentence: c.sentence}
		if !slices.Contains(tr.found(t, bases, c.rule), c.rule) {
			return 0
		}
		return FindRule(c.rule).Severity
	}
	archive, file, _ := strings.Cut(c.where, " ")
	ar, err := txtar.ParseFile("testdata/" + archive)
	if err != nil {
		t.Fatal(err)
	}
	if archive == "defects.txtar" {
		ar.Files = slices.DeleteFunc(ar.Files, func(f txtar.File) bool { return f.Name != file })
	}
	most := Severity(0)
	for line := range strings.Lines(findingsOf(t, FindRule(c.rule), ar)) {
		for _, s := range []Severity{Advice, Warning, Error} {
			if strings.HasPrefix(line, file+":") && strings.Contains(line, ": "+s.String()+": ") && weigh(s) > weigh(most) {
				most = s
			}
		}
	}
	return most
}

// weigh orders severities; the more severe weighs more.
func weigh(s Severity) int { return slices.Index([]Severity{0, Advice, Warning, Error}, s) }

func weighNamed(name string) int {
	return slices.Index([]string{"", Advice.String(), Warning.String(), Error.String()}, name)
}

func readDefectCases(t *testing.T) (cases []defectCase) {
	data, err := os.ReadFile("testdata/defects.tsv")
	if err != nil {
		t.Fatal(err)
	}
	for line := range strings.Lines(string(data)) {
		c := strings.Split(strings.TrimSuffix(line, "\n"), "\t")
		if c[0] != "defect" {
			cases = append(cases, defectCase{c[0], c[1], c[2], c[3]})
		}
	}
	return cases
}
