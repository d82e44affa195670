package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"stillroom/build"
	"stillroom/content"
	"stillroom/themes"
	"stillroom/validate"
)

// payloads are what must stay a text wherever it is written. Those that begin
// with "refused " may stand in no text at all.
var payloads = []string{
	`</script><script>alert(1)</script>`, `"><img src=x onerror=alert(1)>`, `' onmouseover='alert(1)`, `" autofocus onfocus="alert(1)`,
	`</title><svg onload=alert(1)>`, `--><script>alert(1)</script><!--`, `]]><x:script xmlns:x="http://www.w3.org/1999/xhtml">alert(1)</x:script>`,
	`javascript:alert(1)`, `[a](javascript:alert(1))`, `[a](data:text/html;base64,PHNjcmlwdD4=)`, `![a](https://evil.example/a.png)`, `<a href="vbscript:a()">a</a>`,
	`<iframe srcdoc="<script>alert(1)</script>">`, `<style>@import "//evil.example"</style>`, `<base href="//evil.example/">`, `<meta http-equiv="refresh" content="0;url=//evil.example">`,
	`{{.}} {{template "shell"}}`, `\"};alert(1);//`, `</textarea></noscript><math><mtext></table><mglyph><style><img src=x onerror=a()>`,
	`=HYPERLINK("https://evil.example")`, `END:VEVENT;BEGIN:VALARM,ACTION:AUDIO\n`, `&lt;script&gt;alert(1)&lt;/script&gt; &amp;amp;`, `../../../etc/passwd`, `%2e%2e%2f%00`,
	"refused \x1b]0;owned\x07", "refused a\u202eb", "refused a\u2028b", "refused \ufffe", "refused \u0000", "refused \u009b2J",
}

// A place is where an author may write: a file of which the third is replaced
// by the payload, quoted as YAML where it stands in the front matter.
type place struct{ name, file, text string }

// placesIn makes a place of each line that may be set, in a file that is right
// but for it.
func placesIn(t *testing.T) (all []place) {
	add := func(name, file, base, old, by string) {
		if !strings.Contains(base, old) {
			t.Fatalf("%s: no %q", name, old)
		}
		all = append(all, place{name, file, strings.Replace(base, old, by, 1)})
	}
	for _, p := range [][3]string{
		{"name", "name: Plum jam", "name: Q"}, {"summary", "summary: Plums.", "summary: Q"}, {"tags", "[shelf]", "[Q]"}, {"gear", "[a pot]", "[Q]"},
		{"cautions", "[Mind the pot.]", "[Q]"}, {"inspired_by", "my aunt", "Q"}, {"group", "the jam", "Q"}, {"line", "1 cup sugar", "Q"}, {"item", "item: plums", "item: Q"},
		{"note", "note: ripe", "note: Q"}, {"container", "container: tubs", "container: Q"}, {"set", "set: soft", "set: Q"}, {"batch note", "note: good", "note: Q"}, {"produce", "[plums]", "[plums, Q]"},
		{"formerly", "[/old/]", "[Q]"}, {"accept", "{batch-log: so", "{batch-log: Q"},
		{"paragraph", "Stir it.", "P"}, {"heading", "## To keep", "## P"}, {"step", "1. Stew.", "1. P"}, {"link words", "Stir it.", "[P](https://a.example/)"}, {"link", "Stir it.", "[a](P)"},
		{"angle link", "Stir it.", "[a](<P>)"}, {"link title", "Stir it.", "[a](/about/ \"P\")"}, {"reference", "Stir it.", "[a]\n\n[a]: P"}, {"picture", "Stir it.", "![P](x.png)"}, {"cell", "Stir it.", "| a |\n| - |\n| P |"},
		{"code", "Stir it.", "`P`"}, {"fence", "Stir it.", "```P\nP\n```"}, {"raw", "Stir it.", "<div>\nP\n</div>"}, {"footnote", "Stir it.", "a[^1]\n\n[^1]: P"}, {"quotation", "Stir it.", "> P"},
	} {
		add("recipe "+p[0], "content/recipes/N.md", plainRecipe, p[1], p[2])
	}
	for _, p := range [][3]string{
		{"name", "name: Plums", "name: Q"}, {"summary", "summary: Plums.", "summary: Q"}, {"chapter", "title: Welcome", "title: Q"}, {"link title", "title: More", "title: Q"},
		{"link address", "https://a.example/", "Q"}, {"audio", "https://a.example/a.mp3", "Q"}, {"next", "next: Pears", "next: Q"}, {"guid", "guid: N", "guid: Q"}, {"notes", "Notes.", "P"},
	} {
		add("episode "+p[0], "content/episodes/N.md", plainEpisode, p[1], p[2])
	}
	for _, p := range [][3]string{{"name", "name: N", "name: Q"}, {"summary", "summary: N.", "summary: Q"}, {"text", "Text.", "P"}} {
		add("page "+p[0], "content/pages/N.md", plainPage, p[1], p[2])
	}
	return all
}

