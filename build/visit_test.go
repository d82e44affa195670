package build

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"maps"
	"math"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// A visit is what a page costs a reader who looks at all of it, at most: with
// the print of every picture for the sharpest screen, every typeface of its
// styles and every drawing in them, whether or not this page has need of them;
// in bytes without headers, text as gzip.
type visit struct{ requests, bytes int }

// A limit is what a visit to a page of a kind may cost: the first, with nothing
// in the cache, and one after the site has been published anew, when the page
// and its like come again and what may be kept for good does not: RFC 8246.
type limit struct {
	kind          string
	takesIn       *regexp.Regexp
	first, second visit
}

var limits = []limit{
	{"home", regexp.MustCompile(`^index\.html$`), visit{26, 520_000}, visit{5, 14_000}},
	{"list", regexp.MustCompile(`^(recipes|show-notes|produce|season|keeping)/index\.html$`), visit{26, 330_000}, visit{5, 14_000}},
	{"recipe", regexp.MustCompile(`^recipes/[^/]+/index\.html$`), visit{34, 350_000}, visit{5, 24_000}},
	{"card", regexp.MustCompile(`^recipes/[^/]+/card/index\.html$`), visit{26, 140_000}, visit{5, 12_000}},
	{"episode", regexp.MustCompile(`^show-notes/[^/]+/index\.html$`), visit{32, 340_000}, visit{6, 90_000}},
	{"gathering", regexp.MustCompile(`^(produce|season|keeping)/[^/]+/index\.html$`), visit{26, 320_000}, visit{5, 14_000}},
	{"search", regexp.MustCompile(`^search/index\.html$`), visit{28, 140_000}, visit{5, 10_000}},
	{"plain", regexp.MustCompile(`^([^/]+/index|404|offline)\.html$`), visit{26, 300_000}, visit{5, 12_000}},
}

func limitOf(page string) (limit, bool) {
	i := slices.IndexFunc(limits, func(l limit) bool { return l.takesIn.MatchString(page) })
	if i < 0 {
		return limit{}, false
	}
	return limits[i], true
}

// A traffic knows the files of a site, and what each weighs on the line.
type traffic struct {
	files   map[string]File
	weights map[string]int
}

// with is the traffic of a site with other files, or more.
func (tr *traffic) with(files ...File) *traffic {
	other := &traffic{maps.Clone(tr.files), maps.Clone(tr.weights)}
	for _, f := range files {
		other.files[f.Path] = f
		delete(other.weights, f.Path)
	}
	return other
}

func trafficOf(files []File) *traffic {
	none := &traffic{map[string]File{}, map[string]int{}}
	return none.with(files...)
}

func (tr *traffic) weight(p string) (int, error) {
	if n, ok := tr.weights[p]; ok {
		return n, nil
	}
	f, ok := tr.files[p]
	if !ok {
		return 0, fmt.Errorf("%s is asked for, and not there", p)
	}
	data, err := f.Bytes()
	tr.weights[p] = len(data)
	if slices.Contains(compressible, path.Ext(p)) {
		tr.weights[p] = compressed(data)
	}
	return tr.weights[p], err
}

var inStyle = regexp.MustCompile(`url\("?/([^")]*)"?\)`)

// beginning is what a browser takes of a recording to know how long it is. Each
// browser has its own way: no source.
const beginning = 64 << 10

// asked are the files that a page may ask for, and how many bytes of each at
// most. The worker brings the page that is shown without a network; what else it
// keeps it finds in the cache.
func (tr *traffic) asked(page string) (map[string]int, error) {
	text, err := tr.files[page].Bytes()
	if err != nil {
		return nil, err
	}
	all, err := elements(text)
	if err != nil {
		return nil, err
	}
	set := map[string]int{page: math.MaxInt, "offline.js": math.MaxInt, "offline.html": math.MaxInt}
	add := func(address string, most int) {
		if p, own := strings.CutPrefix(address, "/"); own {
			set[p] = most
		}
	}
	print, pictured := "", false
	for _, e := range all {
		a := e.attrs
		switch {
		case e.name == "script", e.name == "link" && slices.Contains([]string{"stylesheet", "preload", "icon", "manifest"}, a["rel"]):
			add(a["src"]+a["href"], math.MaxInt)
		case e.name == "source" && a["srcset"] != "":
			print, pictured = sharpest(a["srcset"], a["sizes"]), true
		case e.name == "img" && pictured:
			add(print, math.MaxInt)
			pictured = false
		case e.name == "img" && a["srcset"] != "":
			add(sharpest(a["srcset"], a["sizes"]), math.MaxInt)
		case e.name == "audio" && a["preload"] == "metadata":
			add(a["src"], beginning)
		case e.name == "img", e.name == "source", e.name == "audio" && a["preload"] != "none":
			add(a["src"], math.MaxInt)
		}
		add(a["data-words"], math.MaxInt)
	}
	for p := range maps.Clone(set) {
		if path.Ext(p) == ".css" {
			style, err := tr.files[p].Bytes()
			if err != nil {
				return nil, err
			}
			for _, m := range inStyle.FindAllSubmatch(style, -1) {
				set[string(m[1])] = math.MaxInt
			}
		}
	}
	return set, nil
}

var inRem = regexp.MustCompile(`^([0-9.]+)rem$`)

