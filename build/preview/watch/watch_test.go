package watch

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/fsnotify/fsnotify"
)

// A watched folder, and what was told of it.
type watched struct {
	t       *testing.T
	dir     string
	batches <-chan Batch
}

// start watches a new folder with some files.
func start(t *testing.T, files ...string) *watched {
	t.Helper()
	w := &watched{t: t, dir: filepath.Join(t.TempDir(), "site")}
	w.mkdir("content/recipes")
	for _, f := range files {
		w.write(f, "old")
	}
	folder := Folder{Dir: w.dir, still: most / 2, Ignores: func(name string) bool {
		return name != "." && name != "content" && !strings.HasPrefix(name, "content/") || strings.Contains(name, "ignored")
	}}
	var err error
	if w.batches, err = folder.Watch(t.Context()); err != nil {
		t.Skip("this system does not watch:", err)
	}
	return w
}

func (w *watched) path(name string) string { return filepath.Join(w.dir, filepath.FromSlash(name)) }

func (w *watched) check(err error) {
	w.t.Helper()
	if err != nil {
		w.t.Fatal(err)
	}
}

func (w *watched) mkdir(name string) {
	w.t.Helper()
	w.check(os.MkdirAll(w.path(name), 0o777))
}

func (w *watched) write(name, text string) {
	w.t.Helper()
	w.check(os.WriteFile(w.path(name), []byte(text), 0o666))
}

func (w *watched) rename(from, to string) {
	w.t.Helper()
	w.check(os.Rename(w.path(from), w.path(to)))
}

// gather gives all batches until nothing is told for a while. A batch that
// comes later than this is missed: the while is long enough for a busy machine.
func (w *watched) gather() []Batch {
	w.t.Helper()
	var all []Batch
	for {
		select {
		case b := <-w.batches:
			all = append(all, b)
		case <-time.After(10 * most):
			return all
		}
	}
}

// files are all that batches name, each once.
func files(batches []Batch) []string {
	var all []string
	for _, b := range batches {
		all = append(all, b.Files...)
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// The ways in which editors save a file: each is told of in one batch, with the
// name of the file in it.
func TestSaves(t *testing.T) {
	t.Parallel()
	const name = "content/recipes/plum.md"
	tests := []struct {
		name string
		save func(w *watched)
	}{
		{"written over", func(w *watched) { w.write(name, "new") }},
		{"written in pieces", func(w *watched) {
			f, err := os.Create(w.path(name))
			w.check(err)
			for range 3 {
				_, err := f.WriteString("a piece\n")
				w.check(err)
			}
			w.check(f.Close())
		}},
		{"beside it, then moved over it", func(w *watched) {
			w.write("content/recipes/plum.md.tmp123", "new")
			w.rename("content/recipes/plum.md.tmp123", name)
		}},
		{"beside it under a hidden name, then moved over it", func(w *watched) {
			w.write("content/recipes/.plum.md.x", "new")
			w.rename("content/recipes/.plum.md.x", name)
		}},
		{"moved away, then written anew", func(w *watched) {
			w.rename(name, name+"~")
			w.write(name, "new")
			w.check(os.Chmod(w.path(name), 0o644))
			w.check(os.Remove(w.path(name + "~")))
		}},
		{"written somewhere else, then moved in", func(w *watched) {
			w.write("elsewhere.md", "new")
			w.rename("elsewhere.md", name)
		}},
		{"nobody may read it", func(w *watched) { w.check(os.Chmod(w.path(name), 0o200)) }},
		{"taken away", func(w *watched) { w.check(os.Remove(w.path(name))) }},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			t.Parallel()
			var got []Batch
			for range 4 { // a busy machine may stop in the middle of a save
				w := start(t, name)
				test.save(w)
				if got = w.gather(); len(got) == 1 {
					break
				}
			}
			if len(got) != 1 || !slices.Contains(got[0].Files, name) || got[0].All {
				t.Errorf("told %v", got)
			}
		})
	}
}

// What is not written to the text is not told of.
func TestNoSaves(t *testing.T) {
	t.Parallel()
	const name = "content/recipes/plum.md"
	w := start(t, name)
	w.mkdir("content/ignored")
	w.mkdir("published")
	w.gather()
	w.write("content/recipes/.plum.md.swp", "x")
	w.write("content/recipes/plum.md~", "x")
	w.write("content/ignored/x.md", "x")
	w.write("published/index.html", "x")
	w.write("README.md", "x")
	if got := w.gather(); len(got) != 0 {
		t.Errorf("told %v", got)
	}
}

