package content

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
)

func FuzzReadRecipe(f *testing.F) {
	seed(f, "recipes")
	f.Fuzz(func(t *testing.T, data []byte) {
		r, faults := ReadRecipe("content/recipes/a.md", data)
		checkPlaces(t, data, faults)
		for _, p := range r.Body.Method {
			checkPlace(t, data, p.Pos)
			for _, s := range p.Steps {
				checkPlace(t, data, s.Pos)
				if strings.ContainsAny(s.Text, "\n\r") {
					t.Errorf("step of several lines: %q", s.Text)
				}
			}
		}
		for _, k := range r.Keeping {
			checkPlace(t, data, k.Pos)
		}
		r.Body.HTML(r.Body.Doc)
	})
}

func FuzzReadEpisode(f *testing.F) {
	seed(f, "episodes")
	f.Fuzz(func(t *testing.T, data []byte) {
		e, faults := ReadEpisode("content/episodes/a.md", data)
		checkPlaces(t, data, faults)
		for _, c := range e.Chapters {
			checkPlace(t, data, c.Pos)
		}
		e.Body.HTML(e.Body.Doc)
	})
}

func FuzzReadSettings(f *testing.F) {
	seed(f, "none")
	if data, err := os.ReadFile("site.yaml"); err == nil {
		f.Add(data)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		_, faults := ReadSettings("content/site.yaml", data)
		checkPlaces(t, data, faults)
	})
}

// seed adds the example's files of a folder, and every case of testdata.
func seed(f *testing.F, folder string) {
	files, _ := filepath.Glob(folder + "/*.md")
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(data)
	}
	archives, _ := filepath.Glob("testdata/*/*.txtar")
	for _, file := range archives {
		a, err := txtar.ParseFile(file)
		if err != nil {
			f.Fatal(err)
		}
		for _, c := range a.Files {
			f.Add(c.Data)
		}
	}
}

// checkPlaces checks that every fault stands in the file, and that they come
// in order.
func checkPlaces(t *testing.T, data []byte, faults []Fault) {
	t.Helper()
	for _, f := range faults {
		checkPlace(t, data, f.Pos)
		if f.AlsoSay != "" {
			checkPlace(t, data, f.Also)
		}
		if f.Message == "" || f.Kind == "" {
			t.Errorf("a fault that says too little or too much: %+v", f)
		}
	}
	if !slices.IsSortedFunc(faults, compareFaults) {
		t.Errorf("faults out of order: %v", faults)
	}
}

// checkPlace checks that p is a place in data, or just behind the end of a
// line.
func checkPlace(t *testing.T, data []byte, p Pos) {
	t.Helper()
	lines := bytes.Split(bytes.TrimPrefix(data, byteOrderMark), []byte("\n"))
	if p.Line < 1 || p.Line > len(lines) || p.Col < 1 || p.Col > len(lines[p.Line-1])+1 {
		t.Errorf("%s is no place in a file of %d lines", p, len(lines))
	}
}
