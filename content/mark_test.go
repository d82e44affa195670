package content

import (
	"strings"
	"testing"
)

// Marks stand where they were written, in files with either end of line, and a
// text that speaks of checking is none.
func TestMarks(t *testing.T) {
	const text = "---\nname: 'A # check: B'\n  # check: one\n  #   and more\nkind: jam # check: two\n# a check: no\n---\n\nSee <!-- check: three -->\n"
	for _, c := range []string{text, strings.ReplaceAll(text, "\n", "\r\n")} {
		r, _ := ReadRecipe("content/recipes/a.md", []byte(c))
		var got []string
		for _, m := range r.Marks {
			got = append(got, m.Pos.String()[len("content/recipes/a.md:"):]+" "+m.V)
		}
		if want := "3:3 one and more; 5:11 two; 9:5 three"; strings.Join(got, "; ") != want {
			t.Errorf("got %s, want %s", strings.Join(got, "; "), want)
		}
	}
	e, _ := ReadEpisode("content/episodes/a.md", []byte(text))
	if len(e.Marks) != 3 {
		t.Errorf("an episode has the marks %v", e.Marks)
	}
}

// What a draft lacks may wait, what it says wrong may not.
func TestDraftsMayLack(t *testing.T) {
	_, faults := ReadRecipe("content/recipes/a.md", []byte("---\nname: A\nstatus: draft\nkind: jamm\n---\n"))
	for _, f := range faults {
		if f.Later != (f.Kind == MissingKey) {
			t.Errorf("%s: later %v", f.Message, f.Later)
		}
	}
	if _, faults = ReadRecipe("content/recipes/a.md", []byte("---\nname: A\n---\n")); len(faults) == 0 || faults[0].Later {
		t.Errorf("what is no draft: %v", faults)
	}
}
