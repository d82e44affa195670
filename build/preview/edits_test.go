package preview

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/jpeg"
	"io/fs"
	"math/rand/v2"
	"path"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"

	"stillroom/build"
	"stillroom/content"
	"stillroom/themes"
	"stillroom/validate"
)

// After any change a preview holds what a whole build would publish if nothing
// were held back, and what a whole check finds: 500 changes at random, and each
// file of the site compared after every few of them.
func TestPreviewIsWhatIsPublished(t *testing.T) {
	changes := 500
	if testing.Short() {
		changes = 15
	}
	w := newWorkshop(t, rand.New(rand.NewPCG(11, 12)))
	compared, built := 0, 0
	for i := range changes {
		what := w.change()
		files := w.touched
		w.touched = nil
		if unsure := w.preview.Change(files, false); len(unsure) > 0 {
			w.preview.Change(unsure, true)
		}
		if w.random.IntN(3) > 0 && i+1 < changes {
			continue // on to the next, from a site at which nobody has looked
		}
		compared++
		if w.compare(t, fmt.Sprintf("change %d, %s", i, what)) {
			built++
		}
		if t.Failed() {
			break
		}
	}
	if built < compared/2 {
		t.Errorf("only %d of %d sites could be published, and so compared", built, compared)
	}
	for kind, n := range w.done {
		if n == 0 && !testing.Short() {
			t.Errorf("no change was of the kind %s", kind)
		}
	}
}

var (
	previewDay = content.Date{Year: 2026, Month: 11, Day: 20}
	lateDay    = content.Date{Year: 2026, Month: 11, Day: 30} // in the same month, and later than all that is scheduled
)

// A workshop is a small site in memory on which somebody works.
type workshop struct {
	random  *rand.Rand
	fsys    fstest.MapFS
	clock   time.Time
	preview *Preview
	cache   build.Cache
	touched []string
	broken  map[string][]byte // files that do not pass now, as they were before
	done    map[string]int
	made    int
}

func newWorkshop(t *testing.T, random *rand.Rand) *workshop {
	t.Helper()
	w := &workshop{random: random, fsys: smallSite(t), clock: time.Unix(1e9, 0), cache: new(memory), broken: map[string][]byte{}, done: map[string]int{}}
	w.preview = New(w.fsys, func() content.Date { return previewDay }, w.cache)
	w.preview.plates.Printed = nil // wait for pictures
	if err := w.preview.Open(nil); err != nil {
		t.Fatal(err)
	}
	for _, k := range kinds {
		w.done[k.name] = 0
	}
	return w
}