// New folders with files in them at once, folders in folders, folders that are
// moved and moved back: nothing in them is missed, then or later.
func TestFolders(t *testing.T) {
	t.Parallel()
	w := start(t)
	w.mkdir("content/recipes/new/deep")
	w.write("content/recipes/new/a.md", "x")
	w.write("content/recipes/new/deep/b.md", "x")
	told := files(w.gather())
	for _, want := range []string{"content/recipes/new/a.md", "content/recipes/new/deep/b.md"} {
		if !slices.Contains(told, want) {
			t.Errorf("%s was missed: %v", want, told)
		}
	}
	w.rename("content/recipes/new", "content/recipes/moved")
	told = files(w.gather())
	for _, want := range []string{"content/recipes/new", "content/recipes/moved/a.md", "content/recipes/moved/deep/b.md"} {
		if !slices.Contains(told, want) {
			t.Errorf("after the move, %s was missed: %v", want, told)
		}
	}
	w.write("content/recipes/moved/a.md", "y")
	w.write("content/recipes/moved/deep/b.md", "y")
	if told = files(w.gather()); !slices.Equal(told, []string{"content/recipes/moved/a.md", "content/recipes/moved/deep/b.md"}) {
		t.Errorf("in the moved folder: %v", told)
	}
	w.rename("content/recipes/moved", "content/recipes/new")
	w.gather()
	w.write("content/recipes/new/deep/b.md", "z")
	if told = files(w.gather()); !slices.Equal(told, []string{"content/recipes/new/deep/b.md"}) {
		t.Errorf("in the folder that was moved back: %v", told)
	}
	w.check(os.RemoveAll(w.path("content/recipes/new")))
	if told = files(w.gather()); !slices.Contains(told, "content/recipes/new") {
		t.Errorf("the end of a folder was missed: %v", told)
	}
}

// 500 files at once: each is told of.
func TestBurst(t *testing.T) {
	t.Parallel()
	w := start(t)
	var want []string
	for i := range 500 {
		name := fmt.Sprintf("content/recipes/plum-%03d.md", i)
		want = append(want, name)
		w.write(name+".tmp", "x")
		w.rename(name+".tmp", name)
	}
	told := files(w.gather())
	told = slices.DeleteFunc(told, func(name string) bool { return strings.HasSuffix(name, ".tmp") })
	if !slices.Equal(told, want) {
		t.Errorf("%d files were told of, not 500", len(told))
	}
}

// While nobody asks, batches become one.
func TestPatience(t *testing.T) {
	t.Parallel()
	w := start(t)
	for i := range 5 {
		w.write(fmt.Sprintf("content/recipes/%d.md", i), "x")
		time.Sleep(most)
	}
	if got := w.gather(); len(got) != 1 || len(got[0].Files) != 5 {
		t.Errorf("told %v", got)
	}
}

// A file that is written all the time is told of in between.
func TestRestless(t *testing.T) {
	t.Parallel()
	w := start(t)
	for end := time.Now().Add(3 * most); time.Now().Before(end); {
		w.write("content/recipes/log.md", time.Now().String())
		select {
		case <-w.batches:
			return
		case <-time.After(time.Millisecond):
		}
	}
	t.Error("a file that is always written was not told of")
}

// The folder itself may go, and another one take its place.
func TestReplaced(t *testing.T) {
	t.Parallel()
	w := start(t, "content/recipes/plum.md")
	for _, again := range []string{"first", "second"} {
		w.check(os.Rename(w.dir, w.dir+"-"+again))
		if got := w.await(); !got.All {
			t.Errorf("%s: the end of the folder was told as %v", again, got)
		}
		w.mkdir("content/recipes")
		w.write("content/recipes/pear.md", again)
		if got := w.await(); !got.All {
			t.Errorf("%s: the new folder was told as %v", again, got)
		}
		w.gather()
		w.write("content/recipes/pear.md", "changed")
		if told := files(w.gather()); !slices.Contains(told, "content/recipes/pear.md") {
			t.Errorf("%s: a change in the new folder was told as %v", again, told)
		}
	}
}

