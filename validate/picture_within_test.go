package validate

import (
	"testing"

	"stillroom/content"
)

func TestBrokenWithin(t *testing.T) {
	named := func(file, at string, line int) *content.Picture {
		return &content.Picture{File: content.Field[string]{V: file, Pos: content.Pos{File: at, Line: line, Col: 9}}}
	}
	s := &content.Site{
		Recipes: []*content.Recipe{
			{File: "b.md", Picture: named("plum.jpg", "b.md", 4)},
			{File: "a.md", Picture: named("pear.jpg", "a.md", 3), Pictures: []content.Picture{*named("plum.jpg", "a.md", 7)}},
		},
		Pictures: map[string]content.File{"plum.jpg": {Path: "content/pictures/plum.jpg"}, "pear.jpg": {Path: "content/pictures/pear.jpg"}},
	}
	rep := BrokenWithin(s, map[string]string{"plum.jpg": "plum.jpg is broken"})
	var got []string
	for _, f := range rep.Findings {
		got = append(got, f.String())
	}
	want := []string{
		"a.md:7:9: error: the picture plum.jpg is broken [picture-broken]",
		"b.md:4:9: error: the picture plum.jpg is broken [picture-broken]",
	}
	if len(got) != 2 || got[0] != want[0] || got[1] != want[1] || rep.Counts.Errors != 2 || rep.Counts.Recipes != 2 {
		t.Errorf("got %q, %+v; want %q", got, rep.Counts, want)
	}
}
