package main

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"stillroom/content"
)

// generate makes a valid site of n recipes: those of the starter site as they
// are, and variations of them with other names, days and tags. From then on
// prints are kept in a cache of the test's own.
func generate(t testing.TB, n int) (dir string) {
	t.Helper()
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	dir = t.TempDir()
	if err := os.CopyFS(dir, content.Starter); err != nil {
		t.Fatal(err)
	}
	names, err := fs.Glob(content.Starter, "content/recipes/*.md")
	if err != nil || len(names) == 0 {
		t.Fatal("the starter site has no recipes", err)
	}
	for i := len(names); i < n; i++ {
		name := names[i%len(names)]
		text, err := fs.ReadFile(content.Starter, name)
		if err != nil {
			t.Fatal(err)
		}
		slug := fmt.Sprintf("%s-%d.md", strings.TrimSuffix(path.Base(name), ".md"), i)
		if err := os.WriteFile(filepath.Join(dir, "content/recipes", slug), variation(text, i), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

var (
	nameLine      = regexp.MustCompile(`(?m)^name: (.*)$`)
	publishedLine = regexp.MustCompile(`(?m)^(published|updated): .*$`)
	tagsLine      = regexp.MustCompile(`(?m)^tags: \[`)
	formerlyLine  = regexp.MustCompile(`(?m)^formerly:.*\n( .*\n)*`)
	headNote      = []byte("\n---\n")
)

func variation(text []byte, i int) []byte {
	day := fmt.Sprintf("20%02d-%02d-%02d", 10+i%16, 1+i%12, 1+i%28)
	text = nameLine.ReplaceAll(text, fmt.Appendf(nil, "name: $1 no. %d", i))
	text = publishedLine.ReplaceAll(text, []byte("$1: "+day))
	text = tagsLine.ReplaceAll(text, fmt.Appendf(nil, "tags: [shelf %d, ", i%40))
	text = formerlyLine.ReplaceAll(text, nil)
	note := fmt.Appendf(headNote, "\nOf all the years this was the %dth, and no two were alike.\n", i)
	return bytes.Replace(text, headNote, note, 1)
}

// publishInto publishes a site, as of a day when all of it is out.
func publishInto(t testing.TB, site, to string) {
	t.Helper()
	var stderr bytes.Buffer
	args := []string{"publish", site, "--to", to, "--day", "2026-11-25"}
	if status := run(args, strings.NewReader(""), io.Discard, &stderr); status != succeeded {
		t.Fatalf("status %d: %s", status, &stderr)
	}
}

// The first time, everything is written; when nothing has changed, files are
// compared and linked.
func BenchmarkPublish1000(b *testing.B) {
	site := generate(b, 1000)
	b.Run("first", func(b *testing.B) {
		out := b.TempDir()
		for i := 0; b.Loop(); i++ {
			publishInto(b, site, filepath.Join(out, fmt.Sprint(i)))
		}
	})
	b.Run("unchanged", func(b *testing.B) {
		out := filepath.Join(b.TempDir(), "published")
		publishInto(b, site, out)
		for b.Loop() {
			publishInto(b, site, out)
		}
	})
}

func BenchmarkCheck1000(b *testing.B) {
	site := generate(b, 1000)
	for b.Loop() {
		var stderr bytes.Buffer
		if status := run([]string{"check", site, "--day", "2026-11-25"}, strings.NewReader(""), io.Discard, &stderr); status != succeeded {
			b.Fatalf("status %d: %s", status, &stderr)
		}
	}
}
