package validate

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

func TestNearest(t *testing.T) {
	known := []string{"berry-jam", "cherry-jam", "green-beans-hot", "green-beans-raw", "tomato-sauce-standard-hot"}
	tests := []struct {
		word string
		want []string
	}{
		{"bery-jam", []string{"berry-jam", "cherry-jam"}},
		{"bery-jma", []string{"berry-jam"}},
		{"green-bean-raw", []string{"green-beans-raw", "green-beans-hot"}},
		{"tomato-sauce", []string{"tomato-sauce-standard-hot"}},
		{"potato", nil},
		{"", nil},
	}
	for _, tt := range tests {
		if got := nearest(tt.word, known, 2); !slices.Equal(got, tt.want) {
			t.Errorf("nearest(%q) = %q, want %q", tt.word, got, tt.want)
		}
	}
}

func TestDistance(t *testing.T) {
	tests := []struct {
		a, b string
		want int
	}{
		{"", "", 0}, {"jam", "", 3}, {"jam", "jam", 0}, {"jam", "ham", 1}, {"jam", "jams", 1}, {"jam", "jma", 1},
		{"plum", "lump", 2},
	}
	for _, tt := range tests {
		if got := distance(tt.a, tt.b); got != tt.want {
			t.Errorf("distance(%q, %q) = %d, want %d", tt.a, tt.b, got, tt.want)
		}
		if back := distance(tt.b, tt.a); back != tt.want {
			t.Errorf("distance(%q, %q) = %d, want %d", tt.b, tt.a, back, tt.want)
		}
	}
}

// TestMayBeWithin tries pairs of IDs of processes, whole and misspelt: what is passed
// over by its letters is not near.
func TestMayBeWithin(t *testing.T) {
	var ids []string
	for _, p := range processes() {
		ids = append(ids, p.ID, p.ID[:len(p.ID)/2], strings.ReplaceAll(p.ID, "e", "ea"))
	}
	passed := 0
	for _, a := range ids[:200] {
		for _, b := range ids {
			steps := max(len(a), len(b)) / 3
			if mayBeWithin(steps, lettersOf(a)^lettersOf(b), lettersOf(a), len(a)-len(b)) {
				continue
			}
			passed++
			if d := distance(a, b); d <= steps {
				t.Errorf("%q and %q are %d apart, and passed over", a, b, d)
			}
		}
	}
	if passed < 10_000 {
		t.Errorf("%d pairs are passed over, want 10,000 at least", passed)
	}
}

// BenchmarkNearest looks for what a misspelt recipe may be called, among 10,000.
func BenchmarkNearest(b *testing.B) {
	var known []string
	for i := range 10_000 {
		known = append(known, fmt.Sprintf("%s-%d", processes()[i%len(processes())].ID, i))
	}
	for b.Loop() {
		nearest("tomatos-in-juice", known, 1)
	}
}
