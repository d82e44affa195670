package validate

import (
	"strings"
	"testing"
)

func TestLimits(t *testing.T) {
	tests := []struct{ id, low, high, source string }{
		{"acid-limit-ph", "23/5", "23/5", "21 CFR 114.3"},
		{"steam-canner-max-time", "45", "45", "National Center"},
		{"canner-vent", "10", "10", "USDA Complete Guide"},
		{"botulinum-growth-temps", "40", "120", "USDA Complete Guide"},
		{"kraut-salt-percent", "12/5", "12/5", "derived"},
		{"pickle-blossom-end", "1/16", "1/16", "USDA Complete Guide"},
		{"altitude-bw-bands-3", "", "", "USDA Complete Guide"},
		{"no-canned-butter", "", "", ""},
		{"dry-temp", "135", "140", ""},
		{"freeze-headspace-liquid-narrow-quart", "3/2", "3/2", ""},
		{"garlic-oil-days-4", "4", "4", ""},
	}
	for _, tt := range tests {
		l := LimitOf(tt.id)
		low, high := "", ""
		if l.Low != nil {
			low, high = l.Low.RatString(), l.High.RatString()
		}
		if low != tt.low || high != tt.high || !strings.HasPrefix(l.Source.Title, tt.source) {
			t.Errorf("LimitOf(%q) = %s to %s, %q, want %s to %s, %q", tt.id, low, high, l.Source.Title, tt.low, tt.high, tt.source)
		}
	}
}

func TestLimitsAreComplete(t *testing.T) {
	seen := map[string]bool{}
	for _, l := range Limits() {
		if seen[l.ID] {
			t.Errorf("%s is listed twice", l.ID)
		}
		seen[l.ID] = true
		if l.Statement == "" || l.Value == "" || l.Unit == "" || l.Source.Title == "" || l.Evidence == "" {
			t.Errorf("%s lacks something: %+v", l.ID, l)
		}
		if l.Low != nil && l.High.Cmp(l.Low) < 0 {
			t.Errorf("%s runs from %s down to %s", l.ID, l.Low, l.High)
		}
	}
}

func TestLimitNumbers(t *testing.T) {
	if n := LimitInt("jar-sterilise-when"); n != 10 {
		t.Errorf("LimitInt(jar-sterilise-when) = %d, want 10", n)
	}
	for _, id := range []string{"no such limit", "no-canned-butter"} {
		if !panics(func() { LimitRat(id) }) {
			t.Errorf("LimitRat(%q) gave a number", id)
		}
	}
	if !panics(func() { LimitInt("acid-limit-ph") }) {
		t.Error("LimitInt(acid-limit-ph) gave a whole number")
	}
}

func panics(f func()) (did bool) {
	defer func() { did = recover() != nil }()
	f()
	return false
}
