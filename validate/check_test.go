package validate

import (
	"testing"

	"stillroom/content"
)

func TestReportIn(t *testing.T) {
	at := func(file string, line int) Finding { return Finding{Pos: content.Pos{File: file, Line: line}} }
	r := Report{Findings: []Finding{at("b.md", 1), at("b.md", 2), at("d.md", 1)}}
	for file, want := range map[string]int{"a.md": 0, "b.md": 2, "c.md": 0, "d.md": 1, "e.md": 0} {
		got := r.In(file)
		if len(got) != want || cap(got) != want {
			t.Errorf("in %s there are %d findings, with room for %d", file, len(got), cap(got))
		}
		for _, f := range got {
			if f.Pos.File != file {
				t.Errorf("in %s there is one of %s", file, f.Pos.File)
			}
		}
	}
	if got := (Report{}).In("a.md"); len(got) != 0 {
		t.Errorf("in nothing there is %v", got)
	}
}
