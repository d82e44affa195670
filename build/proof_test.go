package build

import (
	"bytes"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"stillroom/build/internal/unchecked"
	"stillroom/content"
)

func proofs(t *testing.T, files ...string) *Proofs {
	t.Helper()
	s, _, err := content.Read(starterWith(files...), nil)
	if err != nil {
		t.Fatal(err)
	}
	return NewProofs(unchecked.Site{Content: s, Day: content.Date{Year: 2026, Month: 11, Day: 25}}, theme(t), &Plates{Darkroom: darkroom})
}

// The proofs of a site of which nothing is held back are what is published, to
// the byte, and nothing else.
func TestProofsAreWhatIsPublished(t *testing.T) {
	p := proofs(t)
	files := published(t)
	var want []string
	for _, f := range files {
		if !strings.HasPrefix(f.Path, "assets/") {
			want = append(want, f.Path)
		}
		got, ok, err := p.Find(f.Path)
		if err != nil || !ok {
			t.Errorf("%s: found %v, %v", f.Path, ok, err)
			continue
		}
		if !bytes.Equal(bytesOf(t, got.File), bytesOf(t, f)) {
			t.Errorf("%s is published otherwise", f.Path)
		}
	}
	if paths, err := p.Paths(); err != nil || !slices.Equal(paths, want) {
		t.Errorf("%d files and %d published, %v", len(paths), len(want), err)
	}
	for _, name := range []string{"recipes/nothing/index.html", "assets/damson-preserves.0000000000000000.jpg", "favicon.ico", "../go.mod", ""} {
		if got, ok, err := p.Find(name); ok || err != nil {
			t.Errorf("%q gives %q, %v", name, got.Path, err)
		}
	}
}

// What readers do not get yet has a page, stands in the lists, and is told
// apart.
func TestProofsHoldNothingBack(t *testing.T) {
	const recipe = "---\nname: %s\n%s\nkind: jam\nproduce: [plums]\n---\n"
	p := proofs(t,
		"content/recipes/first-try.md", fmt.Sprintf(recipe, "First try", "status: draft"),
		"content/recipes/next-year.md", fmt.Sprintf(recipe, "Next year", "published: 2027-02-01"))
	want := map[string]Held{
		"/recipes/first-try/": {File: "content/recipes/first-try.md", Name: "First try"},
		"/recipes/next-year/": {"content/recipes/next-year.md", "Next year", content.Date{Year: 2027, Month: 2, Day: 1}},
	}
	if len(p.Held()) != len(want) {
		t.Errorf("%d pages are held back, want %d", len(p.Held()), len(want))
	}
	larder, _, err := p.Find("recipes/index.html")
	if err != nil {
		t.Fatal(err)
	}
	for address, h := range want {
		if p.Held()[address] != h || p.Address(h.File) != address {
			t.Errorf("%s is held as %v", address, p.Held()[address])
		}
		page, ok, err := p.Find(pagePath(address))
		if !ok || err != nil || page.Source != h.File || !page.Page {
			t.Errorf("%s: %v, %v, made of %s", address, ok, err, page.Source)
		}
		if !bytes.Contains(bytesOf(t, larder.File), []byte(`href="`+address+`"`)) {
			t.Errorf("the larder does not list %s", address)
		}
	}
}

// A picture is read once, and again when it was changed. One that is broken is
// not shown.
func TestPlates(t *testing.T) {
	c := exampleChecked(t)
	site := *c.Site()
	reads := &countingFS{FS: site.FS}
	site.FS = reads
	plates := &Plates{Darkroom: darkroom}
	find := func() Proof {
		t.Helper()
		p := NewProofs(unchecked.Site{Content: &site, Day: c.Day()}, theme(t), plates)
		f, ok, err := p.Find("recipes/damson-preserves/index.html")
		if !ok || err != nil {
			t.Fatal(ok, err)
		}
		return f
	}
	first, again := bytesOf(t, find().File), bytesOf(t, find().File)
	if reads.pictures != 1 || !bytes.Equal(first, again) {
		t.Errorf("the picture was read %d times for two proofs", reads.pictures)
	}
	site.Pictures = map[string]content.File{"damson-preserves.jpg": {Path: "content/site.yaml", Size: 1, Changed: 7}}
	if broken := find(); bytes.Contains(bytesOf(t, broken.File), []byte("damson-preserves.")) {
		t.Error("a broken picture is shown")
	}
}

// Several readers may look at one set of proofs.
func TestProofsTogether(t *testing.T) {
	p := proofs(t)
	var group sync.WaitGroup
	for range 4 {
		group.Go(func() {
			for _, name := range []string{"index.html", "recipes/sauerkraut/index.html", "recipes.atom", "recipes/pickled-beets/index.html"} {
				if _, ok, err := p.Find(name); !ok || err != nil {
					t.Errorf("%s: %v, %v", name, ok, err)
				}
			}
			p.Held()
			p.Address("content/pages/about.md")
		})
	}
	group.Wait()
}

// starterWith is the starter site and other files, each a name and a text.
func starterWith(files ...string) fs.FS {
	own := fstest.MapFS{}
	err := fs.WalkDir(content.Starter, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := fs.ReadFile(content.Starter, name)
		own[name] = &fstest.MapFile{Data: data}
		return err
	})
	if err != nil {
		panic(err)
	}
	for i := 0; i+1 < len(files); i += 2 {
		own[files[i]] = &fstest.MapFile{Data: []byte(files[i+1])}
	}
	return own
}

// A countingFS counts how often pictures are opened.
type countingFS struct {
	fs.FS
	pictures int
}

func (c *countingFS) Open(name string) (fs.File, error) {
	if strings.HasPrefix(name, "content/pictures/") {
		c.pictures++
	}
	return c.FS.Open(name)
}

// A page that need not wait for its pictures shows them as they lie in the
// site, and as they are published once they are printed.
func TestPlatesPrintedLater(t *testing.T) {
	c := exampleChecked(t)
	printed := make(chan error)
	plates := &Plates{Darkroom: darkroom, Printed: func(_ content.File, err error) { printed <- err }}
	const page, picture = "recipes/damson-preserves/index.html", "content/pictures/damson-preserves.jpg"
	find := func(name string) Proof {
		t.Helper()
		p := NewProofs(unchecked.Site{Content: c.Site(), Day: c.Day()}, theme(t), plates)
		f, ok, err := p.Find(name)
		if !ok || err != nil {
			t.Fatal(name, ok, err)
		}
		return f
	}
	raw, err := fs.ReadFile(c.Site().FS, picture)
	if err != nil {
		t.Fatal(err)
	}
	src := hashed("damson-preserves.jpg", raw)
	if first := find(page); !bytes.Contains(bytesOf(t, first.File), []byte(`src="`+src+`"`)) {
		t.Error("the page waited for the picture, or does without it")
	}
	if got := find(src[1:]); !bytes.Equal(bytesOf(t, got.File), raw) {
		t.Error("the picture is not as it lies in the site")
	}
	if err := <-printed; err != nil {
		t.Fatal(err)
	}
	files := published(t)
	i := slices.IndexFunc(files, func(f File) bool { return f.Path == page })
	if then := find(page); !bytes.Equal(bytesOf(t, then.File), bytesOf(t, files[i])) {
		t.Error("the page is published otherwise")
	}
}
