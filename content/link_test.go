package content

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"testing"
	"testing/fstest"
)

func TestLeadsOut(t *testing.T) {
	fsys := fstest.MapFS{
		"content/recipes/a.md":     {Data: []byte("a")},
		"content/recipes/in.md":    link("a.md"),
		"content/recipes/up.md":    link("../recipes/a.md"),
		"content/recipes/out.md":   link("../../../a.md"),
		"content/recipes/abs.md":   link("/etc/hosts"),
		"content/recipes/win.md":   link(`C:\secret.txt`),
		"content/recipes/loop.md":  link("loop.md"),
		"content/recipes/ping.md":  link("pong.md"),
		"content/recipes/pong.md":  link("ping.md"),
		"content/recipes/two.md":   link("folder/secret.md"),
		"content/recipes/folder":   link("../../.."),
		"content/recipes/twice.md": link("in.md"),
		"content/recipes/none.md":  link("nowhere.md"),
	}
	for file, want := range map[string]bool{
		"content/recipes/a.md": false, "content/recipes/in.md": false, "content/recipes/up.md": false, "content/recipes/twice.md": false,
		"content/recipes/none.md": false, "content/recipes/out.md": true, "content/recipes/abs.md": true, "content/recipes/win.md": true,
		"content/recipes/loop.md": true, "content/recipes/ping.md": true, "content/recipes/two.md": true,
	} {
		if got := leadsOut(fsys, file); got != want {
			t.Errorf("leadsOut(%s) = %t, want %t", file, got, want)
		}
	}
}

func link(to string) *fstest.MapFile {
	return &fstest.MapFile{Data: []byte(to), Mode: fs.ModeSymlink | 0o777}
}

// What is no ordinary file of the site is told of by its name, and never
// opened: some of these would never end.
func TestReadOddFiles(t *testing.T) {
	dir := t.TempDir()
	secret := filepath.Join(t.TempDir(), "secret.md")
	os.WriteFile(secret, []byte("---\nname: Secret\nsummary: Not for readers.\n---\n"), 0o600)
	for _, folder := range []string{"recipes", "episodes", "pages", "pictures"} {
		if err := os.MkdirAll(filepath.Join(dir, "content", folder), 0o777); err != nil {
			t.Fatal(err)
		}
	}
	in := func(name string) string { return filepath.Join(dir, "content", name) }
	os.WriteFile(in("site.yaml"), []byte("name: Odd\n"), 0o666)
	for name, target := range map[string]string{
		"pages/out.md": secret, "pages/void.md": "/dev/zero", "pages/loop.md": "loop.md", "pages/none.md": "nowhere.md", "pages/dir.md": "../recipes",
		"pictures/out.jpg": "/etc/hosts", "episodes/out.vtt": "/dev/zero", "episodes/out.mp3": "/dev/zero", "guids.txt": "/dev/zero",
	} {
		if err := os.Symlink(target, in(name)); err != nil {
			t.Skip(err)
		}
	}
	for _, large := range []struct {
		name string
		size int64
	}{{"pictures/large.svg", 5 << 20}, {"pictures/large.png", 101 << 20}, {"episodes/large.vtt", 5 << 20}, {"pages/large.md", 3 << 30}} {
		os.WriteFile(in(large.name), nil, 0o666)
		if err := os.Truncate(in(large.name), large.size); err != nil { // a hole takes no room
			t.Skip(err)
		}
	}
	site, faults, err := Read(os.DirFS(dir), nil)
	if err != nil {
		t.Fatal(err)
	}
	if len(site.Pictures)+len(site.Media) != 0 {
		t.Errorf("taken for what they are not: %v %v", site.Pictures, site.Media)
	}
	got := make(map[string]string)
	for _, f := range faults {
		if f.Kind == BadFileName || f.Kind == BadText {
			got[f.Pos.File] = f.Message
		}
	}
	const out = "this is a link that leads out of the site"
	for file, want := range map[string]string{
		"pages/out.md": out, "pages/void.md": out, "pages/loop.md": out, "pictures/out.jpg": out, "episodes/out.vtt": out, "episodes/out.mp3": out, "guids.txt": out,
		"pages/none.md": "this is a link to a file that is not there", "pages/dir.md": "this is a link to no regular file, and is not followed",
		"pictures/large.svg": "the file holds 5 MB, and no more than 4 MB are read", "pictures/large.png": "the file holds 101 MB, and no more than 100 MB are read",
		"episodes/large.vtt": "the file holds 5 MB, and no more than 1 MB are read", "pages/large.md": "the file holds more than the 1024 kB that are read",
	} {
		if got["content/"+file] != want {
			t.Errorf("%s: %q, want %q", file, got["content/"+file], want)
		}
		delete(got, "content/"+file)
	}
	if len(got) > 0 {
		t.Error("not expected: ", fmt.Sprint(got))
	}
}