const (
	plainRecipe = `---
name: Plum jam
summary: Plums.
published: 2026-08-01
kind: jam
produce: [plums]
yield: 6 half-pint jars
tags: [shelf]
gear: [a pot]
cautions: [Mind the pot.]
inspired_by: my aunt
formerly: [/old/]
accept: {batch-log: so it is}
ingredients:
  - for: the jam
    items: [1 cup sugar, {amount: 2 cups, item: plums, note: ripe}]
keeping:
  - {way: freezer, keeps: 6 months, headspace: 1/2 in, container: tubs}
batches:
  - {made: 2026-08-01, set: soft, note: good, public: true}
---
Stir it.

1. Stew.

## To keep

Freeze it.
`
	plainEpisode = `---
name: Plums
number: 1
published: 2026-08-01
summary: Plums.
audio: {address: "https://a.example/a.mp3", duration: 1 min, bytes: 1000, type: audio/mpeg}
chapters: [{at: 0:00, title: Welcome}]
links: [{title: More, address: "https://a.example/"}]
next: Pears
guid: N
---
Notes.
`
	plainPage     = "---\nname: N\nsummary: N.\n---\nText.\n"
	plainSettings = `name: Larder
tagline: Jars.
address: https://larder.example
author: {name: Ada, about: Cooks.}
programme:
  name: Talk
  summary: Of jars.
  category: Food
  explicit: false
  owner: {name: Ada, email: ada@larder.example}
  feed_id: 05f56159-bd34-5bd8-986d-a4f5fe2955d7
`
)

// A hostileCase is a payload in a place.
type hostileCase struct {
	place   place
	payload string
	refused bool // it must be
}

// write puts the case into a site, under a name of its own.
func (c hostileCase) write(fsys fstest.MapFS, n int) (file string) {
	slug := fmt.Sprintf("case-%d", n)
	file = strings.Replace(c.place.file, "N", slug, 1)
	text := strings.Replace(c.place.text, "N", slug, -1)
	text = strings.Replace(text, "number: 1", fmt.Sprintf("number: %d", n+1), 1)
	text = strings.Replace(text, "/old/", "/old/"+slug+"/", 1)
	quoted, _ := json.Marshal(c.payload)
	text = strings.NewReplacer("Plum", "Plum", "Pears", "Pears", "Q", string(quoted), "P", c.payload).Replace(text)
	fsys[file] = &fstest.MapFile{Data: []byte(text)}
	return file
}

// TestHostileTexts writes every payload in every place. Each is refused at a
// place in its file, or published as the text that it is.
func TestHostileTexts(t *testing.T) {
	fsys := fstest.MapFS{"content/site.yaml": {Data: []byte(plainSettings)}}
	cases := make(map[string]hostileCase)
	for _, p := range placesIn(t) {
		for _, payload := range payloads {
			payload, refused := strings.CutPrefix(payload, "refused ")
			c := hostileCase{p, payload, refused}
			cases[c.write(fsys, len(cases))] = c
		}
	}
	report, _ := judgeTree(t, fsys)
	refused := make(map[string]bool)
	for _, f := range report.Findings {
		if c, ours := cases[f.Pos.File]; ours && f.Severity == validate.Error {
			if f.Pos.Line < 1 || f.Pos.Col < 1 {
				t.Errorf("%s, %q: refused at no place: %s: %s", c.place.name, c.payload, f.Pos, f.Message)
			}
			refused[f.Pos.File] = true
			delete(fsys, f.Pos.File)
		}
	}
	counts := make(map[string][2]int)
	for file, c := range cases {
		kind, _, _ := strings.Cut(c.place.name, " ")
		n := counts[kind]
		if refused[file] {
			n[1]++
		} else if n[0]++; c.refused {
			t.Errorf("%s: %q is let pass", c.place.name, c.payload)
		}
		counts[kind] = n
	}
	for kind, n := range counts {
		t.Logf("%d cases in texts of a %s: %d are published as texts, %d refused", n[0]+n[1], kind, n[0], n[1])
	}
	wantHarmless(t, fsys, cases)
	saysNothingRaw(t, report)
}