// await gives the next batch that says that everything may have changed.
func (w *watched) await() (b Batch) {
	w.t.Helper()
	for end := time.After(20 * heartbeat); ; {
		select {
		case b = <-w.batches:
			if b.All {
				return b
			}
		case <-end:
			return b
		}
	}
}

// The folder content may go and come back as well.
func TestContentReplaced(t *testing.T) {
	t.Parallel()
	w := start(t, "content/recipes/plum.md")
	w.check(os.RemoveAll(w.path("content")))
	if told := files(w.gather()); !slices.Contains(told, "content") {
		t.Errorf("told %v", told)
	}
	w.mkdir("content/recipes")
	w.write("content/recipes/pear.md", "x")
	if told := files(w.gather()); !slices.Contains(told, "content/recipes/pear.md") {
		t.Errorf("told %v", told)
	}
}

// What links lead to within the folder is watched for their sake.
func TestTargets(t *testing.T) {
	t.Parallel()
	w := start(t)
	w.mkdir("drafts")
	w.write("drafts/plum.md", "x")
	w.write("pear.md", "x")
	if err := os.Symlink("../../drafts/plum.md", w.path("content/recipes/plum.md")); err != nil {
		t.Skip("this system makes no links:", err)
	}
	w.check(os.Symlink("../../pear.md", w.path("content/recipes/pear.md")))
	w.gather()
	w.write("drafts/plum.md", "y")
	w.write("drafts/other.md", "y")
	w.write("pear.md", "y")
	if told := files(w.gather()); !slices.Equal(told, []string{"drafts/plum.md", "pear.md"}) {
		t.Errorf("told %v", told)
	}
}

// When the system loses count, everything has to be looked at, and the author is
// told why.
func TestOverflow(t *testing.T) {
	t.Parallel()
	w := &watcher{changed: make(map[string]bool)}
	w.timer = time.NewTimer(time.Hour)
	w.lose(fsnotify.ErrEventOverflow)
	if b := w.batch(); !b.All || !strings.Contains(b.Why, "lost count") || !w.moved {
		t.Errorf("told %v", b)
	}
	w.lose(errors.New("no more"))
	if b := w.batch(); b.Why != "no more" {
		t.Errorf("told %v", b)
	}
}

// A queue that does overflow is the system's own: 16,384 events, unless it is
// set otherwise.
func TestOverflowOfTheSystem(t *testing.T) {
	if testing.Short() {
		t.Skip("writes 20,000 files")
	}
	limit, err := os.ReadFile("/proc/sys/fs/inotify/max_queued_events")
	if err != nil || strings.TrimSpace(string(limit)) != "16384" {
		t.Skip("the system's queue is of another length")
	}
	tr := tree{Folder: Folder{Dir: t.TempDir(), Ignores: func(string) bool { return false }}}
	if err := tr.plant(); err != nil {
		t.Skip("this system does not watch:", err)
	}
	for i := range 20_000 {
		if err := os.WriteFile(filepath.Join(tr.Dir, fmt.Sprint(i)), nil, 0o666); err != nil {
			t.Fatal(err)
		}
	}
	w := &watcher{tree: tr, batches: make(chan Batch), changed: make(map[string]bool)}
	ctx, cancel := context.WithCancel(t.Context())
	defer cancel()
	go w.run(ctx)
	for end := time.After(time.Minute); ; {
		select {
		case b := <-w.batches:
			if b.All && b.Why != "" {
				return
			}
		case <-end:
			t.Fatal("nothing was told of the overflow")
		}
	}
}

// Poll asks for everything until it is told to stop.
func TestPoll(t *testing.T) {
	t.Parallel()
	ctx, cancel := context.WithCancel(t.Context())
	batches := Poll(ctx, time.Millisecond)
	for range 3 {
		if b := <-batches; !b.All || b.Why != "" {
			t.Errorf("told %v", b)
		}
	}
	cancel()
}

func TestWatchNothing(t *testing.T) {
	t.Parallel()
	f := Folder{Dir: filepath.Join(t.TempDir(), "nothing"), Ignores: func(string) bool { return false }}
	if _, err := f.Watch(t.Context()); !errors.Is(err, os.ErrNotExist) {
		t.Errorf("error %v", err)
	}
}
