package build

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"image"
	"image/jpeg"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"stillroom/content"
	"stillroom/themes"
	"stillroom/validate"
)

// checked reads and checks a site of the given files, which must have no error.
func checked(t *testing.T, on string, files map[string]string) validate.Checked {
	t.Helper()
	fsys := make(fstest.MapFS)
	for name, text := range files {
		fsys[name] = &fstest.MapFile{Data: []byte(text)}
	}
	site, faults, err := content.Read(fsys, nil)
	if err != nil {
		t.Fatal(err)
	}
	day, err := content.ParseDate(on)
	if err != nil {
		t.Fatal(err)
	}
	rep, c, ok := validate.Check(site, faults, day)
	if !ok {
		t.Fatal(rep.Findings)
	}
	return c
}

func recipeText(name, rest string) string {
	return "---\nname: " + name + `
summary: For the fridge.
kind: jam
produce: [damson]
yield: 2 cups
ingredients: [1 lb damsons]
keeping: [{way: refrigerator, keeps: 3 weeks}]
` + rest
}

// aPhoto is a JPEG in which a camera has noted where it was taken.
func aPhoto(t *testing.T) string {
	t.Helper()
	var b bytes.Buffer
	if err := jpeg.Encode(&b, image.NewGray(image.Rect(0, 0, 40, 30)), nil); err != nil {
		t.Fatal(err)
	}
	note := "\xff\xe1\x00\x10Exif\x00\x00at home"
	return b.String()[:2] + note + b.String()[2:]
}

func TestAssets(t *testing.T) {
	const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 3"/>`
	c := checked(t, "2026-09-01", map[string]string{
		"content/site.yaml":               "name: Larder\nauthor: Ada Sloe\n",
		"content/pictures/Damson Jam.jpg": aPhoto(t),
		"content/pictures/body.svg":       svg,
		"content/pictures/later.svg":      svg + "<!-- later -->",
		"content/pictures/unused.svg":     svg + "<!-- unused -->",
		"content/recipes/jam.md": recipeText("Jam", "published: 2026-08-01\n"+
			"picture: {file: Damson Jam.jpg, alt: Jam}\n---\n![A blot](body.svg)\n\n1. Stew.\n"),
		"content/recipes/later.md": recipeText("Later", "published: 2026-10-01\n"+
			"picture: {file: later.svg, alt: Later}\n---\n1. Stew.\n"),
	})
	theme := &themes.Theme{Files: []themes.File{
		{Name: "a.css", Data: []byte(`@font-face{src:url("old.woff2"),url( old.woff2 ),url(data:x)}`)},
		{Name: "old.woff2", Data: []byte("a font")},
	}}
	a, err := NewAssets(c, theme, nil)
	if err != nil {
		t.Fatal(err)
	}

	jam, ok := a.Picture("Damson Jam.jpg")
	if !ok || jam.Width != 40 || jam.Height != 30 || !regexp.MustCompile(`^/assets/damson-jam\.[0-9a-f]{16}\.jpg$`).MatchString(jam.Src) {
		t.Errorf("the picture is %+v, %v", jam, ok)
	}
	if blot, ok := a.Picture("body.svg"); !ok || blot.Width != 4 || blot.Height != 3 {
		t.Errorf("the picture of the body is %+v, %v", blot, ok)
	}
	for _, held := range []string{"later.svg", "unused.svg"} {
		if i, ok := a.Picture(held); ok {
			t.Errorf("%s is published: %+v", held, i)
		}
	}
	font := a.URL("old.woff2")
	if css := string(read(t, a, a.URL("a.css"))); css != "@font-face{src:url("+font+"),url("+font+"),url(data:x)}" {
		t.Errorf("the style is %s", css)
	}
	if strings.Contains(string(read(t, a, jam.Src)), "at home") {
		t.Error("the picture still says where it was taken")
	}
	if got := a.URL("none.js"); got != "" {
		t.Errorf("a file that the theme has not is at %q", got)
	}
}

// An address stands for one set of bytes for ever, so its hash is that of the
// final bytes: HC-01 of the table of standards, RFC 8246.
func TestAssetsAreNamedByTheirBytes(t *testing.T) {
	theme, err := themes.Load(nil)
	if err != nil {
		t.Fatal(err)
	}
	c := checked(t, "2026-09-01", map[string]string{
		"content/site.yaml":         "name: Larder\nauthor: Ada Sloe\n",
		"content/pictures/p.jpg":    aPhoto(t),
		"content/pictures/copy.jpg": aPhoto(t),
		"content/recipes/jam.md": recipeText("Jam", "published: 2026-08-01\n"+
			"picture: {file: p.jpg, alt: Jam}\npictures: [{file: copy.jpg, alt: Again}]\n---\n1. Stew.\n"),
	})
	a, err := NewAssets(c, theme, nil)
	if err != nil {
		t.Fatal(err)
	}
	files := a.Files()
	if !slices.IsSortedFunc(files, func(a, b File) int { return strings.Compare(a.Path, b.Path) }) {
		t.Error("the files are not in order of path")
	}
	for _, f := range files {
		sum := sha256.Sum256(read(t, a, "/"+f.Path))
		if !strings.Contains(f.Path, "."+hex.EncodeToString(sum[:8])+".") {
			t.Errorf("%s has another hash", f.Path)
		}
	}
}

func read(t *testing.T, a *Assets, address string) []byte {
	t.Helper()
	for _, f := range a.Files() {
		if "/"+f.Path == address {
			return bytesOf(t, f)
		}
	}
	t.Fatalf("no file at %s", address)
	return nil
}

// What belongs to an episode stands beside its show notes under its own name;
// what belongs to one that is held back does not.
func TestMedia(t *testing.T) {
	episode := func(published, guid string) string {
		return "---\nname: One\nsummary: About one.\nnumber: 1\npublished: " + published +
			"\naudio: {file: one a.mp3}\ntranscript: one.vtt\nguid: " + guid + "\n---\nNotes.\n"
	}
	sound, err := os.ReadFile("../content/testdata/recordings/vbr.mp3")
	if err != nil {
		t.Fatal(err)
	}
	c := checked(t, "2026-09-01", map[string]string{
		"content/site.yaml":                "name: Larder\nauthor: Ada Sloe\n",
		"content/episodes/one.md":          episode("2026-08-01", "a"),
		"content/episodes/one a.mp3":       string(sound),
		"content/episodes/one.vtt":         "WEBVTT\n",
		"content/episodes/later/two.md":    episode("2026-10-01", "b"),
		"content/episodes/later/one a.mp3": string(sound),
		"content/episodes/later/one.vtt":   "WEBVTT\n",
	})
	a, err := NewAssets(c, &themes.Theme{}, nil)
	if err != nil {
		t.Fatal(err)
	}
	var paths []string
	for _, f := range a.Files() {
		paths = append(paths, f.Path)
	}
	if want := []string{"show-notes/one/one a.mp3", "show-notes/one/one.vtt"}; !slices.Equal(paths, want) {
		t.Errorf("published %q, want %q", paths, want)
	}
	if src, ok := a.Media("content/episodes/one a.mp3"); src != "/show-notes/one/one%20a.mp3" || !ok {
		t.Errorf("the recording is at %q, %v", src, ok)
	}
	if src, ok := a.Media("content/episodes/later/one a.mp3"); ok {
		t.Errorf("a recording to come is at %q", src)
	}
	if got := string(read(t, a, "/show-notes/one/one a.mp3")); got != string(sound) {
		t.Errorf("the recording holds %d bytes, want %d", len(got), len(sound))
	}
}
