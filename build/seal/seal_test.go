package seal

import (
	"crypto/sha256"
	"os"
	"path/filepath"
	"testing"
	"time"
)

func sum(t *testing.T, l Look, dir string) string {
	t.Helper()
	h := sha256.New()
	if err := l.Folder(h, dir); err != nil {
		t.Fatal(err)
	}
	return string(h.Sum(nil))
}

func write(t *testing.T, name, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
}

// sneak changes a file and leaves its size and its time as they were.
func sneak(t *testing.T, name, text string) {
	t.Helper()
	info, err := os.Stat(name)
	if err != nil || info.Size() != int64(len(text)) {
		t.Fatal(err, "or another size")
	}
	write(t, name, text)
	if err := os.Chtimes(name, time.Time{}, info.ModTime()); err != nil {
		t.Fatal(err)
	}
}

// Each change shows, whether it came long before the look, when marks are
// trusted, or at the same time, when they are not.
func TestChangesShow(t *testing.T) {
	tests := []struct {
		name   string
		change func(t *testing.T, dir string)
	}{
		{"edit", func(t *testing.T, dir string) { write(t, dir+"/jam/plum", "a longer text") }},
		{"edit of the same size and time", func(t *testing.T, dir string) { sneak(t, dir+"/jam/plum", "malp") }},
		{"new file", func(t *testing.T, dir string) { write(t, dir+"/jam/sloe", "") }},
		{"new folder", func(t *testing.T, dir string) { os.Mkdir(dir+"/empty", 0o777) }},
		{"file gone", func(t *testing.T, dir string) { os.Remove(dir + "/jam/plum") }},
		{"folder gone", func(t *testing.T, dir string) { os.RemoveAll(dir + "/jam") }},
		{"all gone", func(t *testing.T, dir string) { os.RemoveAll(dir) }},
		{"other name", func(t *testing.T, dir string) { os.Rename(dir+"/jam/plum", dir+"/jam/plums") }},
		{"other folder", func(t *testing.T, dir string) { os.Rename(dir+"/jam/plum", dir+"/plum") }},
		{"two exchanged", func(t *testing.T, dir string) {
			os.Rename(dir+"/jam/plum", dir+"/x")
			os.Rename(dir+"/jam/pear", dir+"/jam/plum")
			os.Rename(dir+"/x", dir+"/jam/pear")
		}},
		{"bytes from one to the next", func(t *testing.T, dir string) {
			write(t, dir+"/jam/pear", "pear\x00")
			write(t, dir+"/jam/plum", "plu")
		}},
	}
	looks := map[string]Look{
		"marks":           {Began: time.Now().Add(time.Hour)},
		"marks and bytes": {Began: time.Now().Add(-time.Hour)},
		"bytes":           {Began: time.Now().Add(time.Hour), Small: 100},
	}
	for how, l := range looks {
		for _, test := range tests {
			dir := filepath.Join(t.TempDir(), "site")
			write(t, dir+"/jam/plum", "plum")
			write(t, dir+"/jam/pear", "pear")
			time.Sleep(tick)
			before := sum(t, l, dir)
			if sum(t, l, dir) != before {
				t.Fatalf("%s: two looks differ", how)
			}
			test.change(t, dir)
			if sum(t, l, dir) == before {
				t.Errorf("%s: %s does not show", how, test.name)
			}
		}
	}
}

// What is known by its bytes may be touched, and copied elsewhere.
func TestBytesAlone(t *testing.T) {
	one, two := t.TempDir(), t.TempDir()
	write(t, one+"/plum", "plum")
	write(t, two+"/plum", "plum")
	if err := os.Chtimes(two+"/plum", time.Time{}, time.Unix(1e9, 0)); err != nil {
		t.Fatal(err)
	}
	l := Look{Began: time.Now(), Small: 4}
	if sum(t, l, one) != sum(t, l, two) {
		t.Error("the same bytes do not look the same")
	}
	l.Small = 3
	if sum(t, l, one) == sum(t, l, two) {
		t.Error("two files with marks of their own look the same")
	}
}

func TestUncertain(t *testing.T) {
	dir := t.TempDir()
	write(t, dir+"/plum", "plum")
	if err := os.Symlink("plum", dir+"/link"); err != nil {
		t.Skip(err)
	}
	if err := (Look{}).Folder(sha256.New(), dir); err == nil {
		t.Error("a link is taken for a file")
	}
	os.Remove(dir + "/link")
	if err := (Look{Since: time.Now().Add(-time.Minute)}).Folder(sha256.New(), dir); err == nil {
		t.Error("a file is let pass that is newer than may be")
	}
	if err := (Look{Since: time.Now()}).Folder(sha256.New(), dir); err != nil {
		t.Error(err)
	}
}

func TestPass(t *testing.T) {
	dir := t.TempDir()
	l := Look{Began: time.Now(), Pass: filepath.Join(dir, "plum")}
	write(t, dir+"/pear", "pear")
	write(t, dir+"/plum", "plum")
	before := sum(t, l, dir)
	write(t, dir+"/plum", "plums")
	if sum(t, l, dir) != before {
		t.Error("a file shows that was to be left out")
	}
}
