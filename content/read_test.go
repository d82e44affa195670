package content

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"
)

// The example site is read without a fault.
func TestReadExample(t *testing.T) {
	s, faults, err := Read(os.DirFS(".."), nil)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range faults {
		t.Errorf("%s: %s; %s", f.Pos, f.Message, f.Advice)
	}
	if len(s.Recipes) < 20 || len(s.Episodes) < 6 || len(s.Pages) < 2 || len(s.Pictures) < 20 || len(s.Media) < 6 || !s.Settings.Name.Set() {
		t.Errorf("read %d recipes, %d episodes, %d pages, %d pictures, %d media files",
			len(s.Recipes), len(s.Episodes), len(s.Pages), len(s.Pictures), len(s.Media))
	}
}

const smallRecipe = "---\nstatus: draft\n---\n1. Boil.\n"

func site(files ...string) fstest.MapFS {
	fsys := fstest.MapFS{"content/site.yaml": {Data: []byte("name: Jars\n")}}
	for _, f := range files {
		fsys[f] = &fstest.MapFile{Data: []byte(smallRecipe)}
	}
	return fsys
}

// Files are found in every folder below, in order of their whole path, and
// nothing that an editor leaves behind is taken for one.
func TestReadFiles(t *testing.T) {
	s, faults, err := Read(site(
		"content/recipes/b.md", "content/recipes/a/z.md", "content/recipes/a-b.md", "content/recipes/notes.txt",
		"content/recipes/.hidden.md", "content/recipes/.git/c.md", "content/recipes/b.md~", "content/recipes/#b.md#",
		"content/recipes/.b.md.swp", "content/recipes/b.tmp", "content/recipes/Plum.MD", "content/recipes/pear.markdown",
		"content/episodes/one.md", "content/episodes/one.mp3", "content/episodes/2/two.VTT", "content/episodes/one.wav",
		"content/pages/about.md", "content/pictures/a/jar.jpg", "content/pictures/.DS_Store", "content/starter.go", "content/other/x.md",
	), nil)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, r := range s.Recipes {
		got = append(got, r.File+" "+r.Slug)
	}
	for _, e := range s.Episodes {
		got = append(got, e.File+" "+e.Slug)
	}
	for _, p := range s.Pages {
		got = append(got, p.File+" "+p.Slug)
	}
	for name, f := range s.Pictures {
		got = append(got, fmt.Sprintf("picture %s %s %d", name, f.Path, f.Size))
	}
	var media []string
	for name, f := range s.Media {
		media = append(media, fmt.Sprintf("media %s %s %d", name, f.Path, f.Size))
	}
	slices.Sort(media)
	for _, f := range faults {
		if f.Kind == BadFileName {
			got = append(got, f.Pos.String()+" "+f.Advice)
		}
	}
	want := []string{
		"content/recipes/a-b.md a-b",
		"content/recipes/a/z.md z",
		"content/recipes/b.md b",
		"content/episodes/one.md one",
		"content/pages/about.md about",
		"picture a/jar.jpg content/pictures/a/jar.jpg 31",
		"content/recipes/Plum.MD name it Plum.md",
		"content/recipes/pear.markdown name it pear.md",
		"media content/episodes/2/two.VTT content/episodes/2/two.VTT 31",
		"media content/episodes/one.mp3 content/episodes/one.mp3 31",
	}
	if diff := cmp.Diff(want, append(got, media...)); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
}

// Two readings of the same folder give the same faults in the same order,
// whichever worker is first.
func TestReadOrder(t *testing.T) {
	fsys := site()
	for i := range 50 {
		fsys[fmt.Sprintf("content/recipes/r%02d.md", i)] = &fstest.MapFile{Data: []byte("---\nkind: jams\nnmae: x\n---\n")}
	}
	_, first, err := Read(fsys, nil)
	if err != nil || len(first) < 100 {
		t.Fatalf("%d faults, %v", len(first), err)
	}
	if !slices.IsSortedFunc(first, compareFaults) {
		t.Error("the faults are not in order of their place")
	}
	for range 5 {
		if _, again, _ := Read(fsys, nil); !slices.Equal(first, again) {
			t.Fatal("a second reading gave other faults")
		}
	}
}

func TestReadProgress(t *testing.T) {
	var got []string
	_, _, err := Read(site("content/recipes/a.md", "content/pages/b.md"), func(done, total int) {
		got = append(got, fmt.Sprint(done, "/", total))
	})
	if want := []string{"1/3", "2/3", "3/3"}; err != nil || !slices.Equal(got, want) {
		t.Errorf("progress told %q, want %q; %v", got, want, err)
	}
}

func TestReadNoSettings(t *testing.T) {
	fsys := site("content/recipes/a.md")
	delete(fsys, "content/site.yaml")
	s, faults, err := Read(fsys, nil)
	if err != nil || len(faults) == 0 || faults[len(faults)-1].Pos != (Pos{File: "content/site.yaml"}) {
		t.Fatalf("Read = %v, %v", faults, err)
	}
	if s.Settings.Language.V != "en" {
		t.Errorf("without settings the language is %q", s.Settings.Language.V)
	}
}

// locked is a folder in which one file cannot be opened.
type locked struct {
	fs.FS
	name string
}

func (l locked) Open(name string) (fs.File, error) {
	if name == l.name {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrPermission}
	}
	return l.FS.Open(name)
}

func TestReadErrors(t *testing.T) {
	full := site("content/recipes/a.md", "content/recipes/b.md", "content/pictures/jar.jpg")
	for _, c := range []struct {
		fsys fs.FS
		want string
		is   error
	}{
		{fstest.MapFS{"readme.md": {}}, "content", fs.ErrNotExist},
		{locked{full, "content/recipes/b.md"}, "content/recipes/b.md", fs.ErrPermission},
		{locked{full, "content/recipes"}, "content/recipes", fs.ErrPermission},
		{locked{full, "content/pictures/jar.jpg"}, "content/pictures/jar.jpg", fs.ErrPermission},
		{locked{full, "content/site.yaml"}, "content/site.yaml", fs.ErrPermission},
	} {
		s, faults, err := Read(c.fsys, nil)
		if s != nil || faults != nil || !errors.Is(err, c.is) || !strings.Contains(err.Error(), c.want) {
			t.Errorf("Read = %v, %v, %v; want only an error that names %s", s, faults, err, c.want)
		}
	}
}
