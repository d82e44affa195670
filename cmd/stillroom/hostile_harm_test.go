package main

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"fmt"
	"io"
	"net/url"
	"path"
	"strings"
	"testing"
	"testing/fstest"
	"time"
	"unicode"
	"unicode/utf8"

	"github.com/emersion/go-ical"
	"golang.org/x/net/html"

	"stillroom/build/calendar"
	"stillroom/content"
	"stillroom/validate"
)

// harms looks for what a published file must not hold. What it may is what the
// theme makes of harmless texts.
type harms struct {
	allowed map[string]bool // "p", and "p title"
	files   map[string]bool // that are published
}

// ofMarkdown is what a body may become: CommonMark, tables and footnotes.
const ofMarkdown = "a; a href; a title; code; code class; pre; em; strong; del; blockquote; ol; ol start; ul; li; li id; hr; br; h2; h2 id; h3; h3 id; h4; h4 id; sup; sup id; table; thead; tbody; tr; th; td; th scope; p; div; div class; div role; a class; a role; input; input type; input checked; input disabled; section; section class; section aria-label; section tabindex; " +
	"details; details class; details open; summary" // long lists are folded

func newHarms(harmless map[string]string) *harms {
	h := &harms{allowed: make(map[string]bool)}
	for _, what := range strings.Split(ofMarkdown, "; ") {
		h.allowed[what] = true
	}
	for name, text := range harmless {
		if path.Ext(name) == ".html" {
			eachElement(text, func(n *html.Node) {
				h.allowed[n.Data] = true
				for _, a := range n.Attr {
					h.allowed[n.Data+" "+a.Key] = true
				}
			})
		}
	}
	return h
}

// eachElement reads a page as browsers do.
func eachElement(page string, do func(*html.Node)) error {
	doc, err := html.Parse(strings.NewReader(page))
	if err != nil {
		return err
	}
	for n := range doc.Descendants() {
		if n.Type == html.ElementNode {
			do(n)
		}
	}
	return nil
}

// in lists the harms in files by their paths.
func (h *harms) in(files map[string]string) (found []string) {
	h.files = make(map[string]bool)
	for name := range files {
		h.files["/"+name] = true
	}
	for name, text := range files {
		for _, harm := range h.file(path.Ext(name), text) {
			found = append(found, name+": "+harm)
		}
	}
	return found
}

func (h *harms) file(ext, text string) (found []string) {
	switch ext {
	case ".html":
		found = append(found, h.page(text)...)
	case ".json":
		if !json.Valid([]byte(text)) {
			found = append(found, "is no JSON")
		}
	case ".xml", ".atom", ".svg":
		if err := wellFormed(text); err != nil {
			found = append(found, "is no XML: "+err.Error())
		}
	case ".txt", ".vtt", "":
	default:
		return nil
	}
	for i, r := range text {
		switch {
		case r == utf8.RuneError && !strings.HasPrefix(text[i:], "\ufffd"), unicode.IsControl(r) && r != '\n' && r != '\t' && r != '\r', unicode.Is(unicode.Bidi_Control, r), r == 0x2028, r == 0xfffe, r == 0xffff:
			return append(found, fmt.Sprintf("holds %q", text[max(0, i-40):min(len(text), i+10)]))
		}
	}
	return found
}

func (h *harms) page(text string) (found []string) {
	err := eachElement(text, func(n *html.Node) {
		if !h.allowed[n.Data] {
			found = append(found, "has an element <"+n.Data+">")
		}
		attrs := make(map[string]string)
		for _, a := range n.Attr {
			attrs[a.Key] = a.Val
			if key := strings.ToLower(a.Key); !h.allowed[n.Data+" "+a.Key] || strings.HasPrefix(key, "on") || key == "style" || key == "srcdoc" {
				found = append(found, fmt.Sprintf("has <%s %s=%q>", n.Data, a.Key, a.Val))
			}
		}
		found = append(found, h.leads(n.Data, attrs)...)
		if n.Data == "script" && attrs["src"] == "" && (attrs["type"] != "application/ld+json" || n.FirstChild == nil || !json.Valid([]byte(n.FirstChild.Data))) {
			found = append(found, "has a script of its own")
		}
	})
	if err != nil {
		found = append(found, err.Error())
	}
	return found
}

