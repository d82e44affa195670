package validate

import (
	"strings"
	"testing"

	"stillroom/content"
)

// Two names may look the same: é is one character or two (Unicode Standard
// Annex 15). Some systems write names one way, and keyboards the other.
func TestTwinOfMissingFile(t *testing.T) {
	for said, want := range map[string]string{
		"caf\u00e9.jpg": "look the same", "CAFE\u0301.jpg": "capitals count", "cafe.jpg": "Is it cafe\u0301.jpg?",
	} {
		f := content.Field[string]{V: said, Pos: content.Pos{File: "a.md", Line: 1, Col: 1}}
		if got := notThere(f, said, []string{"cafe\u0301.jpg"}).Advice; !strings.Contains(got, want) {
			t.Errorf("%q: %s", said, got)
		}
	}
}