// sharpest is the print that a screen of three dots to the pixel takes. Prints
// stand in order of width; one that follows the window may be the last.
// https://html.spec.whatwg.org/#sizes-attributes
func sharpest(srcset, sizes string) string {
	all := strings.Split(srcset, ",")
	m := inRem.FindStringSubmatch(sizes)
	for _, candidate := range all {
		at, width, _ := strings.Cut(strings.TrimSpace(candidate), " ")
		if m == nil {
			continue
		}
		rem, _ := strconv.ParseFloat(m[1], 64)
		if w, _ := strconv.ParseFloat(strings.TrimSuffix(width, "w"), 64); w >= rem*16*3 {
			return at
		}
	}
	return strings.Fields(all[len(all)-1])[0]
}

// visits gives the first visit to a page, and a later one.
func (tr *traffic) visits(page string) (first, second visit, err error) {
	set, err := tr.asked(page)
	if err != nil {
		return first, second, err
	}
	for p, most := range set {
		n, err := tr.weight(p)
		if err != nil {
			return first, second, err
		}
		n = min(n, most)
		first = visit{first.requests + 1, first.bytes + n}
		if !strings.Contains(Headers(p)["Cache-Control"], "immutable") {
			second = visit{second.requests + 1, second.bytes + n}
		}
	}
	return first, second, nil
}

func (v visit) within(most visit) bool { return v.requests <= most.requests && v.bytes <= most.bytes }

// overBudget says what is wrong with a page; nothing if it is within its limit.
func (tr *traffic) overBudget(page string) string {
	l, ok := limitOf(page)
	if !ok {
		return "a page of no kind that has a budget"
	}
	first, second, err := tr.visits(page)
	switch {
	case err != nil:
		return err.Error()
	case !first.within(l.first):
		return fmt.Sprintf("a first visit takes %v, where a %s may take %v", first, l.kind, l.first)
	case !second.within(l.second):
		return fmt.Sprintf("a second visit takes %v, where a %s may take %v", second, l.kind, l.second)
	}
	return ""
}

// TestVisits holds every page of the example to its budget. With -v it tells
// what the dearest page of each kind costs.
func TestVisits(t *testing.T) {
	tr := trafficOf(published(t))
	dearest := map[string][2]visit{}
	for _, f := range published(t) {
		if !isPage(t, f) {
			continue
		}
		if wrong := tr.overBudget(f.Path); wrong != "" {
			t.Errorf("%s: %s", f.Path, wrong)
		}
		first, second, _ := tr.visits(f.Path)
		l, _ := limitOf(f.Path)
		d := dearest[l.kind]
		dearest[l.kind] = [2]visit{
			{max(d[0].requests, first.requests), max(d[0].bytes, first.bytes)},
			{max(d[1].requests, second.requests), max(d[1].bytes, second.bytes)},
		}
	}
	for _, l := range limits {
		d, seen := dearest[l.kind]
		if !seen {
			t.Errorf("the example has no page of the kind %s", l.kind)
		}
		t.Logf("%-10s first %2d requests %7d bytes, second %2d requests %6d bytes", l.kind, d[0].requests, d[0].bytes, d[1].requests, d[1].bytes)
	}
}

// TestVisitsFindWaste damages a page of each kind in the ways that cost readers
// most, and wants each to be found.
func TestVisitsFindWaste(t *testing.T) {
	noise := make([]byte, 0, 400<<10)
	for i := 0; len(noise) < cap(noise); i++ {
		sum := sha256.Sum256([]byte{byte(i), byte(i >> 8)})
		noise = append(noise, sum[:]...)
	}
	waste := []File{
		NewFile("assets/huge.0123456789abcdef.jpg", noise),
		NewFile("huge.jpg", noise[:30<<10]),
		NewFile("assets/huge.0123456789abcdef.mp3", noise),
	}
	few := ""
	for i := range 40 {
		p := fmt.Sprintf("assets/%d.0123456789abcdef.js", i)
		waste = append(waste, NewFile(p, nil))
		few += `<script src="/` + p + `"></script>`
	}
	harms := map[string]string{
		"a heavy picture":              `<img src="/assets/huge.0123456789abcdef.jpg">`,
		"a picture that is asked anew": `<img src="/huge.jpg">`,
		"a recording that loads":       `<audio src="/assets/huge.0123456789abcdef.mp3"></audio>`,
		"many small files":             few,
		"a file that is not there":     `<img src="/assets/none.jpg">`,
		"text without end":             fmt.Sprintf("<p>%x</p>", noise[:40<<10]),
	}
	files := published(t)
	tr := trafficOf(files).with(waste...)
	for _, l := range limits {
		i := slices.IndexFunc(files, func(f File) bool { got, _ := limitOf(f.Path); return got.kind == l.kind && isPage(t, f) })
		if wrong := tr.overBudget(files[i].Path); wrong != "" {
			t.Fatalf("%s, undamaged: %s", files[i].Path, wrong)
		}
		for what, harm := range harms {
			page := NewFile(files[i].Path, bytes.Replace(bytesOf(t, files[i]), []byte("</main>"), []byte(harm+"</main>"), 1))
			if tr.with(page).overBudget(page.Path) == "" {
				t.Errorf("%s: %s is not found", page.Path, what)
			}
		}
	}
}
