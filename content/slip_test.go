package content

import "testing"

func TestIsSlip(t *testing.T) {
	for _, tt := range []struct {
		word, spelling string
		want           bool
	}{
		{"tbps", "tbsp", true},
		{"cupps", "cups", true},
		{"cusp", "cups", true},
		{"tablepoons", "tablespoons", true},
		{"TABELSPOONS", "tablespoons", true},
		{"ounc", "ounce", true},
		{"cups", "cups", false},
		{"mint", "pint", false},   // mint leaves
		{"pinto", "pints", false}, // pinto beans
		{"pink", "pint", false},
		{"caps", "cups", false},
		{"pears", "ears", false},
		{"gala", "gal", false},
		{"grapes", "grams", false},
		{"quarter", "quart", false},
		{"oz", "ozs", false}, // too short to tell
	} {
		if got := isSlip(tt.word, tt.spelling); got != tt.want {
			t.Errorf("isSlip(%q, %q) = %v", tt.word, tt.spelling, got)
		}
	}
}
