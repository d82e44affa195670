package main

import (
	"bytes"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// A site is a published one, or a damaged copy, and what of it is looked at where all would take too long.
type site struct {
	dir     string
	address string   // where it is to stand
	fault   string   // what a damaged copy must be found to have; else empty
	pages   []string // every page, or the folder that holds them
	kinds   []string // the path of one page of each kind
	timed   []string // the path of each page whose speed is measured
	recipes []string // every recipe page, as a file of dir
	data    []string // every file with structured data
	linking []string // the pages whose links are followed, as files of dir; if none, all
}

// damaged is a copy to damage, of which only the first page of each sort is looked at. Its files are links to those of
// the site: one is damaged by putting another in its place.
func (s site) damaged(t *testing.T) site {
	t.Helper()
	dir := t.TempDir()
	err := filepath.WalkDir(s.dir, func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		to := filepath.Join(dir, strings.TrimPrefix(name, s.dir))
		if d.IsDir() {
			return os.MkdirAll(to, 0o755)
		}
		return os.Link(name, to)
	})
	if err != nil {
		t.Fatal(err)
	}
	page := s.recipes[0]
	return site{
		dir: dir, address: s.address, pages: []string{filepath.Join(dir, home), filepath.Join(dir, page)},
		kinds: []string{"/"}, timed: []string{"/"},
		recipes: []string{page}, data: []string{page, filepath.Join(filepath.Dir(page), "recipe.json")}, linking: []string{home},
	}
}

func publishExample(t *testing.T) site {
	t.Helper()
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	dir := filepath.Join(t.TempDir(), "published")
	var stdout, stderr bytes.Buffer
	args := []string{"publish", example, "--to", dir, "--day", "2026-11-30"} // after the newest post, whatever the clock says
	if status := run(args, strings.NewReader(""), &stdout, &stderr); status != 0 {
		t.Fatalf("publish: status %d\n%s%s", status, &stdout, &stderr)
	}
	settings, err := os.ReadFile(filepath.Join(example, "content/site.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	address := regexp.MustCompile(`(?m)^address:\s*(\S+)`).FindSubmatch(settings)
	if address == nil {
		t.Fatal("the example has no address, so it has no feeds and no structured data")
	}
	s := site{dir: dir, address: string(address[1]), pages: []string{dir}}
	for _, name := range s.glob("recipes/*/recipe.json") { // without those that were withdrawn
		s.recipes = append(s.recipes, filepath.Join(filepath.Dir(name), "index.html"))
	}
	s.data = slices.Concat(s.glob("*.html"), s.glob("*/index.html"), s.glob("*/*/index.html"), s.glob("recipes/*/recipe.json"))
	s.kinds = s.pageKinds(t)
	s.timed = []string{"/", "/recipes/", s.path(s.recipes[0])}
	return s
}

// pageKinds picks one page of each kind, among them the first recipe of each way of keeping.
func (s site) pageKinds(t *testing.T) []string {
	kinds := []string{"/", "/404.html", "/offline.html"}
	for _, name := range s.glob("*/index.html") { // the indexes, the search, the author's pages
		kinds = append(kinds, s.path(name))
	}
	for _, pattern := range []string{"show-notes/*/index.html", "produce/*/index.html", "season/*/index.html"} {
		kinds = append(kinds, s.path(s.first(t, pattern)))
	}
	for _, name := range s.glob("recipes/*/index.html") {
		if !slices.Contains(s.recipes, name) { // withdrawn, as is its card
			kinds = append(kinds, s.path(name), s.path(name)+"card/")
		}
	}
	recipe := regexp.MustCompile(`href="?(/recipes/[a-z0-9-]+/)`)
	for _, way := range []string{"boiling-water", "pressure", "fermenting", "freezer", "drying"} {
		index := s.first(t, "keeping/"+way+"/index.html")
		found := recipe.FindStringSubmatch(readFile(t, filepath.Join(s.dir, index)))
		if found == nil {
			t.Fatalf("%s lists no recipe", index)
		}
		kinds = append(kinds, s.path(index), found[1], found[1]+"card/")
	}
	slices.Sort(kinds)
	return slices.Compact(kinds)
}

// glob lists files of the site by a pattern, relative to it.
func (s site) glob(pattern string) []string {
	names, _ := filepath.Glob(filepath.Join(s.dir, filepath.FromSlash(pattern)))
	for i, name := range names {
		names[i], _ = filepath.Rel(s.dir, name)
	}
	return names
}

func (s site) first(t *testing.T, pattern string) string {
	t.Helper()
	names := s.glob(pattern)
	if len(names) == 0 {
		t.Fatalf("the example publishes no %s", pattern)
	}
	return names[0]
}

// path is where a reader finds a page.
func (s site) path(name string) string {
	return "/" + strings.TrimSuffix(filepath.ToSlash(name), "index.html")
}

func readFile(t *testing.T, name string) string {
	t.Helper()
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}
