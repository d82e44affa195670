package build

import "testing"

// TestPagesAreSet keeps the built-in theme to what press prints itself: a page
// that it leaves to html/template takes several times as long.
func TestPagesAreSet(t *testing.T) {
	c, th := exampleChecked(t), theme(t)
	a, err := NewAssets(c, th, darkroom)
	if err != nil {
		t.Fatal(err)
	}
	seen := make(map[string]bool)
	for s := range newEdition(c.Site(), c.Day(), a).sheets {
		page, err := s.page()
		if err != nil {
			t.Fatal(err)
		}
		if err := th.Sets(s.kind, page); err != nil && !seen[s.kind] {
			t.Errorf("%s: %v", s.kind, err)
		}
		seen[s.kind] = true
	}
	if len(seen) < 11 {
		t.Errorf("only %d kinds of page", len(seen))
	}
}
