package build

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"
)

// siteOf makes files of pairs of path and text.
func siteOf(pairs ...string) []File {
	var files []File
	for i := 0; i < len(pairs); i += 2 {
		files = append(files, NewFile(pairs[i], []byte(pairs[i+1])))
	}
	return files
}

// onDisk reads a published folder, without its manifest.
func onDisk(t testing.TB, dir string) map[string]string {
	t.Helper()
	found := make(map[string]string)
	err := filepath.WalkDir(dir, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || d.Name() == ListName {
			return err
		}
		data, err := os.ReadFile(name)
		rel, _ := filepath.Rel(dir, name)
		found[filepath.ToSlash(rel)] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return found
}

func wantOnDisk(t testing.TB, dir string, files []File) {
	t.Helper()
	want := make(map[string]string)
	for _, f := range files {
		want[f.Path] = string(bytesOf(t, f))
	}
	if got := onDisk(t, dir); !maps.Equal(got, want) {
		t.Errorf("on disk: %q\nwant: %q", got, want)
	}
	if _, err := os.Lstat(dir + ".next"); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("%s.next was left behind", dir)
	}
}

func mustWrite(t testing.TB, dir string, files []File) Written {
	t.Helper()
	w, err := Output{Dir: dir}.Write(files)
	if err != nil {
		t.Fatal(err)
	}
	return w
}

// unsealed leaves out what differs every time.
func unsealed(w Written) Written {
	w.Seal = Seal{}
	return w
}

func put(t testing.TB, name, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
}

var (
	first  = siteOf("index.html", "plums", "recipes/damson/index.html", "damson", "recipes/quince/index.html", "quince")
	second = siteOf("index.html", "pears", "recipes/damson/index.html", "damson", "recipes/sloe/index.html", "sloe")
)

func TestWrite(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "deep", "published")
	if got, want := unsealed(mustWrite(t, dir, first)), (Written{Files: 3, OneStep: true}); got != want {
		t.Errorf("first: %+v, want %+v", got, want)
	}
	wantOnDisk(t, dir, first)
	kept := filepath.Join(dir, "recipes/damson/index.html")
	old := time.Date(2020, 9, 1, 0, 0, 0, 0, time.UTC)
	if err := os.Chtimes(kept, old, old); err != nil {
		t.Fatal(err)
	}

	got := mustWrite(t, dir, second)
	if got.Files != 3 || got.Same != 1 || got.Gone != 1 {
		t.Errorf("second: %+v, want 3 files, 1 of them the same, 1 gone", got)
	}
	wantOnDisk(t, dir, second)
	if info, err := os.Stat(kept); err != nil || !info.ModTime().Equal(old) {
		t.Errorf("a file that did not change has a new time: %v, %v", info.ModTime(), err)
	}
}

func TestWriteFileByFile(t *testing.T) {
	for _, errno := range []error{syscall.EXDEV, syscall.EINVAL, errors.ErrUnsupported} {
		dir := filepath.Join(t.TempDir(), "published")
		mustWrite(t, dir, first)
		got, err := Output{Dir: dir}.write(second, func(a, b string) error { return errno })
		if want := (Written{Files: 3, Same: 1, Gone: 1}); err != nil || unsealed(got) != want {
			t.Errorf("%v: %+v, %v, want %+v", errno, got, err, want)
		}
		wantOnDisk(t, dir, second)
		if _, err := os.Stat(filepath.Join(dir, "recipes/quince")); !errors.Is(err, fs.ErrNotExist) {
			t.Errorf("%v: the folder of a page that is gone is still there", errno)
		}
		mustWrite(t, dir, first) // its manifest is as good as any
		wantOnDisk(t, dir, first)
	}
}

