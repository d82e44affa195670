package editor

import (
	"bytes"
	"slices"
	"strings"
	"testing"
)

// A case of TestSpot has the cursor at the sign ‸.
func TestSpot(t *testing.T) {
	for _, test := range []struct {
		name, text, path, word string
		asKey                  bool
		beside                 string
	}{
		{"a key at the left", "---\nname: Jam\nki‸\n---\n", "", "ki", true, "name"},
		{"an empty line", "---\nname: Jam\n‸\nkind: jam\n---\n", "", "", true, "name kind"},
		{"a value", "---\nkind: ja‸m\n---\n", "kind", "jam", false, ""},
		{"a value that is not there yet", "---\nkind: ‸\n---\n", "kind", "", false, ""},
		{"an entry of a list in brackets", "---\nproduce: [plums, da‸]\n---\n", "produce", "da", false, ""},
		{"an entry of a list of dashes", "---\nproduce:\n  - plums\n  - da‸\n---\n", "produce", "da", true, ""},
		{"a dash as far left as its key", "---\nproduce:\n- da‸\n---\n", "produce", "da", true, ""},
		{"a key of an entry", "---\nkeeping:\n  - way: freezer\n    pr‸\n---\n", "keeping", "pr", true, "way"},
		{"the first key of the second entry", "---\nkeeping:\n  - way: freezer\n    keeps: 1 year\n  - w‸\n---\n", "keeping", "w", true, ""},
		{"a value of an entry", "---\nkeeping:\n  - way: freezer\n  - way: boiling-water\n    process: plum‸-preserves\n---\n", "keeping process", "plum-preserves", false, ""},
		{"a key in braces", "---\nkeeping: [{way: freezer, ke‸, pack: hot}]\n---\n", "keeping", "ke", true, "way pack"},
		{"a value in braces", "---\nkeeping: [{way: boiling-water, process: plum‸}]\n---\n", "keeping process", "plum", false, ""},
		{"deep in braces", "---\nkeeping:\n  - processing: [{jar: half-‸}]\n---\n", "keeping processing jar", "half-", false, ""},
		{"deep in lines", "---\nkeeping:\n  - way: boiling-water\n    processing:\n      - jar: half-pint\n        altitude:\n          0-1,000 ft: 5‸ min\n---\n", "keeping processing altitude", "5", false, ""},
		{"a bracket in quotes", "---\nname: \"a { b\"\nkind: ‸\n---\n", "kind", "", false, ""},
		{"behind a comment", "---\n# kind: jam\nki‸\n---\n", "", "ki", true, ""},
	} {
		at := strings.Index(test.text, "‸")
		p := newPaper([]byte(strings.Replace(test.text, "‸", "", 1)), true)
		where := p.at(at)
		s, ok := spotAt(p, "content/recipes/a.md", where.Line, at-p.lines[where.Line])
		if !ok {
			t.Errorf("%s: no spot", test.name)
			continue
		}
		if got := strings.Join(s.path, " "); got != test.path || s.word != test.word || s.asKey != test.asKey || strings.Join(s.beside, " ") != test.beside {
			t.Errorf("%s: path %q, word %q, key %v, beside %q; want %q, %q, %v, %q", test.name, got, s.word, s.asKey, s.beside, test.path, test.word, test.asKey, test.beside)
		}
	}
}

func TestNoSpot(t *testing.T) {
	for _, text := range []string{"---\nname: Jam\n---\nA bo‸dy.\n", "---\nname: Jam # a no‸te\n---\n", "no front ma‸tter\n"} {
		at := strings.Index(text, "‸")
		p := newPaper([]byte(strings.Replace(text, "‸", "", 1)), true)
		where := p.at(at)
		if s, ok := spotAt(p, "content/recipes/a.md", where.Line, at-p.lines[where.Line]); ok {
			t.Errorf("%q: spot %+v", text, s)
		}
	}
}

// The examples of the protocol: in "a𐐀b" the character 𐐀 takes two code units.
func TestPositions(t *testing.T) {
	p := newPaper([]byte("a𐐀b\r\nzwölf\rc\n"), true)
	for _, test := range []struct {
		offset int
		want   position
	}{{0, position{0, 0}}, {1, position{0, 1}}, {5, position{0, 3}}, {8, position{1, 0}}, {12, position{1, 3}}, {15, position{2, 0}}, {17, position{3, 0}}} {
		if got := p.at(test.offset); got != test.want {
			t.Errorf("at %d is %v, want %v", test.offset, got, test.want)
		}
		if got := p.offset(test.want); got != test.offset {
			t.Errorf("%v is at %d, want %d", test.want, got, test.offset)
		}
	}
	if got := p.offset(position{0, 2}); got != 1 {
		t.Errorf("between two code units is at %d, want 1", got)
	}
	if got := p.offset(position{9, 9}); got != len(p.text) {
		t.Errorf("past the end is at %d, want %d", got, len(p.text))
	}
}

// FuzzEdits holds that an edit by positions is the edit of the bytes between
// them, and that the edits between two papers make one of the other.
func FuzzEdits(f *testing.F) {
	f.Add("a𐐀b\r\nzwölf\n", "neu\n", uint(1), uint(2), true)
	f.Add("---\nname: Jam\n---\n", "", uint(4), uint(9), false)
	f.Fuzz(func(t *testing.T, text, put string, i, j uint, wide bool) {
		p := newPaper([]byte(text), wide)
		from, to := p.at(int(i%uint(len(text)+1))), p.at(int(j%uint(len(text)+1)))
		if p.offset(from) > p.offset(to) {
			from, to = to, from
		}
		got, err := p.change([]contentChange{{&textRange{from, to}, put}})
		if err != nil {
			t.Fatal(err)
		}
		want := text[:p.offset(from)] + put + text[p.offset(to):]
		if string(got.text) != want {
			t.Fatalf("got %q, want %q", got.text, want)
		}
		edits := editsBetween(p, got)
		slices.Reverse(edits) // each names lines of the text as it was
		back := p
		for _, e := range edits {
			if back, err = back.change([]contentChange{{&e.Range, e.NewText}}); err != nil {
				t.Fatal(err)
			}
		}
		if !bytes.Equal(back.text, got.text) {
			t.Fatalf("the edits make %q, want %q", back.text, got.text)
		}
		for line := range p.lines {
			spotAt(p, "content/recipes/a.md", line, len(p.line(line)))
		}
	})
}
