package preview

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"stillroom/build/preview/watch"
)

// A writing is a site on disk that is written with a text editor while its preview
// is open.
type writing struct {
	t     *testing.T
	dir   string
	p     *Preview
	built chan Found
	saves int
}

// write opens the preview of a site with a plum jam, and of a pear jam by which
// it is told that everything before was looked at.
func write(t *testing.T) *writing {
	t.Helper()
	w := &writing{t: t, dir: t.TempDir(), built: make(chan Found, 100)}
	w.put("content/site.yaml", "name: Ada's Larder\nauthor: Ada Sloe\ntheme: dresser\n")
	w.put(plumFile, plum)
	w.put(pearFile, strings.Replace(plum, "Plum jam", "Pear jam", 1))
	w.put("content/pages/about.md", "---\nname: About\n---\nHello.\n")
	w.put("content/episodes/one.md", "---\nname: One\nstatus: draft\n---\nHello.\n")
	w.put("themes/dresser/files/own.css", "p{}")
	batches, err := watch.Folder{Dir: w.dir, Ignores: Ignores}.Watch(t.Context())
	if err != nil {
		t.Skip("this system does not watch:", err)
	}
	w.p = New(Folder(w.dir), today, nil)
	w.p.Built = func(f Found) { w.built <- f }
	if err := w.p.Open(nil); err != nil {
		t.Fatal(err)
	}
	go w.p.Follow(t.Context(), batches)
	return w
}

const pearFile = "content/recipes/pear-jam.md"

func (w *writing) path(name string) string { return filepath.Join(w.dir, filepath.FromSlash(name)) }

func (w *writing) put(name, text string) {
	w.t.Helper()
	w.do(os.MkdirAll(filepath.Dir(w.path(name)), 0o777), os.WriteFile(w.path(name), []byte(text), 0o666))
}

func (w *writing) do(errs ...error) {
	w.t.Helper()
	if err := errors.Join(errs...); err != nil {
		w.t.Fatal(err)
	}
}

// until gives how often the site was built, and for which files, until the pear
// jam is: it is saved in one piece, after all that was done before.
func (w *writing) until() (changed [][]string, last Found) {
	w.t.Helper()
	w.saves++
	w.put(".pear", strings.Replace(plum, "Plum jam", "Pear jam"+strings.Repeat("!", w.saves), 1))
	w.do(os.Rename(w.path(".pear"), w.path(pearFile)))
	for {
		select {
		case f := <-w.built:
			others := slices.DeleteFunc(slices.Clone(f.Changed), func(name string) bool { return name == pearFile })
			if len(others) > 0 || len(f.Changed) == 0 {
				changed = append(changed, others)
			}
			if len(others) < len(f.Changed) {
				return changed, f
			}
		case <-time.After(20 * time.Second):
			w.t.Fatal("the pear jam was never seen")
		}
	}
}

// besides are the files that text editors, file managers and browsers keep
// beside one, as Vim, Emacs, nano, gedit, Kate, JetBrains's and others name
// them; common practice, no source.
func besides(file string) []string {
	folder, name := filepath.Split(file)
	names := []string{"4913", ".DS_Store"}
	for _, form := range []string{
		".x.swp", ".x.swo", ".x.swx", "x~", "#x#", ".x.tmp123", "x.tmp123", "x.tmp", ".x.kate-swp", "x___jb_tmp___", "x___jb_old___",
		"x.bak", "x.orig", ".goutputstream-x", "x.part", "x.crdownload", ".~lock.x#",
	} {
		names = append(names, strings.Replace(form, "x", name, 1))
	}
	for i := range names {
		names[i] = folder + names[i]
	}
	return names
}

// What text editors keep beside a text is never read: nothing is built of it and
// nothing found in it, while it is there, when it changes, and when it goes.
func TestBesides(t *testing.T) {
	t.Parallel()
	w := write(t)
	_, before := w.until()
	var all []string
	for _, file := range []string{plumFile, "content/pages/about.md", "content/episodes/one.md", "content/site.yaml", "themes/dresser/files/own.css"} {
		all = append(all, besides(file)...)
	}
	hold := func(what string) {
		t.Helper()
		changed, now := w.until()
		if len(changed) > 0 {
			t.Errorf("%s: the site was built for %q", what, changed)
		}
		if len(now.Report.Findings) != len(before.Report.Findings) || now.Report.Counts != before.Report.Counts || len(now.Troubles) > 0 {
			t.Errorf("%s: found %v, trouble %v", what, now.Report.Findings, now.Troubles)
		}
	}
	for _, name := range all {
		w.put(name, "---\nname: [\n")
	}
	if runtime.GOOS != "windows" {
		w.do(os.Symlink("ada@kitchen.1234:5678", w.path("content/recipes/.#plum-jam.md"))) // by which Emacs locks a file
	}
	hold("there")
	for _, name := range all {
		w.put(name, "x")
	}
	hold("changed")
	for _, name := range all {
		w.do(os.Remove(w.path(name)))
	}
	hold("gone")
}

// However a text editor saves, the site is built once for it.
func TestSavedOnce(t *testing.T) {
	t.Parallel()
	w := write(t)
	w.until()
	text := func(n string) string { return strings.Replace(plum, "Plum jam", n, 1) }
	whole := w.path(plumFile)
	for name, save := range map[string]func(text string){
		"over the old": func(text string) { w.put(plumFile, text) },
		"beside it, then renamed": func(text string) {
			w.put("content/recipes/.plum-jam.md.tmp123", text)
			w.do(os.Rename(w.path("content/recipes/.plum-jam.md.tmp123"), whole))
		},
		"beside it without a dot, then renamed": func(text string) {
			w.put("content/recipes/plum-jam.md.tmp123", text)
			w.do(os.Rename(w.path("content/recipes/plum-jam.md.tmp123"), whole))
		},
		"as Vim does": func(text string) {
			w.put("content/recipes/4913", "")
			w.do(os.Remove(w.path("content/recipes/4913")), os.Rename(whole, whole+"~"))
			w.put(plumFile, text)
			w.do(os.Chmod(whole, 0o644), os.Remove(whole+"~"))
		},
		"as Emacs does": func(text string) {
			w.put("content/recipes/#plum-jam.md#", text)
			w.do(os.Rename(whole, whole+"~"))
			w.put(plumFile, text)
			w.do(os.Remove(w.path("content/recipes/#plum-jam.md#")))
		},
		"emptied, then written": func(text string) {
			w.do(os.Truncate(whole, 0))
			w.put(plumFile, text)
		},
		"taken away, then written": func(text string) {
			w.do(os.Remove(whole))
			w.put(plumFile, text)
		},
	} {
		save(text(name))
		changed, now := w.until()
		if want := [][]string{{plumFile}}; !slices.EqualFunc(changed, want, slices.Equal) {
			t.Errorf("saved %s: built for %q", name, changed)
		}
		if len(now.Troubles) > 0 || !strings.Contains(page(t, w.p, plumPage), "<h1>"+name) {
			t.Errorf("saved %s: the page is as it was; %v", name, now.Troubles)
		}
	}
	if _, err := os.Stat(whole); errors.Is(err, fs.ErrNotExist) {
		t.Error("the recipe is gone")
	}
}
