package preview

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"stillroom/build/preview/watch"
	"stillroom/content"
)

const plum = `---
name: Plum jam
summary: Plums and sugar.
published: 2026-08-01
kind: jam
produce: [plums]
yield: 5 half-pint jars
ingredients:
  - 5 cups pitted plums
  - 4 cups sugar
keeping:
  - way: refrigerator
    keeps: 3 weeks
---

Pick them ripe.

1. Wash your hands.
2. Boil the plums and the sugar.

Sing if you like.
`

func today() content.Date { return content.Date{Year: 2026, Month: 11, Day: 20} }

// open opens the preview of a site of some files, each a name and a text.
func open(t *testing.T, files ...string) (*Preview, fstest.MapFS) {
	t.Helper()
	fsys := fstest.MapFS{"content/site.yaml": {Data: []byte("name: Ada's Larder\nauthor: Ada Sloe\n")}}
	for i := 0; i+1 < len(files); i += 2 {
		fsys[files[i]] = &fstest.MapFile{Data: []byte(files[i+1])}
	}
	p := New(fsys, today, nil)
	if err := p.Open(nil); err != nil {
		t.Fatal(err)
	}
	return p, fsys
}

// page gives what stands at an address.
func page(t *testing.T, p *Preview, address string) string {
	t.Helper()
	return string(p.now.Load().view(address, false).html)
}

const plumFile, plumPage = "content/recipes/plum-jam.md", "/recipes/plum-jam/"

// A change is made once, and what is no change is not made at all.
func TestChangeOnce(t *testing.T) {
	p, fsys := open(t, plumFile, plum)
	builds := p.Builds()
	change := func(text string, want int) {
		t.Helper()
		fsys[plumFile] = &fstest.MapFile{Data: []byte(text)}
		if unsure := p.Change([]string{plumFile}, false); len(unsure) > 0 {
			t.Errorf("unsure of %v", unsure)
		}
		if got := p.Builds() - builds; got != want {
			t.Errorf("built %d times, want %d", got, want)
		}
		builds = p.Builds()
	}
	change(strings.Replace(plum, "Plum jam", "Plum preserves", 1), 1)
	if !strings.Contains(page(t, p, plumPage), "Plum preserves") {
		t.Error("the page is as it was")
	}
	change(strings.Replace(plum, "Plum jam", "Plum preserves", 1), 0) // saved again
	fsys["content/recipes/.plum-jam.md.swp"] = &fstest.MapFile{Data: []byte("x")}
	p.Change([]string{"content/recipes/.plum-jam.md.swp", "content/recipes/plum-jam.md~", "content/recipes/4913"}, false)
	change(strings.Replace(plum, "Plum jam", "Plum preserves", 1), 0)
}

// A file that is empty or gone all of a sudden stays as it was, until that is
// sure.
func TestChangeIsNotYet(t *testing.T) {
	for _, empty := range []bool{true, false} {
		p, fsys := open(t, plumFile, plum)
		builds := p.Builds()
		fsys[plumFile] = &fstest.MapFile{}
		if !empty {
			delete(fsys, plumFile)
		}
		if unsure := p.Change([]string{plumFile}, false); !slices.Equal(unsure, []string{plumFile}) {
			t.Errorf("empty %v: unsure of %v", empty, unsure)
		}
		if p.Builds() != builds || !strings.Contains(page(t, p, plumPage), "Plum jam") {
			t.Errorf("empty %v: believed at once", empty)
		}
		if unsure := p.Change([]string{plumFile}, true); len(unsure) > 0 || p.Builds() != builds+1 {
			t.Errorf("empty %v: not believed in the end", empty)
		}
		if got := page(t, p, plumPage); strings.Contains(got, "<h1>Plum jam") {
			t.Errorf("empty %v: the page is still there", empty)
		}
	}
}