// leads looks at where an element leads: only links leave the site, and only to
// the web and to letters.
func (h *harms) leads(element string, attrs map[string]string) (found []string) {
	for _, key := range []string{"href", "src", "action", "formaction", "data", "poster", "xlink:href", "cite", "background"} {
		to, ok := attrs[key]
		if !ok {
			continue
		}
		plain := strings.Map(func(r rune) rune { // URL Standard, 4.4: browsers pass over these
			if r <= ' ' {
				return -1
			}
			return r
		}, to)
		u, err := url.Parse(plain)
		link := element == "a" || element == "link" && attrs["rel"] != "stylesheet"
		switch {
		case err != nil:
			if !strings.HasPrefix(plain, "/") && !strings.HasPrefix(plain, "#") && !strings.HasPrefix(plain, "https://") {
				found = append(found, fmt.Sprintf("leads to %q", to))
			}
		case link && (u.Scheme == "" || u.Scheme == "https" || u.Scheme == "http" || u.Scheme == "mailto"), strings.HasPrefix(plain, "#"):
		case u.Scheme == "" && u.Host == "" && h.files[u.Path]:
		case (element == "audio" || element == "source") && u.Scheme == "https": // of a recording elsewhere
		default:
			found = append(found, fmt.Sprintf("loads %q", to))
		}
	}
	return found
}

// wellFormed reads XML to its end: one element, and no character that XML 1.0,
// 2.2, has no place for.
func wellFormed(text string) error {
	d := xml.NewDecoder(strings.NewReader(text))
	depth, roots := 0, 0
	for {
		t, err := d.Token()
		if err == io.EOF && roots == 1 {
			return nil
		}
		if err != nil {
			return err
		}
		switch t.(type) {
		case xml.StartElement:
			if depth == 0 {
				roots++
			}
			depth++
		case xml.EndElement:
			depth--
		}
		if roots > 1 {
			return fmt.Errorf("%d roots", roots)
		}
	}
}

// wantHarmless publishes a site, and holds every file against what the theme
// makes of harmless texts, and the data of recipes against what was meant.
func wantHarmless(t *testing.T, fsys fstest.MapFS, cases map[string]hostileCase) {
	t.Helper()
	files, site := publishTree(t, fsys)
	texts := make(map[string]string)
	for _, f := range files {
		texts[f.Path] = string(dataOf(t, f))
	}
	for _, harm := range newHarms(harmlessFiles(t)).in(texts) {
		t.Error(harm)
	}
	for file, c := range cases {
		slug := strings.TrimSuffix(path.Base(file), ".md")
		data, ok := texts["recipes/"+slug+"/recipe.json"]
		key := map[string]string{"recipe name": "name", "recipe summary": "description"}[c.place.name]
		if key == "" || !ok {
			continue
		}
		var got map[string]any
		if err := json.Unmarshal([]byte(data), &got); err != nil || got[key] != c.payload {
			t.Errorf("%s: %s %q, want %q (%v)", file, key, got[key], c.payload, err)
		}
	}
	wantCalendar(t, site)
}

// wantCalendar reads the calendar as programs do.
func wantCalendar(t *testing.T, site *content.Site) {
	t.Helper()
	data := calendar.Of(site, content.Date{Year: 2026, Month: time.May, Day: 1}, 12).ICalendar()
	if data == nil {
		return
	}
	cal, err := ical.NewDecoder(bytes.NewReader(data)).Decode()
	if err != nil {
		t.Errorf("the calendar cannot be read: %v", err)
		return
	}
	best := make(map[string]int) // events by the names of their recipes
	for _, c := range cal.Children {
		if c.Name != ical.CompEvent || len(c.Children) > 0 {
			t.Errorf("the calendar holds %s", c.Name)
		}
		name, err := c.Props.Text(ical.PropSummary)
		if name, ok := strings.CutPrefix(name, "Best used by today: "); ok && err == nil {
			best[name]++
		}
	}
	for _, r := range site.Recipes {
		if len(r.Batches) > 0 && r.Batches[0].Made.Set() && best[r.Name.V] == 0 {
			t.Errorf("the calendar has no event with the name %q", r.Name.V)
		}
	}
	for line := range strings.SplitSeq(strings.TrimSuffix(string(data), "\r\n"), "\r\n") { // RFC 5545, 3.1
		if len(line) > 75 || strings.ContainsAny(line, "\r\n") || !utf8.ValidString(line) {
			t.Errorf("the calendar has a line %q", line)
		}
	}
}

// harmlessFiles are those of a site in which every place holds a word. They are
// made once.
func harmlessFiles(t *testing.T) map[string]string {
	t.Helper()
	if harmless != nil {
		return harmless
	}
	fsys := fstest.MapFS{"content/site.yaml": {Data: []byte(plainSettings)}}
	for i, p := range placesIn(t) {
		hostileCase{place: p, payload: "plum"}.write(fsys, i)
	}
	report, _ := judgeTree(t, fsys)
	for _, f := range report.Findings {
		if f.Severity == validate.Error {
			delete(fsys, f.Pos.File)
		}
	}
	files, _ := publishTree(t, fsys)
	harmless = make(map[string]string)
	for _, f := range files {
		harmless[f.Path] = string(dataOf(t, f))
	}
	return harmless
}

var harmless map[string]string
