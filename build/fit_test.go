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
		{34, "12345678|ééé|ab|c|links|a", ""},
		{33, "12345678|ééé|ab|c|a", "links"},
		{27, "12345678|ééé|ab|c|a", "links"},
		{26, "12345678|ééé|c|a", "second notes, links"},
		{22, "12345678|c|a", "first notes, second notes, links"},
		{15, "12345678|c|a", "first notes, second notes, links"},
		{14, "12345678|a", "first notes, second notes, chapters, links"},
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

// TestFitToTheByte holds that the limit itself is room enough.
func TestFitToTheByte(t *testing.T) {
	all := []Passage{{Name: "first"}, {Name: "last", Spare: 1}}
	form := func(p Passage) string { return p.Name }
	whole, _ := Fit(all, 100, form)
	for limit, want := range map[int]string{len(whole): whole, len(whole) - 1: "first\n"} {
		if got, _ := Fit(all, limit, form); got != want {
			t.Errorf("in %d bytes: %q, want %q", limit, got, want)
		}
	}
}
