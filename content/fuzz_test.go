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

// FuzzLine takes a text for everything that a cook writes in one line.
func FuzzLine(f *testing.F) {
	for _, text := range slices.Concat(quantityTexts, bandTexts, wantTexts, ingredientLines(f)) {
		f.Add(text)
	}
	checkPatterns := patternCheck()
	f.Fuzz(func(t *testing.T, text string) {
		checkQuantity(t, text)
		checkBand(t, text)
		checkIngredient(t, text)
		checkPatterns(t, text)
	})
}

// FuzzFile takes bytes for a recipe, an episode, the settings, and a file in
// which keys are to be set.
func FuzzFile(f *testing.F) {
	seed(f, "recipes")
	seed(f, "episodes")
	if data, err := os.ReadFile("site.yaml"); err == nil {
		f.Add(data)
	}
	for _, matter := range patchSeeds {
		f.Add([]byte("---\n" + matter + "\n---\nBody.\n"))
		f.Add([]byte("---\r\n" + strings.ReplaceAll(matter, "\n", "\r\n") + "\r\n---\r\nBody.\r\n"))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		checkRecipe(t, data)
		checkEpisode(t, data)
		_, faults := ReadSettings("content/site.yaml", data)
		checkPlaces(t, data, faults)
		checkPatch(t, data)
	})
}

func checkRecipe(t *testing.T, data []byte) {
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
}

func checkEpisode(t *testing.T, data []byte) {
	e, faults := ReadEpisode("content/episodes/a.md", data)
	checkPlaces(t, data, faults)
	for _, c := range e.Chapters {
		checkPlace(t, data, c.Pos)
	}
	e.Body.HTML(e.Body.Doc)
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
