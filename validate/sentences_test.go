package validate

import (
	"bytes"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

// The least that is asked of the rules that read: of what they report the share
// that is right, and of what is wrong the share that they report.
const (
	leastPrecision = 1.00
	leastRecall    = 0.97
	leastOfRule    = 0.75 // recall of any single rule
)

// A trial is a line of testdata/sentences.tsv: a sentence, where it stands, and
// the rule that it must raise, or the one that it only looks like.
type trial struct {
	want                  []string
	near, where, sentence string
}

// TestSentences puts each sentence in its place in a recipe of
// testdata/sentences.txtar, and counts which of the rules that read find fault
// with it.
func TestSentences(t *testing.T) {
	bases := readBases(t)
	scores := map[string]*score{}
	all := &score{}
	trials := readTrials(t, "sentences.tsv")
	for _, tr := range trials {
		got := tr.found(t, bases, "")
		all.add(tr.want, got)
		for _, rule := range slices.Concat(got, tr.want) {
			if scores[rule] == nil {
				scores[rule] = &score{}
			}
		}
		for rule, s := range scores {
			s.add(alone(tr.want, rule), alone(got, rule))
		}
		if !slices.Equal(got, tr.want) {
			t.Logf("%s in %s: found %v, want %v", tr.sentence, tr.where, got, tr.want)
		}
	}
	for _, rule := range Rules {
		if s := scores[rule.ID]; s != nil {
			t.Logf("%-20s %s", rule.ID, s)
			if s.recall() < leastOfRule {
				t.Errorf("%s finds %d of %d", rule.ID, s.hit, s.hit+s.missed)
			}
		}
	}
	t.Logf("%-20s %s of %d sentences", "all", all, len(trials))
	if all.precision() < leastPrecision || all.recall() < leastRecall {
		t.Errorf("%s; at least %.2f and %.2f are asked for", all, leastPrecision, leastRecall)
	}
}

// readBases gives the recipes and the page in which sentences are put, by name.
func readBases(t *testing.T) map[string][]byte {
	ar, err := txtar.ParseFile("testdata/sentences.txtar")
	if err != nil {
		t.Fatal(err)
	}
	bases := map[string][]byte{}
	for _, f := range ar.Files {
		bases[strings.TrimSuffix(f.Name, ".md")] = f.Data
	}
	return bases
}

func readTrials(t *testing.T, name string) (trials []trial) {
	data, err := os.ReadFile("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	for line := range strings.Lines(string(data)) {
		c := strings.Split(strings.TrimSuffix(line, "\n"), "\t")
		if len(c) < 4 {
			t.Fatalf("not four columns: %q", line)
		}
		if c[0] != "want" {
			trials = append(trials, trial{strings.Fields(strings.TrimPrefix(c[0], "-")), c[1], c[2], c[3]})
		}
	}
	return trials
}

// marks are the words in the recipes that make room for a sentence, by place.
var marks = map[string]string{
	"early": "EARLY", "step": "STEP", "head": "HEAD", "notes": "NOTES",
	"gear": "GEAR", "caution": "CAUTION", "alt": "ALT", "log": "LOG",
}

// ofWhole are the rules that miss something in a whole recipe, or compare a step
// with the list of ingredients.
var ofWhole = []string{
	"hygiene", "storage-unsaid", "canner-water", "label-unsaid", "dry-until", "blossom-end",
	"not-used", "not-listed", "amount-differs",
}

// found gives the rules that find fault with the sentence in its place; of those
// of the whole only the one that is named.
func (tr trial) found(t *testing.T, bases map[string][]byte, too string) []string {
	base, in, ok := strings.Cut(tr.where, "/")
	if !ok {
		in = "step"
	}
	data := bases[base]
	if data == nil || !bytes.Contains(data, []byte(marks[in])) {
		t.Fatalf("no place %s", tr.where)
	}
	line := 1 + bytes.Count(data[:bytes.Index(data, []byte(marks[in]))], []byte("\n"))
	for place, mark := range marks {
		filler := "Nothing"
		if place == in {
			filler = tr.sentence
			if slices.Contains([]string{"gear", "caution", "alt", "log"}, place) {
				filler = fmt.Sprintf("%q", tr.sentence)
			}
		}
		data = bytes.Replace(data, []byte(mark), []byte(filler), 1)
	}
	var got []string
	for _, f := range checkText(textOf(base, data), Rules) {
		if f.Pos.Line == line && !slices.Contains(got, f.Rule) && (f.Rule == too || !slices.Contains(ofWhole, f.Rule)) {
			got = append(got, f.Rule)
		}
	}
	slices.Sort(got)
	return got
}

func textOf(base string, data []byte) *Text {
	if base == "page" {
		p, _ := content.ReadPage("content/pages/page.md", data)
		return textOfPage(p)
	}
	r, _ := content.ReadRecipe("content/recipes/"+base+".md", data)
	items := itemsOf(r)
	var matches []*Match
	for i := range r.Keeping {
		matches = append(matches, match(&r.Keeping[i], items))
	}
	return textOfRecipe(r, matches)
}

// A score counts what was found and what was not.
type score struct{ hit, missed, wrong int }

func (s *score) add(want, got []string) {
	for _, g := range got {
		if slices.Contains(want, g) {
			s.hit++
		} else {
			s.wrong++
		}
	}
	for _, w := range want {
		if !slices.Contains(got, w) {
			s.missed++
		}
	}
}

// alone keeps one rule of a list.
func alone(rules []string, rule string) []string {
	if slices.Contains(rules, rule) {
		return []string{rule}
	}
	return nil
}

func (s *score) precision() float64 { return share1(s.hit, s.hit+s.wrong) }
func (s *score) recall() float64    { return share1(s.hit, s.hit+s.missed) }

func share1(part, all int) float64 {
	if all == 0 {
		return 1
	}
	return float64(part) / float64(all)
}

func (s *score) String() string {
	return fmt.Sprintf("precision %.3f (%d wrong), recall %.3f (%d missed), %d found", s.precision(), s.wrong, s.recall(), s.missed, s.hit)
}
