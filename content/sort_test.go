package content

import (
	"strings"
	"testing"
)

// Read takes each file for what SortOf says of it.
func TestSortOf(t *testing.T) {
	folders := []string{"", "content/", "content/recipes/", "content/recipes/old/", "content/recipes/.git/", "content/recipes/a.tmp/",
		"content/episodes/", "content/episodes/1/", "content/pages/", "content/pictures/", "content/pictures/jars/", "content/pictures/~/", "content/notes/", "themes/x/"}
	names := []string{"plum.md", "plum.MD", "plum.markdown", "plum.md~", "#plum.md#", ".plum.md", ".plum.md.swp", "plum.tmp", "plum.go", "plum",
		"plum.mp3", "plum.VTT", "plum.srt", "plum.wav", "plum.jpg", "site.yaml", "content", "recipes", "4913"}
	sorts := make(map[Sort]int)
	for _, folder := range folders {
		for _, name := range names {
			file := folder + name
			if file == "content" {
				continue
			}
			got := SortOf(file)
			sorts[got]++
			if want := sortWhenRead(t, file); got != want {
				t.Errorf("SortOf(%q) = %d, but Read takes it for %d", file, got, want)
			}
		}
	}
	for s := NoPart; s <= AMedium; s++ {
		if sorts[s] == 0 {
			t.Errorf("no file is of sort %d", s)
		}
	}
}

// sortWhenRead tells the sort of the only file of a site from where it ends up.
func sortWhenRead(t *testing.T, file string) Sort {
	t.Helper()
	fsys := site(file)
	if file != settingsFile {
		delete(fsys, settingsFile)
		fsys["content/readme"] = fsys[file]
	}
	s, faults, err := Read(fsys, nil)
	if err != nil {
		t.Fatal(err)
	}
	switch {
	case len(s.Recipes) > 0:
		return ARecipe
	case len(s.Episodes) > 0:
		return AnEpisode
	case len(s.Pages) > 0:
		return APage
	case len(s.Pictures) > 0:
		return APicture
	case len(s.Media) > 0:
		return AMedium
	}
	for _, f := range faults {
		switch {
		case strings.Contains(f.Message, "names end in .md"):
			return Misnamed
		case f.Pos.File == settingsFile && f.Message == "there is no such file, and the site has no name":
			return NoPart
		}
	}
	return TheSettings
}
