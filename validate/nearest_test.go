package validate

import (
	"slices"
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
