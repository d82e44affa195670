package main

import (
	"image"
	"image/jpeg"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"
)

// The same content gives the same bytes wherever the clock stands, however many
// processors there are, wherever the site lies and in which order it was
// written, and whether prints are made or kept from before.
func TestRepeatable(t *testing.T) {
	site := generate(t, 60)
	smallPictures(t, site)
	again := copiedBackwards(t, site)
	base := t.TempDir()
	first := filepath.Join(base, "first")
	publishInto(t, site, first)
	tests := []struct {
		name, site string
		env        []string
	}{
		{"east", site, []string{"TZ=Pacific/Kiritimati", "GOMAXPROCS=1"}},
		{"half an hour", site, []string{"TZ=America/St_Johns", "GOMAXPROCS=8", "XDG_CACHE_HOME=" + filepath.Join(base, "prints")}},
		{"moved", again, []string{"LC_ALL=tr_TR.UTF-8", "LANG=tr_TR.UTF-8", "HOME=/nowhere"}},
	}
	for _, test := range tests {
		out := filepath.Join(base, test.name)
		cmd := exec.Command("stillroom", "publish", test.site, "--to", out, "--day", "2026-11-25")
		cmd.Dir = t.TempDir()
		cmd.Env = append(os.Environ(), test.env...)
		if said, err := cmd.CombinedOutput(); err != nil {
			t.Fatalf("%s: %v\n%s", test.name, err, said)
		}
		if diff := difference(first, out); diff != "" {
			t.Errorf("%s: %s differs", test.name, diff)
		}
	}
}

// smallPictures puts corners of two pictures by turns in the place of all: to
// print two dozen whole ones takes a minute.
func smallPictures(t *testing.T, dir string) {
	t.Helper()
	files := filesOf(t, filepath.Join(dir, "content/pictures"))
	two := []string{corner(t, files[0]), corner(t, files[1])}
	for i, file := range files {
		writeTo(t, file, two[i%2])
	}
}

// corner gives a corner of a photograph as a JPEG.
func corner(t *testing.T, file string) string {
	t.Helper()
	img, err := jpeg.Decode(strings.NewReader(readFile(t, file)))
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	if err := jpeg.Encode(&b, img.(*image.YCbCr).SubImage(image.Rect(0, 0, 640, 480)), nil); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// copiedBackwards copies a site, the last file first, each with a time of its
// own: folders list it in another order, and nothing is as old as it was.
func copiedBackwards(t *testing.T, dir string) string {
	t.Helper()
	to := t.TempDir()
	at := time.Date(2031, 1, 1, 0, 0, 0, 0, time.UTC)
	files := filesOf(t, dir)
	slices.Reverse(files)
	for _, file := range files {
		name, err := filepath.Rel(dir, file)
		if err != nil {
			t.Fatal(err)
		}
		writeTo(t, filepath.Join(to, name), readFile(t, file))
		at = at.Add(-time.Hour)
		if err := os.Chtimes(filepath.Join(to, name), at, at); err != nil {
			t.Fatal(err)
		}
	}
	return to
}

func filesOf(t *testing.T, dir string) (files []string) {
	t.Helper()
	err := filepath.WalkDir(dir, func(name string, e fs.DirEntry, err error) error {
		if err == nil && !e.IsDir() {
			files = append(files, name)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}
