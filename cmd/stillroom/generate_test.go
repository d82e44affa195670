package main

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"
	"testing"

	"stillroom/content"
)

// generate makes a valid site of n recipes: the starter site as it is, and
// what its author might have written if she had kept at it. Of each recipe the
// process, the ingredients and the method are left alone, since a tested
// process stands behind them; names, days, tags, notes and kitchen logs are
// new, notes speak of other recipes, some recipes have a picture, and every
// thirtieth is spoken of in an episode. From then on prints are kept in a
// cache of the test's own. The same n gives the same site.
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
	texts := make([][]byte, len(names))
	for i, name := range names {
		if texts[i], err = fs.ReadFile(content.Starter, name); err != nil {
			t.Fatal(err)
		}
	}
	slugOf := func(i int) string {
		slug := strings.TrimSuffix(path.Base(names[i%len(names)]), ".md")
		if i >= len(names) {
			slug = fmt.Sprintf("%s-%d", slug, i)
		}
		return slug
	}
	for i := len(names); i < n; i++ {
		shelve(t, filepath.Join(dir, "content/recipes", slugOf(i)+".md"), retold(texts[i%len(names)], i, slugOf))
		if i%30 == 0 {
			shelve(t, filepath.Join(dir, "content/episodes", fmt.Sprintf("evening-%d.md", i/30)), evening(i, slugOf))
		}
	}
	return dir
}

func shelve(t testing.TB, name string, data []byte) {
	t.Helper()
	if err := os.WriteFile(name, data, 0o666); err != nil {
		t.Fatal(err)
	}
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