// A file that cannot be read shows why, and the page as it was is a step away.
// The lists keep it. When it is put right, all is as if nothing had been.
func TestChangeToWhatCannotBeRead(t *testing.T) {
	p, fsys := open(t, plumFile, plum)
	before := page(t, p, plumPage)
	fsys[plumFile] = &fstest.MapFile{Data: []byte(strings.Replace(plum, "kind: jam", "kind: jam: preserves", 1))}
	p.Change([]string{plumFile}, false)
	s := p.now.Load()
	v := s.view(plumPage, false)
	for _, want := range []string{"cannot be read", plumFile, `<span class="number">5</span>`, "kind: jam<mark>: preserves</mark>", `href="/recipes/plum-jam/?last"`} {
		if !strings.Contains(string(v.html), want) {
			t.Errorf("the page does not hold %q:\n%s", want, v.html)
		}
	}
	last := s.view(plumPage, true)
	if string(last.html) != before || !strings.Contains(string(last.notes), `"old":true`) {
		t.Errorf("the page as it was is another: %s", last.notes)
	}
	if !strings.Contains(page(t, p, "/recipes/"), `href="/recipes/plum-jam/"`) {
		t.Error("the list has lost it")
	}
	if s.report.Counts.Errors == 0 {
		t.Error("nothing was found in it")
	}
	fsys[plumFile] = &fstest.MapFile{Data: []byte(plum)}
	p.Change([]string{plumFile}, false)
	if page(t, p, plumPage) != before || p.now.Load().report.Counts.Errors != 0 {
		t.Error("once put right it is not as before")
	}
}

// A file that could not be read from the start has no page as it was.
func TestOpenWhatCannotBeRead(t *testing.T) {
	p, _ := open(t, plumFile, "---\nname: [plum\n---\n", "content/site.yaml", "name: [\n")
	got := page(t, p, plumPage)
	if !strings.Contains(got, "cannot be read") || strings.Contains(got, "?last") {
		t.Errorf("the page is\n%s", got)
	}
	if got := page(t, p, "/"); !strings.Contains(got, "<html") {
		t.Errorf("the home page is\n%s", got)
	}
}

// While the folder content is gone, the site is shown as it was.
func TestChangeWithoutContent(t *testing.T) {
	p, fsys := open(t, plumFile, plum)
	kept := fstest.MapFS{}
	for name, f := range fsys {
		kept[name] = f
		delete(fsys, name)
	}
	if unsure := p.Change([]string{"content", plumFile}, true); len(unsure) != 2 {
		t.Errorf("unsure of %v", unsure)
	}
	p.Rescan()
	if !strings.Contains(page(t, p, plumPage), "Plum jam") {
		t.Error("the page is gone")
	}
	if s := p.now.Load(); len(s.troubles) != 1 || s.troubles[0].File != "content" {
		t.Errorf("trouble: %v", s.troubles)
	}
	for name, f := range kept {
		fsys[name] = f
	}
	p.Rescan()
	if s := p.now.Load(); len(s.troubles) != 0 {
		t.Errorf("still trouble: %v", s.troubles)
	}
}

// A folder that is taken away takes its files along; one that comes brings them.
func TestChangeOfFolders(t *testing.T) {
	p, fsys := open(t, "content/recipes/old/plum-jam.md", plum, "content/pictures/old/plum.svg", "<svg/>")
	delete(fsys, "content/recipes/old/plum-jam.md")
	delete(fsys, "content/pictures/old/plum.svg")
	unsure := p.Change([]string{"content/pictures/old", "content/recipes/old"}, false)
	p.Change(unsure, true)
	if site, _ := p.book.judged(); len(site.Recipes)+len(site.Pictures) != 0 {
		t.Errorf("%d recipes and %d pictures are left", len(site.Recipes), len(site.Pictures))
	}
}

// A mark in a line of its own is shown at what follows it.
func TestMarkOfWhatFollows(t *testing.T) {
	p, _ := open(t, plumFile, strings.Replace(plum, "kind: jam", "# check: is it a\n#   jam at all?\nkind: jam", 1))
	s := p.now.Load()
	pos := content.Pos{File: plumFile, Line: 5, Col: 1}
	if got, want := s.meant(pos), (content.Pos{File: plumFile, Line: 7, Col: 1}); got != want {
		t.Errorf("at %v, want %v", got, want)
	}
	if got := s.meant(content.Pos{File: plumFile, Line: 2, Col: 7}); got.Line != 2 || got.Col != 7 {
		t.Errorf("a name is shown at %v", got)
	}
}

// A folder may take the name of a text, and then there is no such text.
func TestChangeToFolder(t *testing.T) {
	p, fsys := open(t, plumFile, plum)
	fsys[plumFile] = &fstest.MapFile{Mode: fs.ModeDir | 0o777}
	p.Change(p.Change([]string{plumFile}, false), true)
	if site, _ := p.book.judged(); len(site.Recipes) != 0 {
		t.Error("the recipe is still there")
	}
	fsys[plumFile] = &fstest.MapFile{Data: []byte(plum)}
	p.Change([]string{plumFile}, false)
	if !strings.Contains(page(t, p, plumPage), "Plum jam") {
		t.Error("the recipe does not come back")
	}
}

