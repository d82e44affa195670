package main

import (
	"bytes"
	"image"
	"image/color"
	"image/jpeg"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"golang.org/x/sys/unix"
)

// onFullDisk is the program where not a byte can be written to a file: the
// limit of setrlimit(2), which binds root as well, fails as a full disk does,
// after the file was made.
func onFullDisk(t *testing.T, args ...string) *exec.Cmd {
	t.Helper()
	exe, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	named := filepath.Join(t.TempDir(), "stillroom") // see TestMain
	if err := os.Symlink(exe, named); err != nil {
		t.Fatal(err)
	}
	return exec.Command("sh", append([]string{"-c", `ulimit -S -f 0; exec "$0" "$@"`, named}, args...)...)
}

// everything gives what lies in a folder, by path.
func everything(t *testing.T, dir string) map[string]string {
	t.Helper()
	all := make(map[string]string)
	err := filepath.WalkDir(dir, func(name string, e fs.DirEntry, err error) error {
		if err != nil || e.IsDir() {
			all[name] = "a folder"
			return err
		}
		data, err := os.ReadFile(name)
		all[name] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// A full disk is told of, nothing of what was there is lost and nothing is left
// half-written; with room again the same command does its work.
func TestFullDisk(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	if status := run([]string{"start", "larder"}, nil, &bytes.Buffer{}, &bytes.Buffer{}); status != succeeded {
		t.Fatal("no site to begin with")
	}
	jam := filepath.Join("larder", "content", "recipes", "blackberry-jam.md")
	text, err := os.ReadFile(jam)
	if err != nil {
		t.Fatal(err)
	}
	text = bytes.Replace(text, []byte("above 6,000 ft: 20 min"), []byte("above 6,000 ft: 10 min"), 1)
	unfilled := filepath.Join(dir, "unfilled.md")
	if err := os.WriteFile(unfilled, text, 0o666); err != nil {
		t.Fatal(err)
	}
	for _, args := range [][]string{
		{"publish", "larder"},
		{"start", "cellar"},
		{"start", "recipe", "Plum jam", "--to", "larder"},
		{"start", "episode", "Plums", "--to", "larder"},
		{"fill", unfilled},
		{"labels", jam, "--made", "2026-08-01", "--out", "labels.pdf"},
	} {
		before := everything(t, dir)
		var said bytes.Buffer
		c := onFullDisk(t, args...)
		c.Stderr = &said
		if err := c.Run(); c.ProcessState.ExitCode() != failed {
			t.Errorf("%q: %v, said %s", args, err, &said)
		}
		lines := strings.Split(strings.TrimSpace(said.String()), "\n")
		if last := lines[len(lines)-1]; !strings.HasPrefix(last, "stillroom: ") || !strings.HasSuffix(last, ": file too large") || strings.Count(last, "file too large") != 1 {
			t.Errorf("%q says %q", args, last)
		}
		after := everything(t, dir)
		for name := range after {
			if before[name] != after[name] {
				t.Errorf("%q leaves %s", args, name)
			}
		}
		if len(before) != len(after) {
			t.Errorf("%q: %d files became %d", args, len(before), len(after))
		}
		said.Reset()
		if status := run(args, nil, &bytes.Buffer{}, &said); status != succeeded {
			t.Errorf("%q with room again ends with %d: %s", args, status, &said)
		}
	}
}

// A preview that cannot keep prints says so once and shows the pictures; as
// soon as there is room it keeps them again. It writes nothing else.
func TestPreviewOnFullDisk(t *testing.T) {
	t.Parallel()
	dir, recipe := larder(t)
	picture := func(c color.Color) {
		t.Helper()
		img := image.NewRGBA(image.Rect(0, 0, 900, 600))
		for i := range 900 * 600 {
			img.Set(i%900, i/900, c)
		}
		var data bytes.Buffer
		if err := jpeg.Encode(&data, img, nil); err != nil {
			t.Fatal(err)
		}
		name := filepath.Join(dir, "content", "pictures", "kraut.jpg")
		if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, data.Bytes(), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	picture(color.White)
	shown := strings.Replace(kraut, "kind:", "picture: {file: kraut.jpg, alt: A crock}\nkind:", 1)
	if err := os.WriteFile(recipe, []byte(shown), 0o666); err != nil {
		t.Fatal(err)
	}
	before := everything(t, dir)
	r := &running{t: t, said: new(heard), cmd: onFullDisk(t, "preview", dir, "--address", "127.0.0.1:0")}
	cache := t.TempDir()
	r.begin(cache)
	isPrinted := func() bool { return strings.Contains(r.page("recipes/kraut/"), "srcset") }
	r.until("the picture as it is published", isPrinted)
	if n := strings.Count(r.said.String(), "Prints of pictures cannot be kept, and are made again the next time: "); n != 1 {
		t.Errorf("said %d times that prints cannot be kept:\n%s", n, r.said)
	}
	for name, text := range everything(t, cache) {
		if text != "a folder" {
			t.Errorf("%s is left, of %d bytes", name, len(text))
		}
	}
	after := everything(t, dir)
	if len(after) != len(before) {
		t.Errorf("the site had %d files and has %d", len(before), len(after))
	}
	enough := unix.Rlimit{Cur: unix.RLIM_INFINITY, Max: unix.RLIM_INFINITY}
	if err := unix.Prlimit(r.cmd.Process.Pid, unix.RLIMIT_FSIZE, &enough, nil); err != nil {
		t.Skip("the limit is not to be lifted here:", err)
	}
	picture(color.Black)
	r.until("the new picture in the cache", func() bool {
		isPrinted()
		for _, text := range everything(t, cache) {
			if text != "a folder" {
				return true
			}
		}
		return false
	})
	if status := r.end(); status != succeeded {
		t.Errorf("it ends with %d:\n%s", status, r.said)
	}
}
