package validate

import (
	"bytes"
	"fmt"
	"io/fs"
	"maps"
	"math/rand/v2"
	"path"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"stillroom/content"
)

// A writer works on a site in memory: it keeps what is read until the file
// behind it changes, as a preview does.
type writer struct {
	random *rand.Rand
	fsys   fstest.MapFS
	clock  int64
	known  map[string]any // what was read, by file
	faults map[string][]content.Fault
}

// A desk that is asked after every change finds what a fresh check finds.
func TestDesk(t *testing.T) {
	w := &writer{random: rand.New(rand.NewPCG(5, 6)), fsys: fstest.MapFS{}, known: make(map[string]any), faults: make(map[string][]content.Fault)}
	w.copyStarter(t)
	d := Desk{Day: content.Date{Year: 2026, Month: 11, Day: 25}}
	rounds, seen := 120, make(map[string]int)
	if testing.Short() {
		rounds = 30
	}
	for i := range rounds {
		what := w.change()
		s, faults := w.read(t)
		want, _, _ := Check(s, faults, d.Day)
		got := d.Check(s, faults)
		if diff := cmp.Diff(want, got); diff != "" {
			t.Fatalf("change %d, %s (-fresh +desk):\n%s", i, what, diff)
		}
		for _, f := range got.Findings {
			seen[f.Rule]++
		}
	}
	for _, id := range []string{"missing-file", "picture-broken", "unknown-recipe", "address-taken", "time-short", "front-matter"} {
		if seen[id] == 0 {
			t.Errorf("no change brought about %s", id)
		}
	}
}