// TestHostileSettings writes every payload in every text of site.yaml.
func TestHostileSettings(t *testing.T) {
	n, refused := 0, 0
	for _, payload := range payloads {
		payload, must := strings.CutPrefix(payload, "refused ")
		quoted, _ := json.Marshal(payload)
		text := plainSettings
		for _, old := range []string{"name: Larder", "tagline: Jars.", "name: Ada", "about: Cooks.", "name: Talk", "summary: Of jars.", "category: Food", "email: ada@larder.example", "feed_id: 05f56159-bd34-5bd8-986d-a4f5fe2955d7", "https://larder.example"} {
			key, _, ok := strings.Cut(old, ": ")
			by := key + ": " + string(quoted)
			if !ok {
				by = string(quoted)
			}
			n++
			try := strings.Replace(text, old, by, 1)
			fsys := fstest.MapFS{"content/site.yaml": {Data: []byte(try)}}
			report, ok := judgeTree(t, fsys)
			saysNothingRaw(t, report)
			switch {
			case ok && must:
				t.Errorf("%s: %q is let pass", old, payload)
			case ok:
				text = try
			default:
				refused++
			}
		}
		wantHarmless(t, fstest.MapFS{"content/site.yaml": {Data: []byte(text)}, "content/recipes/a.md": {Data: []byte(plainRecipe)}}, nil)
	}
	t.Logf("%d cases in site.yaml: %d are published as texts, %d refused", n, n-refused, refused)
}

func judgeTree(t *testing.T, fsys fstest.MapFS) (validate.Report, bool) {
	t.Helper()
	site, faults, err := content.Read(fsys, nil)
	if err != nil {
		t.Fatal(err)
	}
	report, _, ok := validate.Check(site, faults, content.Date{Year: 2026, Month: 11, Day: 25})
	return report, ok
}

// publishTree makes all files of a site that must pass.
func publishTree(t *testing.T, fsys fstest.MapFS) (files []build.File, site *content.Site) {
	t.Helper()
	site, faults, err := content.Read(fsys, nil)
	if err != nil {
		t.Fatal(err)
	}
	report, checked, ok := validate.Check(site, faults, content.Date{Year: 2026, Month: 11, Day: 25})
	if !ok {
		t.Fatal("what is left is refused: ", errorsOf(report))
	}
	theme, err := themes.Load(nil)
	if err != nil {
		t.Fatal(err)
	}
	if files, err = build.Site(checked, theme, nil); err != nil {
		t.Fatal(err)
	}
	return files, site
}

func errorsOf(report validate.Report) (all []string) {
	for _, f := range report.Findings {
		if f.Severity == validate.Error {
			all = append(all, fmt.Sprintf("%s: %s", f.Pos, f.Message))
		}
	}
	return all
}

// saysNothingRaw holds that no report has anything that a terminal obeys.
func saysNothingRaw(t *testing.T, report validate.Report) {
	t.Helper()
	var b bytes.Buffer
	writeText(&b, report, false)
	if i := bytes.IndexFunc(b.Bytes(), isObeyed); i >= 0 {
		t.Errorf("a report holds %q", b.Bytes()[max(0, i-60):min(b.Len(), i+20)])
	}
	b.Reset()
	if err := writeJSON(&b, report, nil); err != nil || !json.Valid(b.Bytes()) {
		t.Errorf("a report is no JSON: %v", err)
	}
}

func dataOf(t *testing.T, f build.File) []byte {
	t.Helper()
	data, err := f.Bytes()
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// TestHarmCanBeSeen damages a page and a feed in ways that must be found.
func TestHarmCanBeSeen(t *testing.T) {
	sound := func() map[string]string {
		return map[string]string{"a.html": `<!doctype html><p title="a">a</p>`, "a.xml": `<?xml version="1.0"?><a>b</a>`, "a.json": `{"a":1}`}
	}
	h := newHarms(sound())
	if found := h.in(sound()); len(found) > 0 {
		t.Fatal(found)
	}
	for name, texts := range map[string][]string{
		"a.html": {`<b>a</b>`, `<p onclick="a()">a</p>`, `<a href="java&#10;script:a()">a</a>`, `<script>a()</script>`, `<script src="//evil.example/a.js"></script>`, `<p style="a">`, "<p>\x1b", `<iframe>`, `<p title="a" class="b">`, "<p>\xff", "<p>\u202e",
			`<script type="application/ld+json">{"a":</script>`, `<img src="https://evil.example/a.png">`, `<a href="data:text/html,a">a</a>`},
		"a.xml":  {`<a>]]></b>`, "<a>\x08</a>", `<a>&nbsp;</a>`, `<a>`, `<a></a><b></b>`},
		"a.json": {`{"a":`, "{\"a\":\"\u2028\"}"},
	} {
		for _, text := range texts {
			damaged := sound()
			damaged[name] = text
			if len(h.in(damaged)) == 0 {
				t.Errorf("%s: nothing is found in %s", name, text)
			}
		}
	}
}
