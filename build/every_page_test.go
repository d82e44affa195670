package build

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"net/url"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
	"github.com/tdewolff/parse/v2"
	"github.com/tdewolff/parse/v2/html"
)

// An element is a start tag, and the text up to the next tag.
type element struct {
	name  string
	attrs map[string]string
	text  string
}

// voids have no end tag. https://html.spec.whatwg.org/#void-elements
var voids = strings.Fields("area base br col embed hr img input link meta source track wbr")

// elements reads a page, whose end tags must all be there and in order. What is
// inside a drawing is passed over.
func elements(page []byte) ([]element, error) {
	var all []element
	var open []string
	l := html.NewLexer(parse.NewInputBytes(slices.Clone(page)))
	for {
		kind, data := l.Next()
		switch kind {
		case html.ErrorToken:
			if l.Err() != io.EOF {
				return nil, l.Err()
			}
			if len(open) > 0 {
				return nil, fmt.Errorf("%v are not ended", open)
			}
			return all, nil
		case html.StartTagToken:
			name := string(l.Text())
			all = append(all, element{name: name, attrs: map[string]string{}})
			if !slices.Contains(voids, name) {
				open = append(open, name)
			}
		case html.AttributeToken:
			value := strings.Trim(string(l.AttrVal()), `"`)
			all[len(all)-1].attrs[strings.ToLower(string(l.Text()))] = unescape.Replace(value)
		case html.TextToken:
			if len(all) > 0 {
				all[len(all)-1].text += string(data)
			}
		case html.EndTagToken:
			name := string(l.Text())
			if len(open) == 0 || open[len(open)-1] != name {
				return nil, fmt.Errorf("</%s> inside %v", name, open)
			}
			open = open[:len(open)-1]
		}
	}
}

var unescape = strings.NewReplacer("&amp;", "&", "&#34;", `"`, "&#39;", "'", "&lt;", "<", "&gt;", ">", "&#43;", "+")

func mustElements(t *testing.T, name string, page []byte) []element {
	t.Helper()
	all, err := elements(page)
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return all
}

// every runs a test on each page of the example.
func every(t *testing.T, test func(t *testing.T, name string, all []element)) {
	t.Helper()
	files := published(t)
	n := 0
	for _, f := range files {
		if isPage(t, f) {
			n++
			test(t, f.Path, mustElements(t, f.Path, bytesOf(t, f)))
		}
	}
	if n < 50 {
		t.Errorf("only %d pages were looked at", n)
	}
}

// isPage leaves out the small pages at old paths, which only send readers on.
func isPage(t testing.TB, f File) bool {
	return path.Ext(f.Path) == ".html" && !bytes.Contains(bytesOf(t, f), []byte(`http-equiv="refresh"`))
}

// TestDrawings holds that what a page refers to is drawn on it, and no more.
func TestDrawings(t *testing.T) {
	use, symbol := regexp.MustCompile(`<use href="#(v-[a-z]+)"`), regexp.MustCompile(`<symbol id="(v-[a-z]+)"`)
	names := func(re *regexp.Regexp, page []byte) []string {
		var all []string
		for _, m := range re.FindAllSubmatch(page, -1) {
			all = append(all, string(m[1]))
		}
		slices.Sort(all)
		return slices.Compact(all)
	}
	drawn := 0
	for _, f := range published(t) {
		if isPage(t, f) {
			used := names(use, bytesOf(t, f))
			drawn += len(used)
			if got := names(symbol, bytesOf(t, f)); !slices.Equal(got, used) {
				t.Errorf("%s: draws %v, refers to %v", f.Path, got, used)
			}
		}
	}
	if drawn < 50 {
		t.Errorf("only %d drawings", drawn)
	}
}