func (w *writer) copyStarter(t *testing.T) {
	t.Helper()
	err := fs.WalkDir(content.Starter, "content", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := fs.ReadFile(content.Starter, name)
		w.put(name, data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
}

func (w *writer) put(name string, data []byte) {
	w.clock++
	w.fsys[name] = &fstest.MapFile{Data: data}
	w.forget(name)
}

func (w *writer) forget(name string) {
	delete(w.known, name)
	delete(w.faults, name)
}

// change does one thing to one file, and says what.
func (w *writer) change() string {
	var names []string
	for name := range w.fsys {
		names = append(names, name)
	}
	slices.Sort(names)
	name := names[w.random.IntN(len(names))]
	data := w.fsys[name].Data
	switch {
	case w.random.IntN(12) == 0:
		delete(w.fsys, name)
		w.forget(name)
		return "delete " + name
	case w.random.IntN(12) == 0:
		to := path.Join(path.Dir(name), "more", path.Base(name))
		w.put(to, data)
		return "copy " + name + " to " + to
	case path.Ext(name) == ".jpg":
		w.put(name, data[:w.random.IntN(len(data)+1)])
		return "cut " + name
	}
	w.put(name, w.edited(data))
	return "edit " + name
}

// edited changes a line: drops it, ends it early, or gives another time.
func (w *writer) edited(text []byte) []byte {
	lines := bytes.Split(bytes.Clone(text), []byte("\n"))
	i := w.random.IntN(len(lines))
	switch w.random.IntN(4) {
	case 0:
		lines = slices.Delete(lines, i, i+1)
	case 1:
		lines[i] = lines[i][:w.random.IntN(len(lines[i])+1)]
	default:
		timed := slices.DeleteFunc(slices.Clone(lines), func(l []byte) bool {
			return !bytes.HasSuffix(l, []byte(" min")) || !bytes.ContainsAny(l, "123456789")
		})
		if len(timed) > 0 {
			line := timed[w.random.IntN(len(timed))]
			line[bytes.LastIndexAny(line, "123456789")] = "0123456789"[w.random.IntN(10)]
		}
	}
	return bytes.Join(lines, []byte("\n"))
}

// read puts the site together, and reads the files that it does not know.
func (w *writer) read(t *testing.T) (*content.Site, []content.Fault) {
	t.Helper()
	s, faults, err := content.Read(w.fsys, nil)
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range []map[string]content.File{s.Pictures, s.Media} {
		for name, f := range m {
			f.Changed = int64(len(w.fsys[f.Path].Data))
			m[name] = f
		}
	}
	for i, r := range s.Recipes {
		s.Recipes[i] = keepRead(w, r.File, r)
	}
	for i, e := range s.Episodes {
		s.Episodes[i] = keepRead(w, e.File, e)
	}
	for i, p := range s.Pages {
		s.Pages[i] = keepRead(w, p.File, p)
	}
	return s, faults
}

func keepRead[T any](w *writer, file string, v *T) *T {
	if old, ok := w.known[file].(*T); ok {
		return old
	}
	w.known[file] = v
	return v
}

// What did not change is not judged again.
func TestDeskRemembers(t *testing.T) {
	s, faults, err := content.Read(content.Starter, nil)
	if err != nil {
		t.Fatal(err)
	}
	var d Desk
	d.Check(s, faults)
	if len(d.rows) != len(s.Recipes) || !d.rows[3].judged {
		t.Fatal("the desk has no memory")
	}
	named := namedRecipes(s)
	i := slices.IndexFunc(s.Recipes, func(r *content.Recipe) bool { return named[r.Slug] == nil })
	again := *s.Recipes[i]
	changed := *s
	changed.Recipes = slices.Clone(s.Recipes)
	changed.Recipes[i] = &again
	for i := range d.rows {
		d.rows[i].alone = []Finding{{Message: "remembered"}}
	}
	rep := d.Check(&changed, faults)
	judged := slices.DeleteFunc(slices.Clone(s.Recipes), func(r *content.Recipe) bool {
		return slices.ContainsFunc(d.rows, func(row deskRow) bool { return row.recipe == r && row.alone[0].Message == "remembered" })
	})
	if len(judged) != 1 || judged[0] != s.Recipes[i] || len(d.rows) != len(s.Recipes) {
		t.Errorf("%d recipes were judged again, or one as it was is kept", len(judged))
	}
	for key := range d.alone.now {
		if _, old := d.alone.last[key]; !old {
			t.Errorf("%T was judged again", key)
		}
	}
	if n := len(rep.Findings); n < len(s.Recipes)-1 {
		t.Errorf("%d findings are told", n)
	}
}

// A picture that proved broken in printing stays so until it is another one.
func TestDeskIsToldOfBrokenPictures(t *testing.T) {
	s, faults, err := content.Read(content.Starter, nil)
	if err != nil {
		t.Fatal(err)
	}
	var d Desk
	before := d.Check(s, faults).Counts.Errors
	name := s.Recipes[0].Picture.File.V
	d.Broke(s.Pictures[name], "is broken within")
	for range 2 {
		rep := d.Check(s, faults)
		is := func(f Finding) bool {
			return f.Pos == s.Recipes[0].Picture.File.Pos && f.Message == "the picture is broken within"
		}
		if !slices.ContainsFunc(rep.Findings, is) {
			t.Errorf("found %v", rep.Findings)
		}
	}
	other := *s
	other.Pictures = maps.Clone(s.Pictures)
	f := s.Pictures[name]
	f.Changed++
	other.Pictures[name] = f
	if rep := d.Check(&other, faults); rep.Counts.Errors != before {
		t.Errorf("of the new picture it is found %v", rep.Findings)
	}
}

// BenchmarkDesk judges a site of 10,000 recipes of which one has changed.
func BenchmarkDesk(b *testing.B) {
	s, _, err := content.Read(content.Starter, nil)
	if err != nil {
		b.Fatal(err)
	}
	for i := len(s.Recipes); i < 10_000; i++ {
		r := *s.Recipes[i%22]
		r.Slug = fmt.Sprintf("%s-%d", r.Slug, i)
		r.File = strings.TrimSuffix(r.File, ".md") + fmt.Sprintf("-%d.md", i)
		r.Formerly = nil
		s.Recipes = append(s.Recipes, &r)
	}
	var d Desk
	d.Check(s, nil)
	for b.Loop() {
		r := *s.Recipes[77]
		s.Recipes[77] = &r
		d.Check(s, nil)
	}
}
