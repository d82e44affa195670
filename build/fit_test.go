package build

import (
	"strings"
	"testing"
)

func TestFit(t *testing.T) {
	all := []Passage{
		{Name: "summary", Text: "12345678"},
		{Name: "first notes", Text: "ééé", Spare: 3}, // six bytes
		{Name: "second notes", Text: "ab", Spare: 3},
		{Name: "chapters", Text: "c", Spare: 2},
		{Name: "links", Text: "links", Spare: 5},
		{Name: "address", Text: "a"},
	}
	for _, c := range []struct {
		limit      int
		text, left string
	}{
		{35, "12345678|ééé|ab|c|links|a", ""},
		{34, "12345678|ééé|ab|c|a", "links"},
		{28, "12345678|ééé|ab|c|a", "links"},
		{27, "12345678|ééé|c|a", "second notes, links"},
		{23, "12345678|c|a", "first notes, second notes, links"},
		{16, "12345678|c|a", "first notes, second notes, links"},
		{15, "12345678|a", "first notes, second notes, chapters, links"},
		{3, "12345678|a", "first notes, second notes, chapters, links"},
	} {
		text, left := Fit(all, c.limit, func(p Passage) string { return p.Text })
		if got := strings.ReplaceAll(strings.TrimSuffix(text, "\n"), "\n\n", "|"); got != c.text || strings.Join(left, ", ") != c.left {
			t.Errorf("Fit(%d) = %q without %q, want %q without %q", c.limit, got, left, c.text, c.left)
		}
		if c.limit > 14 && len(text) > c.limit {
			t.Errorf("Fit(%d) gives %d bytes", c.limit, len(text))
		}
	}
}