func TestHeadOfEveryPage(t *testing.T) {
	titles, descriptions := map[string]string{}, map[string]string{}
	once := func(seen map[string]string, what, value, name string) {
		if value == "" || seen[value] != "" {
			t.Errorf("%s: %s %q, which is that of %q too", name, what, value, seen[value])
		}
		seen[value] = name
	}
	every(t, func(t *testing.T, name string, all []element) {
		if all[0].attrs["lang"] != "en" {
			t.Errorf("%s: its language is %q", name, all[0].attrs["lang"])
		}
		// What stands before the policy is not held to it.
		if all[2].attrs["charset"] != "utf-8" || all[3].attrs["http-equiv"] != "Content-Security-Policy" {
			t.Errorf("%s: head begins with %v, %v", name, all[2], all[3])
		}
		canonical := 0
		for _, e := range all {
			switch {
			case e.name == "title":
				once(titles, "title", e.text, name)
			case e.attrs["name"] == "description":
				once(descriptions, "description", e.attrs["content"], name)
			case e.attrs["rel"] == "canonical":
				canonical++
				stands := strings.TrimSuffix(name, "card/index.html") // a card stands for its recipe
				if want := "https://hollowlane.example/" + strings.TrimSuffix(stands, "index.html"); e.attrs["href"] != want {
					t.Errorf("%s: canonical %s, want %s", name, e.attrs["href"], want)
				}
			}
		}
		if none := name == "404.html" || name == "offline.html"; canonical != 1 && !none || canonical != 0 && none {
			t.Errorf("%s: %d canonical links", name, canonical)
		}
	})
}

func TestOrderOfEveryPage(t *testing.T) {
	every(t, func(t *testing.T, name string, all []element) {
		level, ones := 0, 0
		ids := map[string]bool{}
		marks := map[string]int{}
		for _, e := range all {
			if len(e.name) == 2 && e.name[0] == 'h' && e.name[1] >= '1' && e.name[1] <= '6' {
				next := int(e.name[1] - '0')
				if next > level+1 {
					t.Errorf("%s: <%s>%s follows a heading of level %d", name, e.name, e.text, level)
				}
				level = next
			}
			if e.name == "h1" {
				ones++
			}
			if id, ok := e.attrs["id"]; ok {
				if ids[id] || id == "" {
					t.Errorf("%s: id %q stands twice", name, id)
				}
				ids[id] = true
			}
			if e.name == "nav" && e.attrs["aria-label"] == "" {
				t.Errorf("%s: a nav has no name", name)
			}
			marks[e.name]++
		}
		if ones != 1 || marks["main"] != 1 {
			t.Errorf("%s: %d h1, %d main", name, ones, marks["main"])
		}
		for _, e := range all {
			for _, ref := range []string{e.attrs["aria-labelledby"], e.attrs["for"]} {
				if ref != "" && !ids[ref] {
					t.Errorf("%s: <%s> is named by %q, which is not there", name, e.name, ref)
				}
			}
		}
		if i := slices.IndexFunc(all, func(e element) bool { return e.name == "a" }); all[i].attrs["href"] != "#main" {
			t.Errorf("%s: the first link is %v", name, all[i])
		}
	})
}

func TestPicturesAndTablesOfEveryPage(t *testing.T) {
	tables, pictures := 0, 0
	every(t, func(t *testing.T, name string, all []element) {
		for i, e := range all {
			switch e.name {
			case "img":
				pictures++
				_, alt := e.attrs["alt"]
				w, _ := strconv.Atoi(e.attrs["width"])
				h, _ := strconv.Atoi(e.attrs["height"])
				if !alt || w <= 0 || h <= 0 {
					t.Errorf("%s: %v", name, e)
				}
			case "table":
				tables++
				region := all[i-1]
				if all[i+1].name != "caption" || region.name != "section" || region.attrs["tabindex"] != "0" || region.attrs["aria-label"] == "" {
					t.Errorf("%s: a table without caption, or in no named region: %v", name, region)
				}
			case "th":
				if s := e.attrs["scope"]; s != "col" && s != "row" {
					t.Errorf("%s: <th>%s has scope %q", name, e.text, s)
				}
			}
		}
	})
	if tables < 10 || pictures < 20 {
		t.Errorf("%d tables, %d pictures", tables, pictures)
	}
}