// locked is a site of which nobody may read some files.
type locked struct {
	fstest.MapFS
	files map[string]bool
}

func (l locked) Open(name string) (fs.File, error) {
	if l.files[name] {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrPermission}
	}
	return l.MapFS.Open(name)
}

func (l locked) ReadFile(name string) ([]byte, error) {
	if l.files[name] {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrPermission}
	}
	return l.MapFS.ReadFile(name)
}

// A file that may not be read any more is told of, and shown as it was until it
// may be read again. Nothing is built for a mode that changes nothing.
func TestChangeToLockedFile(t *testing.T) {
	site := locked{fstest.MapFS{
		"content/site.yaml": {Data: []byte("name: Ada's Larder\nauthor: Ada Sloe\n")}, plumFile: {Data: []byte(plum)},
	}, make(map[string]bool)}
	p := New(site, today, nil)
	if err := p.Open(nil); err != nil {
		t.Fatal(err)
	}
	site.files[plumFile] = true
	p.Change([]string{plumFile}, false)
	want := Trouble{plumFile, "cannot be read: permission denied"}
	if s := p.now.Load(); len(s.troubles) != 1 || s.troubles[0] != want || !strings.Contains(page(t, p, plumPage), "Plum jam") {
		t.Errorf("trouble: %v", s.troubles)
	}
	delete(site.files, plumFile)
	p.Change([]string{plumFile}, false)
	if s := p.now.Load(); len(s.troubles) != 0 {
		t.Errorf("still trouble: %v", s.troubles)
	}
	builds := p.Builds()
	if p.Change([]string{plumFile}, false); p.Builds() != builds {
		t.Error("built although nothing was written")
	}
}

// A rescan reads what was changed, and nothing else.
func TestRescan(t *testing.T) {
	p, fsys := open(t, plumFile, plum, "content/recipes/old.md", plum)
	builds := p.Builds()
	p.Rescan()
	if p.Builds() != builds {
		t.Error("built although nothing had changed")
	}
	fsys[plumFile] = &fstest.MapFile{Data: []byte(strings.Replace(plum, "Plum jam", "Plum butter", 1))}
	fsys["content/recipes/new.md"] = &fstest.MapFile{Data: []byte(plum)}
	fsys["themes/enamel/files/own.css"] = &fstest.MapFile{Data: []byte("p{}")}
	delete(fsys, "content/recipes/old.md")
	p.Change(p.Rescan(), true)
	s := p.now.Load()
	if !strings.Contains(page(t, p, plumPage), "Plum butter") || s.text("content/recipes/new.md") == nil || s.text("content/recipes/old.md") != nil {
		t.Error("the rescan has missed something")
	}
	if s.proofs.Asset("own.css") == "" {
		t.Error("the rescan has missed the theme")
	}
}

// What the watcher has to say is shown with what has changed, in one go, and no
// longer than it holds.
func TestTakeNotice(t *testing.T) {
	p, fsys := open(t, plumFile, plum)
	take := func(b watch.Batch, want int) {
		t.Helper()
		builds := p.Builds()
		p.take(b)
		if got := p.Builds() - builds; got != want {
			t.Errorf("built %d times, want %d", got, want)
		}
	}
	fsys[plumFile] = &fstest.MapFile{Data: []byte(strings.Replace(plum, "Plum jam", "Plum butter", 1))}
	take(watch.Batch{All: true, Why: "Lost count."}, 1)
	if s := p.now.Load(); len(s.troubles) != 1 || s.troubles[0].Text != "Lost count." || !strings.Contains(page(t, p, plumPage), "Plum butter") {
		t.Errorf("trouble: %v", s.troubles)
	}
	take(watch.Batch{All: true, Why: "Lost count."}, 0)
	take(watch.Batch{Files: []string{plumFile}}, 1)
	if s := p.now.Load(); len(s.troubles) != 0 {
		t.Errorf("still trouble: %v", s.troubles)
	}
}

