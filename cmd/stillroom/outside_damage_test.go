package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// replace is damage to the first file that the pattern names, in which old must be found.
func replace(pattern, old, new string) func(*testing.T, string) {
	return func(t *testing.T, dir string) {
		t.Helper()
		name := filepath.Join(dir, site{dir: dir}.first(t, pattern))
		text := readFile(t, name)
		if !strings.Contains(text, old) {
			t.Fatalf("%s holds no %q to damage", name, old)
		}
		put(t, name, strings.Replace(text, old, new, 1))
	}
}

// insert is damage to a page: the text is put at the end of its main part.
func insert(pattern, text string) func(*testing.T, string) {
	return replace(pattern, "</main>", text+"</main>")
}

// add is damage to every file that the pattern names: the text is put at its end.
func add(pattern, text string) func(*testing.T, string) {
	return func(t *testing.T, dir string) {
		t.Helper()
		names := site{dir: dir}.glob(pattern)
		if len(names) == 0 {
			t.Fatalf("the example publishes no %s", pattern)
		}
		for _, name := range names {
			name = filepath.Join(dir, name)
			put(t, name, readFile(t, name)+text)
		}
	}
}

// write is damage: a file of the name is there, and holds the text.
func write(name, text string) func(*testing.T, string) {
	return func(t *testing.T, dir string) {
		t.Helper()
		put(t, filepath.Join(dir, name), text)
	}
}

// remove is damage: the file is gone.
func remove(name string) func(*testing.T, string) {
	return func(t *testing.T, dir string) {
		t.Helper()
		if err := os.Remove(filepath.Join(dir, name)); err != nil {
			t.Fatal(err)
		}
	}
}

// all does several damages.
func all(damages ...func(*testing.T, string)) func(*testing.T, string) {
	return func(t *testing.T, dir string) {
		t.Helper()
		for _, do := range damages {
			do(t, dir)
		}
	}
}

// put writes a new file in the place of what the name stood for.
func put(t *testing.T, name, text string) {
	t.Helper()
	os.Remove(name)
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}