// TestPolicyOfEveryPage holds pages to their own content security policy.
func TestPolicyOfEveryPage(t *testing.T) {
	every(t, allowed)
}

func allowed(t *testing.T, name string, all []element) {
	t.Helper()
	for _, e := range all {
		for a, v := range e.attrs {
			if a == "style" || strings.HasPrefix(a, "on") {
				t.Errorf("%s: <%s %s=%q>", name, e.name, a, v)
			}
			if u, err := url.Parse(v); (a == "href" || a == "src") && err == nil && !slices.Contains([]string{"", "https", "http", "mailto"}, u.Scheme) {
				t.Errorf("%s: <%s %s=%q>", name, e.name, a, v)
			}
		}
		if e.name == "style" || e.name == "script" && e.attrs["type"] != "application/ld+json" && e.attrs["src"] == "" {
			t.Errorf("%s: inline <%s>%s", name, e.name, e.text)
		}
		if e.attrs["type"] == "application/ld+json" && e.name == "script" && !json.Valid([]byte(e.text)) {
			t.Errorf("%s: its data is not JSON: %s", name, e.text)
		}
	}
}

// TestLinksResolve follows every link and reference of the example, to the file
// and to the place in it.
func TestLinksResolve(t *testing.T) {
	files := published(t)
	ids := map[string]map[string]bool{}
	for _, f := range files {
		ids["/"+f.Path] = map[string]bool{}
		if isPage(t, f) {
			for _, e := range mustElements(t, f.Path, bytesOf(t, f)) {
				ids["/"+f.Path][e.attrs["id"]] = true
			}
		}
	}
	follow := func(from, to string) {
		u, err := url.Parse(to)
		if err != nil {
			t.Errorf("%s: %v", from, err)
			return
		}
		if u.Scheme != "" && u.Host != "hollowlane.example" {
			return
		}
		target := u.Path
		if target == "" {
			target = "/" + from
		}
		if strings.HasSuffix(target, "/") {
			target += "index.html"
		}
		if ids[target] == nil {
			t.Errorf("%s: %s leads to no file", from, to)
			return
		}
		if path.Ext(target) == ".html" && u.Fragment != "" && !ids[target][u.Fragment] {
			t.Errorf("%s: %s leads to no place on that page", from, to)
		}
	}
	n := 0
	for _, f := range files {
		switch path.Ext(f.Path) {
		case ".html":
			for _, e := range mustElements(t, f.Path, bytesOf(t, f)) {
				for _, a := range []string{"href", "src"} {
					if to := e.attrs[a]; to != "" && e.attrs["rel"] != "canonical" {
						n++
						follow(f.Path, to)
					}
				}
			}
		case ".css":
			for _, m := range regexp.MustCompile(`url\(([^)]+)\)`).FindAllSubmatch(bytesOf(t, f), -1) {
				n++
				follow(f.Path, string(m[1]))
			}
		}
	}
	if n < 1000 {
		t.Errorf("only %d links were followed", n)
	}
}

// TestHostileValues writes what must never end an element, an attribute or a
// script in every place where an author may write.
func TestHostileValues(t *testing.T) {
	ar, err := txtar.ParseFile("testdata/hostile.txtar")
	if err != nil {
		t.Fatal(err)
	}
	for name, page := range pagesOf(t, ar) {
		all := mustElements(t, name, page)
		allowed(t, name, all)
		for _, e := range all {
			if e.name == "b" && e.text == "hostile" || e.name == "img" && e.attrs["src"] == "x" {
				t.Errorf("%s: a value became <%s>", name, e.name)
			}
		}
	}
}
