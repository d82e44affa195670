package build

import (
	"bytes"
	"encoding/json"
	"flag"
	"fmt"
	"image"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"
	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

var update = flag.Bool("update", false, "write what is built into testdata")

// Each file of testdata/products holds a small site and, under want/, what is
// made of it for other programs, broken into lines for people.
func TestProducts(t *testing.T) {
	names, err := filepath.Glob("testdata/products/*.txtar")
	if err != nil || len(names) == 0 {
		t.Fatal("no testdata", err)
	}
	for _, name := range names {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".txtar"), func(t *testing.T) {
			ar, err := txtar.ParseFile(name)
			if err != nil {
				t.Fatal(err)
			}
			made := make(map[string][]byte)
			for _, f := range productsOf(t, ar) {
				made[f.Path] = inLines(t, f)
			}
			if *update {
				rewrite(t, name, ar, made)
				return
			}
			for _, f := range ar.Files {
				p, ok := strings.CutPrefix(f.Name, "want/")
				if !ok {
					continue
				}
				if diff := cmp.Diff(string(f.Data), string(made[p])); diff != "" {
					t.Errorf("%s (-want +got):\n%s", p, diff)
				}
				delete(made, p)
			}
			for p := range made {
				t.Errorf("%s is made, but not wanted", p)
			}
		})
	}
}

// productsOf makes all that is not a page of a site.
func productsOf(t *testing.T, ar *txtar.Archive) []File {
	t.Helper()
	e := editionOf(t, ar)
	pages := siteOf("404.html", "", "about/index.html", "", "index.html", "", "search/index.html", "", "season/july/index.html", "")
	for _, r := range e.recipes {
		pages = append(pages, siteOf(pagePath(recipeAddress(r)), "", recipeAddress(r)[1:]+"card/index.html", "")...)
	}
	files, err := e.products(pages)
	if err != nil {
		t.Fatal(err)
	}
	files = slices.DeleteFunc(files, func(f File) bool {
		return strings.HasPrefix(f.Path, "search/") || f.Path == "headers.json" // not for people to read, or always the same
	})
	for _, ep := range e.episodes {
		if data := e.graph(e.episodeNode(ep)); data != nil {
			files = append(files, NewFile("page"+episodeAddress(ep)+"data.json", data))
		}
	}
	if data := e.graph(e.website(), e.recipeList(e.recipes)); data != nil {
		files = append(files, NewFile("page/data.json", data))
	}
	return files
}

// editionOf reads the site of an archive, as of its last line "as of DATE".
func editionOf(t *testing.T, ar *txtar.Archive) *edition {
	t.Helper()
	fsys := make(fstest.MapFS)
	for _, f := range ar.Files {
		if strings.HasPrefix(f.Name, "content/") {
			fsys[f.Name] = &fstest.MapFile{Data: f.Data}
		}
	}
	site, faults, err := content.Read(fsys, nil)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range faults {
		t.Fatalf("%s: %s", f.Pos, f.Message)
	}
	_, on, ok := strings.Cut(strings.TrimSpace(string(ar.Comment)), ", as of ")
	if !ok {
		t.Fatal(`the archive does not begin with a text that ends in "as of DATE"`)
	}
	day, err := content.ParseDate(strings.TrimSuffix(on, "."))
	if err != nil {
		t.Fatal(err)
	}
	a := &Assets{pictures: make(map[string]Image), media: make(map[string]string)}
	e := newEdition(site, day, a)
	for _, j := range shown(e) {
		a.pictures[j.name] = imageFor(j)
	}
	for _, ep := range e.episodes {
		a.addMedia(site, ep)
	}
	return e
}

// imageFor stands for a picture of 640 by 480 pixels that is printed as it is
// ordered. The file need not be there.
func imageFor(j job) Image {
	var img Image
	for _, c := range j.order.cuts(image.Pt(640, 480), true) {
		for _, f := range c.formats {
			name := fmt.Sprintf("%s.%s-%dx%d%s", strings.TrimSuffix(j.name, filepath.Ext(j.name)), c.use, c.w, c.h, f)
			img.take(exposure{Use: c.use, Format: f}, Print{"/assets/" + name, mediaTypes[f], c.w, c.h})
		}
	}
	return img
}

// inLines breaks a file for other programs into lines.
func inLines(t *testing.T, f File) []byte {
	switch filepath.Ext(f.Path) {
	case ".json":
		var b bytes.Buffer
		if err := json.Indent(&b, bytesOf(t, f), "", "  "); err != nil {
			return []byte(err.Error())
		}
		return append(b.Bytes(), '\n')
	case ".xml", ".atom":
		return bytes.ReplaceAll(bytesOf(t, f), []byte("><"), []byte(">\n<"))
	}
	return bytesOf(t, f)
}

func rewrite(t *testing.T, name string, ar *txtar.Archive, made map[string][]byte) {
	t.Helper()
	var files []txtar.File
	for _, f := range ar.Files {
		if !strings.HasPrefix(f.Name, "want/") {
			files = append(files, f)
		}
	}
	var all []File
	for p, data := range made {
		all = append(all, NewFile(p, data))
	}
	all, err := arrange(all)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range all {
		files = append(files, txtar.File{Name: "want/" + f.Path, Data: bytesOf(t, f)})
	}
	ar.Files = files
	if err := os.WriteFile(name, txtar.Format(ar), 0o666); err != nil {
		t.Fatal(err)
	}
}
