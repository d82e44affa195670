package content

import "testing"

// A letter's place is counted in bytes, whichever order letters are asked in.
func TestSourceLetter(t *testing.T) {
	s := newSource("a.md", []byte("\uFEFFa½é b\r\n\n½ cup"))
	for _, c := range []struct{ line, letter, wantLine, wantCol int }{
		{1, 1, 1, 1}, {1, 2, 1, 2}, {1, 3, 1, 4}, {1, 4, 1, 6}, {1, 5, 1, 7},
		{1, 3, 1, 4}, // back
		{1, 6, 1, 8}, // just behind the line
		{1, 99, 1, 8},
		{2, 1, 2, 1}, {2, 2, 2, 1},
		{3, 2, 3, 3}, {3, 1, 3, 1}, {3, 99, 3, 7},
		{4, 1, 3, 1}, {0, 1, 1, 1}, // outside the file
	} {
		if got, want := s.letter(c.line, c.letter), (Pos{"a.md", c.wantLine, c.wantCol}); got != want {
			t.Errorf("letter %d of line %d is at %v, want %v", c.letter, c.line, got, want)
		}
	}
}

func TestSourceAt(t *testing.T) {
	s := newSource("a.md", []byte("ab\n\ncd"))
	for offset, want := range []string{"a.md:1:1", "a.md:1:2", "a.md:1:3", "a.md:2:1", "a.md:3:1", "a.md:3:2", "a.md:3:3"} {
		if got := s.at(offset).String(); got != want {
			t.Errorf("offset %d is at %s, want %s", offset, got, want)
		}
	}
}
