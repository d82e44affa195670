package build

import (
	"bytes"
	"errors"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
	"stillroom/themes"
	"stillroom/validate"
)

// Each file of testdata/pages holds a small site and, under want/, some of its
// pages, broken into lines for people.
func TestPages(t *testing.T) {
	names, err := filepath.Glob("testdata/pages/*.txtar")
	if err != nil || len(names) == 0 {
		t.Fatal("no testdata", err)
	}
	for _, name := range names {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".txtar"), func(t *testing.T) {
			ar, err := txtar.ParseFile(name)
			if err != nil {
				t.Fatal(err)
			}
			made := pagesOf(t, ar)
			wanted := make(map[string][]byte)
			for _, f := range ar.Files {
				p, ok := strings.CutPrefix(f.Name, "want/")
				if !ok {
					continue
				}
				wanted[p] = bytes.ReplaceAll(append(made[p], '\n'), []byte("><"), []byte(">\n<"))
				if diff := cmp.Diff(string(f.Data), string(wanted[p])); diff != "" && !*update {
					t.Errorf("%s (-want +got):\n%s", p, diff)
				}
			}
			if *update {
				rewrite(t, name, ar, wanted)
			}
		})
	}
}

// builtIn is the theme, read once.
var builtIn = sync.OnceValues(func() (*themes.Theme, error) { return themes.Load(nil) })

func theme(t testing.TB) *themes.Theme {
	t.Helper()
	th, err := builtIn()
	if err != nil {
		t.Fatal(err)
	}
	return th
}

// pagesOf writes every page of a site, by path.
func pagesOf(t *testing.T, ar *txtar.Archive) map[string][]byte {
	t.Helper()
	e := editionOf(t, ar)
	e.assets.urls = make(map[string]string)
	for _, f := range theme(t).Files {
		e.assets.urls[f.Name] = "/assets/" + f.Name
	}
	files, err := pages(e, theme(t))
	if err != nil {
		t.Fatal(err)
	}
	made := make(map[string][]byte)
	for _, f := range files {
		made[f.Path] = bytesOf(t, f)
	}
	return made
}

// darkroom keeps the prints of the example from one test to the next.
var darkroom = &Darkroom{Cache: new(memory)}

// example is the starter site as it was checked for a day.
var example = sync.OnceValues(func() (c validate.Checked, err error) {
	site, faults, err := content.Read(content.Starter, nil)
	if err != nil {
		return c, err
	}
	_, c, ok := validate.Check(site, faults, content.Date{Year: 2026, Month: 11, Day: 25})
	if !ok {
		err = errors.New("the example does not pass its own check")
	}
	return c, err
})

func exampleChecked(t testing.TB) validate.Checked {
	t.Helper()
	c, err := example()
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// site is the example with all its files, made once.
var site = sync.OnceValues(func() ([]File, error) {
	c, err := example()
	if err != nil {
		return nil, err
	}
	th, err := builtIn()
	if err != nil {
		return nil, err
	}
	files, err := Site(c, th, darkroom)
	if err != nil {
		return nil, err
	}
	for i, f := range files {
		data, err := f.Bytes()
		if err != nil {
			return nil, err
		}
		files[i] = NewFile(f.Path, data)
	}
	return files, nil
})

func published(t testing.TB) []File {
	t.Helper()
	files, err := site()
	if err != nil {
		t.Fatal(err)
	}
	return files
}

func TestTwoBuildsAreOne(t *testing.T) {
	one := published(t)
	two, err := Site(exampleChecked(t), theme(t), darkroom)
	if err != nil {
		t.Fatal(err)
	}
	if len(one) != len(two) {
		t.Fatalf("%d files, then %d", len(one), len(two))
	}
	for i := range one {
		if one[i].Path != two[i].Path || !bytes.Equal(bytesOf(t, one[i]), bytesOf(t, two[i])) {
			t.Errorf("%s differs from %s of the second build", one[i].Path, two[i].Path)
		}
	}
}

func BenchmarkRecipePage(b *testing.B) {
	c, th := exampleChecked(b), theme(b)
	a, err := NewAssets(c, th, darkroom)
	if err != nil {
		b.Fatal(err)
	}
	e := newEdition(c.Site(), c.Day(), a)
	r := e.recipe["bread-and-butter-pickles"]
	var out bytes.Buffer
	for b.Loop() {
		out.Reset()
		told, err := e.tell(r)
		if err != nil {
			b.Fatal(err)
		}
		page := e.recipePage(told)
		if err := th.Write(&out, "recipe", page); err != nil {
			b.Fatal(err)
		}
	}
	b.SetBytes(int64(out.Len()))
}
