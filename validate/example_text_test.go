package validate

import (
	"os"
	"testing"

	"stillroom/content"
)

// TestExampleTexts: the example is written as it should be, and the rules that
// read find nothing in it. Its texts hold most of what looks wrong and is not.
func TestExampleTexts(t *testing.T) {
	s, faults, err := content.Read(os.DirFS(".."), nil)
	if err != nil {
		t.Fatal(err)
	}
	rep, _, _ := Check(s, faults, content.Date{Year: 2026, Month: 11, Day: 25})
	for _, f := range rep.Findings {
		if r := FindRule(f.Rule); r.Practice != nil || r.CheckText != nil {
			t.Error(f)
		}
	}
}
