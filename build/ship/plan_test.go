package ship

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"stillroom/build"
)

// What there is at a place, what the list says of it, and what a run makes of
// that for a site of one page with one style.
func TestPlan(t *testing.T) {
	page := parcel{build.File{Path: "recipes/jam/index.html"}, 10, "page"}
	style := parcel{build.File{Path: "assets/style.1.css"}, 20, "style"}
	at := func(size int64, stamp string) found { return found{size: size, stamp: stamp} }
	both := map[string]entry{page.Path: {"page", 10, "t"}, style.Path: {"style", 20, "t"}}
	there := map[string]found{page.Path: at(10, "t"), style.Path: at(20, "t")}
	with := func(more map[string]found) map[string]found {
		all := maps.Clone(there)
		maps.Copy(all, more)
		return all
	}
	tests := []struct {
		name                  string
		list                  map[string]entry
		there                 map[string]found
		send, remove, foreign string
		fault                 string
	}{
		{"nothing is there", nil, nil, style.Path + " " + page.Path, "", "", ""},
		{"all is there", both, there, "", "", "", ""},
		{"somebody changed a page", both, with(map[string]found{page.Path: at(10, "u")}), page.Path, "", "", ""},
		{"somebody removed the style", both, map[string]found{page.Path: at(10, "t")}, style.Path, "", "", ""},
		{"another edition", map[string]entry{page.Path: {"old", 10, "t"}, style.Path: both[style.Path]}, there, page.Path, "", "", ""},
		{"a run broke off", map[string]entry{page.Path: {}, style.Path: both[style.Path]}, there, page.Path, "", "", ""},
		{"the list is lost", nil, there, "", "", "", "--take-over"},
		{"a file is not ours", both, with(map[string]found{"mine.txt": at(1, "t")}), "", "", "mine.txt", ""},
		{"so is a folder", both, with(map[string]found{"photos": {kind: folder}}), "", "", "photos/", ""},
		{"a link is in the way", nil, map[string]found{"recipes": {kind: link}}, "", "", "", "recipes is in the way of recipes/jam/index.html"},
		{"a folder is in the way", both, map[string]found{page.Path: {kind: folder}}, "", "", "", "is in the way"},
		{"a listing that leads out", both, with(map[string]found{"../b.css" + moving: at(3, "t"), "a//b": at(1, "t")}), "", "", "../b.css" + moving + " a//b", ""},
		{"half a file was left", both, with(map[string]found{"assets/b.css" + moving: at(3, "t")}), "", "assets/b.css" + moving, "", ""},
		{
			"what is no more goes, pages first", map[string]entry{page.Path: both[page.Path], style.Path: both[style.Path], "assets/old.css": {}, "about/index.html": {}},
			with(map[string]found{"assets/old.css": at(1, "t"), "about/index.html": at(1, "t")}), "", "about/index.html assets/old.css", "", "",
		},
	}
	for _, tt := range tests {
		p, err := plan([]parcel{page, style}, tt.list, tt.there, false)
		if tt.fault != "" || err != nil {
			if err == nil || tt.fault == "" || !strings.Contains(err.Error(), tt.fault) {
				t.Errorf("%s: error %v, want one with %q", tt.name, err, tt.fault)
			}
			continue
		}
		var send []string
		for _, c := range p.Send {
			send = append(send, c.Path)
		}
		for _, s := range []struct{ what, got, want string }{
			{"sends", strings.Join(send, " "), tt.send},
			{"removes", strings.Join(p.Remove, " "), tt.remove},
			{"leaves", strings.Join(p.Foreign, " "), tt.foreign},
		} {
			if s.got != s.want {
				t.Errorf("%s: %s %q, want %q", tt.name, s.what, s.got, s.want)
			}
		}
	}
	p, err := plan([]parcel{page, style}, nil, there, true)
	if err != nil || len(p.Send) != 2 {
		t.Errorf("--take-over: %v, %v", p, err)
	}
}

// What pages point at is there before them, feeds before the pages that change,
// and the home page is last.
func TestTurns(t *testing.T) {
	inTurn := []struct {
		path  string
		isNew bool
	}{
		{"show-notes/damsons/damsons.mp3", true},
		{"recipes/new/index.html", true},
		{"recipes.atom", false},
		{"recipes/old/index.html", false},
		{"recipes/index.html", false},
		{"index.html", false},
	}
	for i := range inTurn[1:] {
		if turnOf(inTurn[i].path, inTurn[i].isNew) >= turnOf(inTurn[i+1].path, inTurn[i+1].isNew) {
			t.Errorf("%s is not before %s", inTurn[i].path, inTurn[i+1].path)
		}
	}
	if turnOf("recipes/old/index.html.gz", false) != turnOf("recipes/old/index.html", false) {
		t.Error("a compressed copy does not go with its page")
	}
}

func TestList(t *testing.T) {
	list := map[string]entry{
		"index.html":                    {"ab12", 7, "1700000000"},
		"show-notes/a b/a\u00a0b.mp3":   {"cd34", 100_000_000, "e-tag"},
		"recipes/on-its-way/index.html": {},
	}
	if got := readList(writeList(list)); !maps.Equal(got, list) {
		t.Errorf("%v was written and %v read", list, got)
	}
	if readList([]byte("something else")) != nil || readList(nil) != nil {
		t.Error("a list was read that is none of ours")
	}
	for _, at := range []string{"../other/index.html", "/etc/passwd", "a/../../b", "a//b", ".", ""} {
		if got := readList([]byte(build.ListHead + at + "\nab\t1\tt\t" + at + "\n")); len(got) > 0 {
			t.Errorf("a list has us answer for %q", at)
		}
	}
	damaged := readList([]byte(build.ListHead + "ab\tmany\tt\tindex.html\nrecipes.atom\n"))
	if !slices.Equal(slices.Sorted(maps.Keys(damaged)), []string{"index.html", "recipes.atom"}) || damaged["index.html"].sum != "" {
		t.Errorf("a damaged list: %v", damaged)
	}
}
