package main

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/minio/minio-go/v7"
	"github.com/minio/minio-go/v7/pkg/credentials"
	"github.com/rogpeppe/go-internal/txtar"
)

// headersArrive asks the store for files as a reader's browser gets them: HC-01, HC-02 and SE-06 of the table of standards.
func headersArrive(t *testing.T, h harbour) {
	store, err := minio.New(fmt.Sprintf("127.0.0.1:%d", h.line.port), &minio.Options{Creds: credentials.NewStaticV4("jam", canary, "")})
	if err != nil {
		t.Fatal(err)
	}
	style, err := filepath.Glob(filepath.Join(h.dir, "assets", "style.*.css"))
	if err != nil || len(style) == 0 {
		t.Fatal("no style", err)
	}
	for name, want := range map[string][2]string{
		"index.html":                        {"text/html; charset=utf-8", "no-cache"},
		"recipes.atom":                      {"application/atom+xml", "no-cache"},
		"assets/" + filepath.Base(style[0]): {"text/css; charset=utf-8", "public, max-age=31536000, immutable"},
	} {
		o, err := store.GetObject(t.Context(), "larder", "www/"+name, minio.GetObjectOptions{})
		if err != nil {
			t.Fatal(err)
		}
		info, err := o.Stat()
		if got := [2]string{info.ContentType, info.Metadata.Get("Cache-Control")}; err != nil || got != want {
			t.Errorf("%s: %q, %v, want %q", name, got, err, want)
		}
	}
}

// shippedLarder is a small site with a theme of its own over ours.
func shippedLarder(t *testing.T) string {
	ar, err := txtar.ParseFile("../../testdata/script/publish.txtar")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	for _, f := range ar.Files {
		name := f.Name
		if name == "good.md" {
			name = "larder/content/recipes/damson-jam.md"
		}
		lay(t, filepath.Join(dir, name), string(f.Data))
	}
	return filepath.Join(dir, "larder")
}

// differences compares what was shipped with what was published into a folder.
func differences(t *testing.T, want, got string) string {
	clean := t.TempDir()
	if err := os.CopyFS(clean, os.DirFS(got)); err != nil {
		t.Fatal(err)
	}
	os.Remove(filepath.Join(clean, ".stillroom"))
	plain := t.TempDir()
	if err := os.CopyFS(plain, os.DirFS(want)); err != nil {
		t.Fatal(err)
	}
	os.Remove(filepath.Join(plain, ".stillroom"))
	return difference(plain, clean)
}

var ownLinks = regexp.MustCompile(`(?:href|src)="?(/[^" ><#]*)`)

// deadLinks names a page that leads to something that is not there.
func deadLinks(t *testing.T, dir string) (dead string) {
	err := filepath.WalkDir(dir, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || filepath.Ext(name) != ".html" {
			return err
		}
		for _, m := range ownLinks.FindAllStringSubmatch(readFile(t, name), -1) {
			to := m[1]
			if strings.HasSuffix(to, "/") {
				to += "index.html"
			}
			to, _, _ = strings.Cut(to, "?")
			if _, err := os.Stat(filepath.Join(dir, filepath.FromSlash(to))); err != nil {
				dead = name + " leads to " + to
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return dead
}

// lay writes a file, and makes the folders above it.
func lay(t *testing.T, name, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	put(t, name, text)
}