// smallSite is a part of the starter site with small pictures.
func smallSite(t *testing.T) fstest.MapFS {
	t.Helper()
	fsys := fstest.MapFS{}
	keep := []string{"site.yaml", "pages/about.md", "pages/canning-safely.md", "episodes/a-crock-in-october",
		"recipes/blackberry-jam", "recipes/sauerkraut", "recipes/green-beans-in-pints", "recipes/bread-and-butter"}
	shade := uint8(0)
	err := fs.WalkDir(content.Starter, "content", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := fs.ReadFile(content.Starter, name)
		if strings.HasSuffix(name, ".jpg") {
			shade++
			fsys[name] = &fstest.MapFile{Data: smallPicture(shade)}
		}
		if slices.ContainsFunc(keep, func(k string) bool { return strings.HasPrefix(name, "content/"+k) }) {
			fsys[name] = &fstest.MapFile{Data: data}
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return fsys
}

func smallPicture(shade uint8) []byte {
	m := image.NewGray(image.Rect(0, 0, 24, 16))
	for i := range m.Pix {
		m.Pix[i] = shade + uint8(i%3)
	}
	m.SetGray(3, 3, color.Gray{Y: 255})
	var b bytes.Buffer
	if err := jpeg.Encode(&b, m, nil); err != nil {
		panic(err)
	}
	return b.Bytes()
}

func (w *workshop) write(name string, data []byte) {
	w.clock = w.clock.Add(time.Second)
	w.fsys[name] = &fstest.MapFile{Data: data, ModTime: w.clock}
	w.touched = append(w.touched, name)
}

func (w *workshop) remove(name string) {
	delete(w.fsys, name)
	w.touched = append(w.touched, name)
}

// pick gives a file whose name fits a pattern of path.Match; empty if none does.
func (w *workshop) pick(pattern string) string {
	var names []string
	for name := range w.fsys {
		if ok, _ := path.Match(pattern, name); ok {
			names = append(names, name)
		}
	}
	if len(names) == 0 {
		return ""
	}
	slices.Sort(names)
	return names[w.random.IntN(len(names))]
}

// A kind is a way of changing a site. It reports whether it found anything to
// do it to.
type kind struct {
	name string
	do   func(w *workshop) bool
}

var kinds = []kind{
	{"a sentence in a recipe", edit("content/recipes/*.md", bodyStart, "\n---\n\nIt was the year %d.\n")},
	{"a sentence in an episode", edit("content/episodes/*.md", bodyStart, "\n---\n\nIt was the year %d.\n")},
	{"a sentence on a page", edit("content/pages/*.md", bodyStart, "\n---\n\nIt was the year %d.\n")},
	{"a name", edit("content/*/*.md", lineOf("name"), "name: Number %d\n")},
	{"a summary", edit("content/recipes/*.md", lineOf("summary"), "summary: The one from %d.\n")},
	{"tags", edit("content/recipes/*.md", lineOf("tags"), "tags: [shelf %d]\n")},
	{"a produce", edit("content/recipes/*.md", lineOf("name"), "name: Of spring %d\nseason: [may]\n")},
	{"a day in the past", edit("content/recipes/*.md", lineOf("published"), "published: 2019-03-1%[2]d\n")},
	{"a day to come", edit("content/*/*.md", lineOf("published"), "published: 2026-11-2%[2]d\n")},
	{"a draft", edit("content/*/*.md", lineOf("name"), "name: Draft %d\nstatus: draft\n")},
	{"a setting", edit("content/site.yaml", lineOf("tagline"), "tagline: Since %d\n")},
	{"a picture", func(w *workshop) bool {
		w.made++
		w.write(w.pick("content/pictures/*.jpg"), smallPicture(uint8(w.made)))
		return true
	}},
	{"a theme's file", func(w *workshop) bool {
		w.made++
		w.write("themes/enamel/files/extra.css", fmt.Appendf(nil, "p { margin: %dpx }", w.made))
		return true
	}},
	{"a theme's page", func(w *workshop) bool {
		w.made++
		w.write("themes/enamel/pages/missing.html", fmt.Appendf(nil, `{{define "main"}}<h1>Nothing %d</h1>{{end}}`, w.made))
		return true
	}},
	{"a theme gone", func(w *workshop) bool {
		name := w.pick("themes/*/*/*")
		if name != "" {
			w.remove(name)
		}
		return name != ""
	}},
	{"a new recipe", func(w *workshop) bool {
		w.made++
		text := w.fsys[w.pick("content/recipes/*.md")].Data
		text = formerly.ReplaceAll(text, nil)
		w.write(fmt.Sprintf("content/recipes/%c-new-%d.md", 'a'+w.random.IntN(26), w.made), text)
		return true
	}},
	{"a recipe gone", func(w *workshop) bool {
		name := w.pick("content/recipes/*-new-*.md")
		if name != "" {
			w.remove(name)
		}
		return name != ""
	}},
	{"a recipe renamed", func(w *workshop) bool {
		w.made++
		name := w.pick("content/recipes/*-new-*.md")
		if name != "" {
			text := w.fsys[name].Data
			w.remove(name)
			w.write(fmt.Sprintf("content/recipes/folder/%c-new-%d.md", 'a'+w.random.IntN(26), w.made), text)
		}
		return name != ""
	}},
	{"a mistake", func(w *workshop) bool {
		name := w.pick("content/*/*.md")
		text := w.fsys[name].Data
		if w.broken[name] == nil {
			w.broken[name] = text
		}
		w.write(name, spoilt(w.random, text))
		return true
	}},
	{"a file gone that is named", func(w *workshop) bool {
		name := w.pick("content/pictures/*.jpg")
		if w.random.IntN(2) == 0 {
			name = w.pick("content/recipes/*.md")
		}
		w.broken[name] = w.fsys[name].Data
		w.remove(name)
		return true
	}},
	{"an empty file", func(w *workshop) bool {
		name := w.pick("content/*/*.md")
		w.broken[name] = w.fsys[name].Data
		w.write(name, nil)
		return true
	}},
	{"something that is no part of it", func(w *workshop) bool {
		w.write("content/recipes/notes~", []byte("x"))
		w.write("content/recipes/Old.markdown.tmp", []byte("x"))
		w.write("content/recipes/list.txt", []byte("x"))
		return true
	}},
}

var (
	bodyStart = regexp.MustCompile(`\n---\n`)
	formerly  = regexp.MustCompile(`(?m)^formerly:.*\n( .*\n)*`)
	drafted   = regexp.MustCompile(`(?m)^status: draft\n`)
)

func lineOf(key string) *regexp.Regexp { return regexp.MustCompile(`(?m)^` + key + `: .*\n`) }

// edit replaces the first match in a file, with a number that was not there
// before, or a digit.
func edit(pattern string, what *regexp.Regexp, with string) func(w *workshop) bool {
	return func(w *workshop) bool {
		name := w.pick(pattern)
		text := w.fsys[name].Data
		at := what.FindIndex(text)
		if at == nil {
			return false
		}
		w.made++
		var put []byte
		if strings.Contains(with, "[2]") {
			put = fmt.Appendf(nil, strings.ReplaceAll(with, "%[2]d", "%d"), 1+w.random.IntN(9))
		} else {
			put = fmt.Appendf(nil, with, 1000+w.made)
		}
		if strings.Contains(with, "status:") {
			text = drafted.ReplaceAll(text, nil)
			at = what.FindIndex(text)
		}
		if strings.Contains(with, "season:") {
			text = regexp.MustCompile(`(?m)^season: .*\n`).ReplaceAll(text, nil)
			at = what.FindIndex(text)
		}
		w.write(name, slices.Concat(text[:at[0]], put, text[at[1]:]))
		return true
	}
}

// spoilt loses a line, or the end, or the colons of a text.
func spoilt(random *rand.Rand, text []byte) []byte {
	lines := bytes.SplitAfter(text, []byte("\n"))
	i := random.IntN(len(lines))
	switch random.IntN(4) {
	case 0:
		return bytes.Join(slices.Delete(lines, i, i+1), nil)
	case 1:
		return text[:random.IntN(len(text)+1)]
	case 2:
		return bytes.Replace(text, []byte(": "), []byte(":"), 1+random.IntN(3))
	}
	return bytes.Replace(text, []byte("\n---\n"), []byte("\n"), 1)
}

// change does one thing, and says what. Of files that do not pass, one is put
// right more often than not.
func (w *workshop) change() string {
	if len(w.broken) > 0 && w.random.IntN(3) > 0 {
		var names []string
		for name := range w.broken {
			names = append(names, name)
		}
		slices.Sort(names)
		for _, name := range names {
			w.write(name, w.broken[name])
			delete(w.broken, name)
		}
		return "put right " + strings.Join(names, ", ")
	}
	for {
		k := kinds[w.random.IntN(len(kinds))]
		if k.do(w) {
			w.done[k.name]++
			return k.name + ": " + strings.Join(w.touched, ", ")
		}
	}
}

// compare compares the preview with a whole check and a whole build, and reports
// whether there could be one.
func (w *workshop) compare(t *testing.T, what string) bool {
	t.Helper()
	s := w.preview.now.Load()
	site, faults, err := content.Read(w.fsys, nil)
	if err != nil {
		t.Fatal(err)
	}
	want, _, ok := validate.Check(site, faults, previewDay)
	if diff := cmp.Diff(want, s.report); diff != "" {
		t.Errorf("%s: findings (-whole +preview):\n%s", what, diff)
	}
	if !ok {
		return false
	}
	files := w.publish(t, what)
	paths, err := s.proofs.Paths()
	if err != nil {
		t.Fatalf("%s: %v", what, err)
	}
	var published []string
	for _, f := range files {
		if !strings.HasPrefix(f.Path, "assets/") {
			published = append(published, f.Path)
		}
		got, ok, err := s.find(f.Path)
		if err != nil || !ok {
			t.Errorf("%s: %s is found %v, %v", what, f.Path, ok, err)
		} else if a, b := bytesOf(t, f), bytesOf(t, got.File); !bytes.Equal(a, b) {
			t.Errorf("%s: %s (-published +preview):\n%s", what, f.Path, cmp.Diff(strings.Split(string(a), ">"), strings.Split(string(b), ">")))
		}
	}
	if diff := cmp.Diff(published, paths); diff != "" {
		t.Errorf("%s: files (-published +preview):\n%s", what, diff)
	}
	return true
}

// publish builds the site with nothing held back: drafts are made ready, and the
// day is one when all that is scheduled is out.
func (w *workshop) publish(t *testing.T, what string) []build.File {
	t.Helper()
	all := fstest.MapFS{}
	for name, f := range w.fsys {
		ready := *f
		if strings.HasSuffix(name, ".md") {
			ready.Data = drafted.ReplaceAll(f.Data, nil)
		}
		all[name] = &ready
	}
	site, faults, err := content.Read(all, nil)
	if err != nil {
		t.Fatal(err)
	}
	rep, c, ok := validate.Check(site, faults, lateDay)
	if !ok {
		t.Fatalf("%s: with drafts made ready the site does not pass: %v", what, rep.Findings)
	}
	theme, err := load(all, "themes/enamel", themes.BuiltIn)
	if err != nil {
		t.Fatal(err)
	}
	files, err := build.Site(c, theme, &build.Darkroom{Cache: w.cache})
	if err != nil {
		t.Fatalf("%s: %v", what, err)
	}
	return files
}

func bytesOf(t *testing.T, f build.File) []byte {
	t.Helper()
	data, err := f.Bytes()
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// A memory is a cache for one test.
type memory struct{ kept sync.Map }

func (m *memory) Get(key string) ([]byte, bool) {
	v, ok := m.kept.Load(key)
	if !ok {
		return nil, false
	}
	return v.([]byte), true
}

func (m *memory) Put(key string, data []byte) error {
	m.kept.Store(key, data)
	return nil
}
