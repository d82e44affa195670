package validate

import (
	"regexp"
	"testing"
)

// TestDefects ties every defect of the trade's list to the rules that find
// it, or to the reason why no program of this kind can. "text" stands for what
// rules on the words of a recipe find.
func TestDefects(t *testing.T) {
	id := regexp.MustCompile(`^[A-L][0-9]{2}$`)
	severities := map[string]bool{Error.String(): true, Warning.String(): true, Advice.String(): true}
	seen := map[string]bool{}
	byRule, byText, unseen := 0, 0, 0
	for _, r := range readTable("defects.tsv") {
		d := r.text("defect")
		if !id.MatchString(d) || seen[d] || !severities[r.text("severity")] || r.text("words") == "" {
			t.Errorf("%s: %q stands twice, or is no whole row", r.place, d)
		}
		seen[d] = true
		for _, rule := range r.list("rules") {
			if FindRule(rule) == nil {
				t.Errorf("%s: %s is said to be found by %s, and there is no such rule", r.place, d, rule)
			}
		}
		switch {
		case r.text("rules") != "":
			byRule++
		case r.text("otherwise") == "text":
			byText++
		case r.text("otherwise") != "":
			unseen++
		default:
			t.Errorf("%s: nothing is said of how %s is found, or why not", r.place, d)
		}
	}
	if len(seen) != 215 {
		t.Errorf("%d defects, want 215", len(seen))
	}
	t.Logf("%d defects are found by rules on figures, %d by rules on words, %d by none, with the reason", byRule, byText, unseen)
}