// What a page needs is there before it, and lists of pages come after them.
func TestTurn(t *testing.T) {
	inOrder := []string{"assets/style.0a.css", "recipes/damson/index.html", "recipes/index.html", "404.html", "recipes.atom"}
	for i, p := range inOrder {
		for _, q := range inOrder[i+1:] {
			if turn(p) > turn(q) {
				t.Errorf("%s is moved after %s", p, q)
			}
		}
	}
}

func TestWriteRefuses(t *testing.T) {
	tests := []struct {
		name    string
		prepare func(dir string)
		files   []File
		want    string
	}{
		{"a file of the author's", func(dir string) { put(t, dir+"/CNAME", "x") }, second,
			"DIR holds files that Stillroom did not make and that would be lost: CNAME"},
		{"many files", func(dir string) {
			for i := range 7 {
				put(t, fmt.Sprintf("%s/.git/%d", dir, i), "x")
			}
		}, second, "would be lost: .git/0, .git/1, .git/2, .git/3, .git/4 and 2 more"},
		{"a link in place of a page", func(dir string) {
			os.Remove(dir + "/index.html")
			os.Symlink("/etc/hosts", dir+"/index.html")
		}, second, "would be lost: index.html"},
		{"a folder named as ours", func(dir string) { put(t, dir+".next/diary.txt", "x") }, second,
			"DIR.next holds files that Stillroom did not make and that would be lost: diary.txt"},
		{"a file for a folder", func(dir string) {
			os.RemoveAll(dir)
			put(t, dir, "x")
		}, second, "DIR is a file, not a folder to publish into"},
		{"a way out", func(string) {}, siteOf("../index.html", "x"), "../index.html cannot be the path of a published file"},
		{"our own list", func(string) {}, siteOf(ListName, "x"), ".stillroom cannot be the path of a published file"},
	}
	for _, test := range tests {
		dir := filepath.Join(t.TempDir(), "published")
		mustWrite(t, dir, first)
		test.prepare(dir)
		before := snapshot(t, filepath.Dir(dir))
		_, err := Output{Dir: dir}.Write(test.files)
		if err == nil || !strings.Contains(err.Error(), strings.ReplaceAll(test.want, "DIR", dir)) {
			t.Errorf("%s: error %v, want %q", test.name, err, test.want)
		}
		if after := snapshot(t, filepath.Dir(dir)); !slices.Equal(before, after) {
			t.Errorf("%s: %q became %q", test.name, before, after)
		}
	}
}

// snapshot lists everything under a folder with its mode and its bytes.
func snapshot(t testing.TB, dir string) []string {
	t.Helper()
	var all []string
	err := filepath.WalkDir(dir, func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		line := d.Type().String() + " " + name
		if d.Type().IsRegular() {
			data, err := os.ReadFile(name)
			if err != nil {
				return err
			}
			line += " " + string(data)
		}
		all = append(all, line)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// A folder that is looked at on a desktop is still ours.
func TestWriteOverDroppings(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, first)
	put(t, dir+"/recipes/.DS_Store", "x")
	mustWrite(t, dir, second)
	wantOnDisk(t, dir, second)
}

// A page that cannot be made leaves the old site alone, and of several it is the
// first that is told of.
func TestWriteUnmade(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, first)
	before := snapshot(t, filepath.Dir(dir))
	var broken []File
	for i := range 100 {
		broken = append(broken, madeLater(fmt.Sprintf("recipes/%d.html", i), func() ([]byte, error) {
			if i == 70 || i == 99 {
				return nil, fmt.Errorf("write page %d", i)
			}
			return []byte("a page"), nil
		}))
	}
	want := "write page 70"
	if _, err := (Output{Dir: dir}).Write(broken); err == nil || err.Error() != want {
		t.Errorf("error %v, want %s", err, want)
	}
	if after := snapshot(t, filepath.Dir(dir)); !slices.Equal(before, after) {
		t.Errorf("%q became %q", before, after)
	}
	if _, _, err := (Output{Dir: dir}).Look(broken); err == nil || err.Error() != want {
		t.Errorf("looked at, error %v, want %s", err, want)
	}
}