// A theme that cannot be used is told of, and the one before stands in for it.
func TestChangeOfTheme(t *testing.T) {
	p, fsys := open(t, plumFile, plum, "themes/dresser/pages/page.html", `{{define "main"}}<h1>Dresser</h1>{{end}}`, "content/pages/about.md", "---\nname: About\n---\nHello.\n")
	trouble := func(want string) {
		t.Helper()
		if s := p.now.Load(); len(s.troubles) != 1 || !strings.Contains(s.troubles[0].Text, want) {
			t.Errorf("trouble: %v, want %q", s.troubles, want)
		}
	}
	write := func(name, text string) {
		fsys[name] = &fstest.MapFile{Data: []byte(text)}
		p.Change([]string{name}, false)
	}
	write("content/site.yaml", "name: Ada's Larder\ntheme: dreser\n")
	trouble("no such folder")
	write("content/site.yaml", "name: Ada's Larder\ntheme: dresser\n")
	if !strings.Contains(page(t, p, "/about/"), "<h1>Dresser</h1>") || len(p.now.Load().troubles) != 0 {
		t.Error("the theme is not worn")
	}
	write("themes/dresser/pages/page.html", `{{define "main"}}<h1>{{if}}</h1>{{end}}`)
	trouble("pages/page.html")
	if !strings.Contains(page(t, p, "/about/"), "<h1>Dresser</h1>") {
		t.Error("the theme as it was does not stand in")
	}
	write("themes/dresser/pages/page.html", `{{define "main"}}<h1>{{.Nothing}}</h1>{{end}}`)
	v := p.now.Load().view("/about/", false)
	if v.status != 500 || !strings.Contains(string(v.html), "cannot be made") || !strings.Contains(string(v.html), "Nothing") {
		t.Errorf("status %d:\n%s", v.status, v.html)
	}
}

// Links within the site are followed to files, and looked at again whatever
// changes; those that lead out of it, nowhere or to a folder are told of.
func TestLinks(t *testing.T) {
	dir := t.TempDir()
	site := filepath.Join(dir, "site")
	write := func(name, text string) {
		t.Helper()
		name = filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	write("site/content/site.yaml", "name: Ada's Larder\n")
	write("site/drafts/plum.md", plum)
	write("site/drafts/more/x.md", plum)
	write("elsewhere/secret.md", strings.Replace(plum, "Plum jam", "Secret", 1))
	if err := os.MkdirAll(filepath.Join(site, "content/recipes"), 0o777); err != nil {
		t.Fatal(err)
	}
	for name, target := range map[string]string{
		"plum-jam.md": "../../drafts/plum.md", "secret.md": "../../../elsewhere/secret.md", "whole.md": filepath.Join(dir, "elsewhere/secret.md"),
		"lost.md": "../nothing.md", "more": "../../drafts/more", "out": "../../../elsewhere",
	} {
		if err := os.Symlink(target, filepath.Join(site, "content/recipes", name)); err != nil {
			t.Skip("this system makes no links:", err)
		}
	}
	p := New(Folder(site), today, nil)
	if err := p.Open(nil); err != nil {
		t.Fatal(err)
	}
	s := p.now.Load()
	if len(s.texts) != 1 || !strings.Contains(page(t, p, plumPage), "Plum jam") {
		t.Errorf("%d texts are read", len(s.texts))
	}
	want := map[string]string{
		"secret.md": "is a link out of the site, to ../../../elsewhere/secret.md, and is not followed", "whole.md": "is a link out of the site",
		"lost.md": "is a link to ../nothing.md, which is not there", "more": "is a link to the folder ../../drafts/more, and is not followed",
		"out": "is a link out of the site",
	}
	for _, tr := range s.troubles {
		name := strings.TrimPrefix(tr.File, "content/recipes/")
		if want[name] == "" || !strings.HasPrefix(tr.Text, want[name]) {
			t.Errorf("%s %s", tr.File, tr.Text)
		}
		delete(want, name)
	}
	for name := range want {
		t.Errorf("nothing is told of %s", name)
	}
	write("site/drafts/plum.md", strings.Replace(plum, "Plum jam", "Plum cheese", 1))
	p.Change([]string{"drafts/plum.md"}, false)
	if !strings.Contains(page(t, p, plumPage), "Plum cheese") {
		t.Error("what the link leads to has changed unseen")
	}
	if err := os.Remove(filepath.Join(site, "content/recipes/secret.md")); err != nil {
		t.Fatal(err)
	}
	p.Change([]string{"content/recipes/secret.md"}, false)
	for _, tr := range p.now.Load().troubles {
		if tr.File == "content/recipes/secret.md" {
			t.Error("the link is gone, but still told of")
		}
	}
}
