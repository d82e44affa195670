package content

import (
	"bytes"
	"strings"
	"testing"
)

// patched makes a change in a recipe whose front matter is given.
func patched(t *testing.T, matter string, change func(Place)) string {
	t.Helper()
	p, faults := NewPatch("a.md", []byte("---\n"+matter+"---\nBody.\n"), RecipeKeys)
	if p == nil {
		t.Fatalf("%q: %v", matter, faults)
	}
	change(p.Top())
	out, faults := p.Bytes()
	if faults != nil {
		t.Fatalf("%q: %v", matter, faults)
	}
	rest, ok1 := strings.CutPrefix(string(out), "---\n")
	rest, ok2 := strings.CutSuffix(rest, "---\nBody.\n")
	if !ok1 || !ok2 {
		t.Fatalf("%q: what was not to be changed was: %q", matter, out)
	}
	return rest
}

func TestPatch(t *testing.T) {
	text := func(key, value string) func(Place) {
		return func(t Place) { t.Entries("keeping")[0].Set(key, Writing{Text: value}) }
	}
	bands := Writing{Pairs: []Pair{{"0-1,000 ft", Writing{Text: "10 min"}}, {"above 1,000 ft", Writing{Text: "15 min"}}}}
	list := Writing{List: []Writing{{Pairs: []Pair{{"jar", Writing{Text: "pint"}}, {"altitude", bands}}}}}
	headspace, jars := text("headspace", "1/2 in"), func(t Place) { t.Entries("keeping")[0].Set("processing", list) }
	table := func(t Place) { t.Entries("keeping")[0].Entries("processing")[0].Set("altitude", bands) }
	for _, c := range []struct {
		say    string
		in     string
		change func(Place)
		want   string
	}{
		{say: "a text", in: "keeping:\n  - way: pressure\n    headspace: 1 in # say so\n    keeps: 1 year\n", change: headspace,
			want: "keeping:\n  - way: pressure\n    headspace: 1/2 in # say so\n    keeps: 1 year\n"},
		{say: "a text in quotation marks", in: "keeping:\n  - way: pressure\n    headspace: 'it''s' # say so\n", change: headspace,
			want: "keeping:\n  - way: pressure\n    headspace: 1/2 in # say so\n"},
		{say: "a text over two lines", in: "keeping:\n  - way: pressure\n    headspace: 1\n      in # say so\n    keeps: 1 year\n", change: headspace,
			want: "keeping:\n  - way: pressure\n    headspace: 1/2 in # say so\n    keeps: 1 year\n"},
		{say: "a text below its key", in: "keeping:\n  - way: pressure\n    headspace:\n      1 in\n", change: headspace,
			want: "keeping:\n  - way: pressure\n    headspace:\n      1/2 in\n"},
		{say: "nothing", in: "keeping:\n  - way: pressure\n    headspace:\n    keeps: 1 year\n", change: headspace,
			want: "keeping:\n  - way: pressure\n    headspace: 1/2 in\n    keeps: 1 year\n"},
		{say: "nothing but a comment", in: "keeping:\n  - way: pressure\n    headspace: # say so\n", change: headspace,
			want: "keeping:\n  - way: pressure\n    headspace: 1/2 in # say so\n"},
		{say: "null", in: "keeping:\n  - way: pressure\n    headspace: ~\n", change: headspace,
			want: "keeping:\n  - way: pressure\n    headspace: 1/2 in\n"},
		{say: "a list on a line", in: "keeping:\n  - way: pressure\n    headspace: [1 in, 2 in] # two\n", change: headspace,
			want: "keeping:\n  - way: pressure\n    headspace: 1/2 in # two\n"},
		{say: "lines", in: "keeping:\n  - way: pressure\n    headspace:\n      - 1 in # low\n      # or\n      - 2 in\n    keeps: 1 year\n", change: headspace,
			want: "keeping:\n  - way: pressure\n    headspace: 1/2 in\n      # low\n      # or\n    keeps: 1 year\n"},
		{say: "a new key", in: "keeping:\n  - way: pressure\n    process: x # of mine\n    # then\n    keeps: 1 year\n", change: headspace,
			want: "keeping:\n  - way: pressure\n    process: x # of mine\n    headspace: 1/2 in\n    # then\n    keeps: 1 year\n"},
		{say: "a new key at the end", in: "keeping:\n-   way: pressure\n-   way: freezer\ntags: [a]\n", change: headspace,
			want: "keeping:\n-   way: pressure\n    headspace: 1/2 in\n-   way: freezer\ntags: [a]\n"},
		{say: "a new key after a hyphen on a line of its own", in: "keeping:\n  -\n    way: pressure\n  -\n    way: freezer\n", change: headspace,
			want: "keeping:\n  -\n    way: pressure\n    headspace: 1/2 in\n  -\n    way: freezer\n"},
		{say: "a new key before all others", in: "keeping:\n  - keeps: 1 year\n    way: pressure\n", change: text("way", "freezer"),
			want: "keeping:\n  - keeps: 1 year\n    way: freezer\n"},
		{say: "a first key that is new", in: "keeping:\n  - keeps: 1 year\n", change: headspace,
			want: "keeping:\n  - headspace: 1/2 in\n    keeps: 1 year\n"},
		{say: "brackets", in: "keeping:\n  - {way: pressure, headspace: 1 in, keeps: 1 year}\n", change: headspace,
			want: "keeping:\n  - {way: pressure, headspace: 1/2 in, keeps: 1 year}\n"},
		{say: "a new key in brackets", in: "keeping: [{way: pressure, keeps: 1 year}]\n", change: headspace,
			want: "keeping: [{way: pressure, headspace: 1/2 in, keeps: 1 year}]\n"},
		{say: "a new key after the comma of a number", in: "keeping: [{way: pressure, process: 4,500 ft, keeps: 1 year}]\n", change: headspace,
			want: "keeping: [{way: pressure, process: 4,500 ft, headspace: 1/2 in, keeps: 1 year}]\n"},
		{say: "a first key in brackets", in: "keeping: [{keeps: 1 year}]\n", change: headspace,
			want: "keeping: [{headspace: 1/2 in, keeps: 1 year}]\n"},
		{say: "empty brackets", in: "keeping: [{}]\n", change: headspace, want: "keeping: [{headspace: 1/2 in}]\n"},
		{say: "nothing in brackets", in: "keeping: [{headspace:, keeps: 1 year}]\n", change: headspace,
			want: "keeping: [{headspace: 1/2 in, keeps: 1 year}]\n"},
		{say: "brackets over lines", in: "keeping:\n  - {way: pressure, # under steam\n     headspace: \"1 in\", # low\n     keeps: 1 year}\n", change: headspace,
			want: "keeping:\n  - {way: pressure, # under steam\n     headspace: 1/2 in, # low\n     keeps: 1 year}\n"},
		{say: "a new list", in: "keeping:\n  - way: pressure\n    keeps: 1 year\n", change: jars,
			want: "keeping:\n  - way: pressure\n    processing:\n      - jar: pint\n        altitude:\n          0-1,000 ft: 10 min\n          above 1,000 ft: 15 min\n    keeps: 1 year\n"},
		{say: "a new list, written as the others are", in: "times:\n    cooking: 1 h\nkeeping:\n-   way: pressure\n    keeps: 1 year\n", change: jars,
			want: "times:\n    cooking: 1 h\nkeeping:\n-   way: pressure\n    processing:\n    -   jar: pint\n        altitude:\n            0-1,000 ft: 10 min\n            above 1,000 ft: 15 min\n    keeps: 1 year\n"},
		{say: "a list for a text", in: "keeping:\n  - way: pressure\n    processing: pints # only\n    keeps: 1 year\n", change: jars,
			want: "keeping:\n  - way: pressure\n    processing: # only\n      - jar: pint\n        altitude:\n          0-1,000 ft: 10 min\n          above 1,000 ft: 15 min\n    keeps: 1 year\n"},
		{say: "a new list in brackets", in: "keeping: [{way: pressure}]\n", change: jars,
			want: "keeping: [{way: pressure, processing: [{jar: pint, altitude: {\"0-1,000 ft\": 10 min, \"above 1,000 ft\": 15 min}}]}]\n"},
		{say: "a table on lines", in: "keeping:\n  - processing:\n      - jar: pint\n        altitude: # minutes\n            0-500 ft: 3 min # at sea\n            # then\n            501-900 ft: 4 min\n    keeps: 1 year\n", change: table,
			want: "keeping:\n  - processing:\n      - jar: pint\n        altitude: # minutes\n            # at sea\n            # then\n            0-1,000 ft: 10 min\n            above 1,000 ft: 15 min\n    keeps: 1 year\n"},
		{say: "a table in brackets", in: "keeping:\n  - processing:\n      - jar: pint\n        altitude: {0-1,000 ft: 3 min} # minutes\n", change: table,
			want: "keeping:\n  - processing:\n      - jar: pint\n        altitude: {\"0-1,000 ft\": 10 min, \"above 1,000 ft\": 15 min} # minutes\n"},
		{say: "a table in brackets over lines", in: "keeping:\n  - processing:\n      - jar: pint\n        altitude: {0-1,000 ft: 3 min, # low\n          above 1,000 ft: 4 min} # high\n    keeps: 1 year\n", change: table,
			want: "keeping:\n  - processing:\n      - jar: pint\n        altitude: {\"0-1,000 ft\": 10 min, \"above 1,000 ft\": 15 min} # high\n        # low\n    keeps: 1 year\n"},
		{say: "a band", in: "keeping:\n  - processing:\n      - jar: pint\n        altitude: {0-1,000 ft: 3 min, above 1,000 ft: 4 min}\n",
			change: func(t Place) {
				below, _ := t.Entries("keeping")[0].Entries("processing")[0].Under("altitude")
				below.Set("0-1,000 ft", Writing{Text: "10 min"})
			},
			want: "keeping:\n  - processing:\n      - jar: pint\n        altitude: {0-1,000 ft: 10 min, above 1,000 ft: 4 min}\n"},
		{say: "two new keys", in: "keeping:\n  - way: pressure\n", change: func(t Place) {
			text("pack", "hot")(t)
			text("headspace", "1/2 in")(t)
		}, want: "keeping:\n  - way: pressure\n    pack: hot\n    headspace: 1/2 in\n"},
		{say: "a key at the top", in: "summary: >\n  Long.\n\n  And wide.\nkeeping:\n  - way: freezer\n    # cold\n\n# labels\ntags: [a]\n", change: func(t Place) {
			t.Set("checked", Writing{Pairs: []Pair{{"edition", Writing{Text: "2026-11-25"}}, {"date", Writing{Text: "2026-11-30"}}}})
		}, want: "summary: >\n  Long.\n\n  And wide.\nkeeping:\n  - way: freezer\n    # cold\nchecked:\n  edition: 2026-11-25\n  date: 2026-11-30\n\n# labels\ntags: [a]\n"},
	} {
		if got := patched(t, c.in, c.change); got != c.want {
			t.Errorf("%s\ngot\n%s\nwant\n%s", c.say, got, c.want)
		}
		crlf := func(s string) string { return strings.ReplaceAll("---\n"+s+"---\nBody.\n", "\n", "\r\n") }
		p, _ := NewPatch("a.md", []byte("\uFEFF"+crlf(c.in)), RecipeKeys)
		c.change(p.Top())
		if got, _ := p.Bytes(); string(got) != "\uFEFF"+crlf(c.want) {
			t.Errorf("%s, with a byte order mark and CRLF: got %q, want %q", c.say, got, crlf(c.want))
		}
	}
}