// A recording that cannot be read to its end leaves the old site alone.
func TestWriteAfterError(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, first)
	before := snapshot(t, filepath.Dir(dir))
	broken := append(slices.Clone(second), File{"show-notes/1/one.mp3", func() (io.ReadSeekCloser, error) {
		return recording{io.MultiReader(bytes.NewReader(make([]byte, 1<<20)), brokenDisk{})}, nil
	}})
	_, err := Output{Dir: dir}.Write(broken)
	if !errors.Is(err, syscall.EIO) || !strings.HasPrefix(err.Error(), "write show-notes/1/one.mp3: ") {
		t.Errorf("error %v", err)
	}
	if after := snapshot(t, filepath.Dir(dir)); !slices.Equal(before, after) {
		t.Errorf("%q became %q", before, after)
	}
}

// A recording is read once.
type recording struct{ io.Reader }

func (recording) Seek(int64, int) (int64, error) { return 0, nil }
func (recording) Close() error                   { return nil }

type brokenDisk struct{}

func (brokenDisk) Read([]byte) (int, error) { return 0, syscall.EIO }

// Files are compared to their last byte.
func TestWriteCompares(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "published")
	long := strings.Repeat("x", 64<<10)
	for _, test := range []struct {
		text string
		same int
	}{{long, 0}, {long, 1}, {long + "y", 0}, {long, 0}, {long[1:] + "y", 0}, {"", 0}, {"", 1}} {
		if got := mustWrite(t, dir, siteOf("one.mp3", test.text)); got.Same != test.same {
			t.Errorf("%d bytes: %+v, want %d the same", len(test.text), got, test.same)
		}
		wantOnDisk(t, dir, siteOf("one.mp3", test.text))
	}
}

// A published folder may be a link to where a server looks.
func TestWriteThroughLink(t *testing.T) {
	base := t.TempDir()
	real := filepath.Join(base, "srv", "site")
	mustWrite(t, real, first)
	link := filepath.Join(base, "published")
	if err := os.Symlink(real, link); err != nil {
		t.Skip(err)
	}
	mustWrite(t, link, second)
	wantOnDisk(t, real, second)
	if info, err := os.Lstat(link); err != nil || info.Mode()&fs.ModeSymlink == 0 {
		t.Errorf("the link was replaced: %v, %v", info.Mode(), err)
	}
}

// A folder that is shared with a group stays so.
func TestWriteKeepsMode(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("modes are not kept there")
	}
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, first)
	want := fs.ModeDir | fs.ModeSetgid | 0o775
	if err := os.Chmod(dir, want); err != nil {
		t.Fatal(err)
	}
	mustWrite(t, dir, second)
	if info, err := os.Stat(dir); err != nil || info.Mode() != want {
		t.Errorf("mode %v, %v; want %v", info.Mode(), err, want)
	}
}

func TestWriteProgress(t *testing.T) {
	var got []string
	o := Output{Dir: filepath.Join(t.TempDir(), "p"), Progress: func(done, total int) {
		got = append(got, fmt.Sprint(done, "/", total))
	}}
	if _, err := o.Write(first); err != nil {
		t.Fatal(err)
	}
	if want := []string{"1/3", "2/3", "3/3"}; !slices.Equal(got, want) {
		t.Errorf("progress %q, want %q", got, want)
	}
}

func TestArrange(t *testing.T) {
	got, err := arrange(siteOf("b", "", "a/c", "", "a", ""))
	if err != nil || got[0].Path != "a" || got[1].Path != "a/c" || got[2].Path != "b" {
		t.Errorf("arrange = %v, %v", got, err)
	}
	for _, pair := range [][]File{siteOf("a", "", "a", ""), siteOf("A.mp3", "", "a.MP3", "")} {
		if _, err := arrange(pair); err == nil {
			t.Errorf("arrange took both %s and %s", pair[0].Path, pair[1].Path)
		}
	}
}