func TestPatchRefuses(t *testing.T) {
	for _, c := range []struct{ in, want string }{
		{"keeping: [{way: pressure}]", "a.md:1:1: there is no front matter"},
		{"---\nkeeping: [{way: pressure}]\n", "a.md:1:1: the front matter is never closed"},
		{"---\nkeeping: [{way: pressure}\n---\n", "a.md:3:1: a list in square brackets"},
		{"---\n- keeping\n---\n", "a.md:1:1: there are no keys to change"},
		{"---\n---\n", ""},
		{"\xff\xfe-\x00", "a.md:1:1: the file is UTF-16"},
	} {
		p, faults := NewPatch("a.md", []byte(c.in), RecipeKeys)
		got := ""
		if len(faults) > 0 {
			got = faults[0].Pos.String() + ": " + faults[0].Message
		}
		if !strings.HasPrefix(got, c.want) || (p == nil) != (c.want != "") {
			t.Errorf("%q: %q, want %q", c.in, got, c.want)
		}
	}
	for _, c := range []struct{ in, want string }{
		{"keeping:\n  - way: pressure\n    headspace: |\n      1 in\n", "4:16: this value is written as a text of several lines"},
		{"keeping:\n  - way: pressure\n    headspace: &a 1 in\n", "4:16: what begins with *, & or !"},
		{"keeping: [{way: pressure, headspace}]\n", "2:27: there is no colon after this key"},
	} {
		p, _ := NewPatch("a.md", []byte("---\n"+c.in+"---\n"), RecipeKeys)
		p.Top().Entries("keeping")[0].Set("headspace", Writing{Text: "1/2 in"})
		out, faults := p.Bytes()
		if out != nil || len(faults) == 0 || !strings.HasPrefix(faults[0].Pos.String()+": "+faults[0].Message, "a.md:"+c.want) {
			t.Errorf("%q: %q, %v, want %q", c.in, out, faults, c.want)
		}
	}
}

// A patch that changes nothing gives back every byte, whatever stands there.
func TestPatchOfNothing(t *testing.T) {
	for _, in := range []string{"---\nname: A\n---", "\uFEFF---\r\nname: A\r\n---\r\n\r\n", "\n\n---\nname: \"\\u00bd\" # ½\n---\nB\x01dy\n"} {
		p, faults := NewPatch("a.md", []byte(in), RecipeKeys)
		if p == nil {
			t.Fatalf("%q: %v", in, faults)
		}
		if got, _ := p.Bytes(); !bytes.Equal(got, []byte(in)) {
			t.Errorf("%q became %q", in, got)
		}
	}
}
