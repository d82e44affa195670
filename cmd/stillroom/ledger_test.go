package main

import (
	"bytes"
	"fmt"
	"image"
	"image/jpeg"
	"io"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"stillroom/content"
)

// After any change, whether to the site, the program or what lies in the
// output, publishing gives the same as publishing from nothing, says the same
// of the site, and knows afterwards that nothing has changed.
// STILLROOM_CHANGES=300 tries more of them, at random after the first of each.
func TestPublishAgain(t *testing.T) {
	changes := len(deeds)
	if n, err := strconv.Atoi(os.Getenv("STILLROOM_CHANGES")); err == nil {
		changes = n
	}
	before := version
	t.Cleanup(func() { version = before })
	w := newPublisher(t, rand.New(rand.NewPCG(3, 4)))
	w.compare(t, "at first")
	for i := range changes {
		d := deeds[w.random.IntN(len(deeds))]
		if i < len(deeds) {
			d = deeds[i]
		}
		what := fmt.Sprintf("%d, %s", i, d.what)
		w.i = i
		d.do(w)
		if w.knows() != d.same {
			t.Errorf("%s: taken for unchanged: %v, want %v", what, !d.same, d.same)
		}
		w.compare(t, what)
		if t.Failed() {
			return
		}
	}
}

// A publisher has a small site and publishes it over and over.
type publisher struct {
	t         testing.TB
	random    *rand.Rand
	i         int
	base      string
	site, out string
	flags     []string
	day       string
}

func newPublisher(t testing.TB, random *rand.Rand) *publisher {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	base := t.TempDir()
	w := &publisher{t: t, random: random, base: base, site: filepath.Join(base, "site"), out: filepath.Join(base, "out"), day: "2026-11-25"}
	keep := regexp.MustCompile(`content/(guids\.txt|site\.yaml|pages/.*|episodes/a-crock-in-october.*|recipes/(sauerkraut|green-beans-in-pints|blackberry-jam)\.md|pictures/(.*)\.jpg)$`)
	for name, data := range exampleFiles(t) {
		if keep.MatchString(name) {
			w.write(filepath.Join(w.site, name), data)
		}
	}
	return w
}

// exampleFiles gives the files of the example site, with small pictures.
func exampleFiles(t testing.TB) map[string][]byte {
	files := map[string][]byte{}
	err := fs.WalkDir(content.Starter, "content", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		files[name], err = fs.ReadFile(content.Starter, name)
		if strings.HasSuffix(name, ".jpg") {
			files[name] = smallPicture(t)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// smallPicture is one that takes no time to print, and a few bytes that nobody
// sees.
func smallPicture(t testing.TB) []byte {
	var b bytes.Buffer
	if err := jpeg.Encode(&b, image.NewGray(image.Rect(0, 0, 24, 16)), nil); err != nil {
		t.Fatal(err)
	}
	return append(b.Bytes(), "some other thing"...)
}

func (w *publisher) args(to string) []string {
	return append([]string{"publish", w.site, "--to", to, "--day", w.day}, w.flags...)
}

// knows reports whether publishing would find that nothing has changed.
func (w *publisher) knows() bool {
	c, err := parse(w.args(w.out))
	if err != nil {
		w.t.Fatal(err)
	}
	_, ok := c.(*publishCommand).openLedger().unchanged(c.(*publishCommand))
	return ok
}

// passing is what is said of how it went, not of the site.
var passing = regexp.MustCompile(`(?m)^(Published|Wrote|comparing|reading|checking|building|printing pictures:|writing|compressing) ?.*\n`)

func (w *publisher) publish(to string) (status int, said string) {
	var stderr bytes.Buffer
	status = run(w.args(to), strings.NewReader(""), io.Discard, &stderr)
	return status, passing.ReplaceAllString(stderr.String(), "")
}

func (w *publisher) compare(t *testing.T, what string) {
	t.Helper()
	fresh := filepath.Join(w.base, "fresh")
	if err := os.RemoveAll(fresh); err != nil {
		t.Fatal(err)
	}
	status, said := w.publish(w.out)
	wantStatus, wantSaid := w.publish(fresh)
	if status != wantStatus || said != wantSaid {
		t.Errorf("%s: status %d and\n%swant %d and\n%s", what, status, said, wantStatus, wantSaid)
	}
	if status != succeeded {
		t.Fatalf("%s: the site cannot be published:\n%s", what, said)
	}
	if diff := difference(fresh, w.out); diff != "" {
		t.Errorf("%s: %s differs", what, diff)
	}
	if !w.knows() {
		t.Errorf("%s: it is not known that nothing has changed since", what)
	}
	if status, again := w.publish(w.out); status != succeeded || again != said {
		t.Errorf("%s: the second time it says\n%sand not\n%s", what, again, said)
	}
}

// A deed is a change that somebody may make between two publishings.
type deed struct {
	what string
	do   func(w *publisher)
	same bool // and nothing is to be made anew
}

var deeds = []deed{
	{"a sentence", func(w *publisher) { w.edit("content/*/*.md", "\n---\n", fmt.Sprintf("\n---\n\nIn year %d.\n", w.i)) }, false},
	{"a letter, size and time kept", func(w *publisher) { w.sneak(w.pick(w.site, "content/pages/*.md"), bytesOfText) }, false},
	{"a setting", func(w *publisher) { w.edit("content/site.yaml", "tagline: ", fmt.Sprintf("tagline: No. %d ", w.i)) }, false},
	{"a picture", func(w *publisher) { w.sneak(w.pick(w.site, "content/pictures/*.jpg"), lastByte) }, false},
	{"a recording, size and time kept", func(w *publisher) { w.sneak(w.pick(w.site, "content/episodes/*.mp3"), lastByte) }, false},
	{"a caption", func(w *publisher) {
		w.edit("content/episodes/*.vtt", "WEBVTT\n", fmt.Sprintf("WEBVTT\n\nNOTE of %d\n", w.i))
	}, false},
	{"a recipe more", func(w *publisher) { w.add(w.i) }, false},
	{"a recipe gone, or one more", func(w *publisher) {
		if os.Remove(w.recipe(w.i-1)) != nil {
			w.add(w.i)
		}
	}, false},
	{"a draft", func(w *publisher) {
		w.write(filepath.Join(w.site, fmt.Sprintf("content/pages/draft-%d.md", w.i)), []byte("---\nname: Draft\nsummary: One to come.\nstatus: draft\n---\n\nSoon.\n"))
	}, false},
	{"a file of the theme", func(w *publisher) {
		w.write(filepath.Join(w.site, "themes/enamel/files/extra.css"), fmt.Appendf(nil, "p { margin: %dpx }", w.i))
	}, false},
	{"the theme gone, or back", func(w *publisher) {
		theme, away := filepath.Join(w.site, "themes"), filepath.Join(w.base, "themes")
		if os.Rename(away, theme) != nil { // there is one
			os.RemoveAll(away)
			os.Rename(theme, away)
		}
	}, false},
	{"a day", func(w *publisher) { w.day = time.Date(2026, 11, 26+w.i, 0, 0, 0, 0, time.UTC).Format(time.DateOnly) }, false},
	{"a flag", func(w *publisher) {
		if w.flags = append(w.flags, "--precompress"); len(w.flags) > 1 {
			w.flags = nil
		}
	}, false},
	{"the program", func(w *publisher) { version = fmt.Sprintf("1.0.%d", w.i) }, false},
	{"the guids", func(w *publisher) { os.Remove(filepath.Join(w.site, content.GUIDsFile)) }, false},
	{"a page of the output", func(w *publisher) {
		w.write(w.pick(w.out, "recipes/*/index.html"), []byte("<p>Boil it for a minute.</p>"))
	}, false},
	{"a figure in the output, size and time kept", func(w *publisher) { w.sneak(w.pick(w.out, "recipes/*/index.html"), lastByte) }, false},
	{"a page gone from the output", func(w *publisher) { os.Remove(w.pick(w.out, "*/*/index.html")) }, false},
	{"the output gone", func(w *publisher) { os.RemoveAll(w.out) }, false},
	{"a dropping in the output", func(w *publisher) { w.write(filepath.Join(w.out, "recipes", ".DS_Store"), []byte("?")) }, false},
	{"a folder in the output", func(w *publisher) { os.MkdirAll(filepath.Join(w.out, "empty", "folder"), 0o777) }, false},
	{"a run that was killed", func(w *publisher) { os.Mkdir(w.out+".next", 0o777) }, false},
	{"damaged ledgers", func(w *publisher) {
		names, _ := filepath.Glob(filepath.Join(os.Getenv("XDG_CACHE_HOME"), "stillroom/published/*/site-*"))
		for _, name := range names {
			w.sneak(name, lastByte)
		}
	}, false},
	{"no ledger", func(w *publisher) { os.RemoveAll(filepath.Join(os.Getenv("XDG_CACHE_HOME"), "stillroom", "published")) }, false},
	{"a text touched", func(w *publisher) {
		if err := os.Chtimes(w.pick(w.site, "content/recipes/*.md"), time.Time{}, time.Unix(1e9+int64(w.i), 0)); err != nil {
			w.t.Fatal(err)
		}
	}, true},
	{"nothing", func(w *publisher) {}, true},
}

func (w *publisher) recipe(i int) string {
	return filepath.Join(w.site, fmt.Sprintf("content/recipes/sauerkraut-%d.md", i))
}

func (w *publisher) add(i int) {
	w.write(w.recipe(i), retold(w.read(filepath.Join(w.site, "content/recipes/sauerkraut.md")), i, func(int) string { return "blackberry-jam" }))
}

func (w *publisher) read(name string) []byte {
	data, err := os.ReadFile(name)
	if err != nil {
		w.t.Fatal(err)
	}
	return data
}

func (w *publisher) write(name string, data []byte) {
	if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
		w.t.Fatal(err)
	}
	os.Remove(name) // it may be linked to another
	if err := os.WriteFile(name, data, 0o666); err != nil {
		w.t.Fatal(err)
	}
}

// pick gives one of the files that a pattern fits.
func (w *publisher) pick(dir, pattern string) string {
	names, err := filepath.Glob(filepath.Join(dir, filepath.FromSlash(pattern)))
	if err != nil || len(names) == 0 {
		w.t.Fatalf("no file is called %s: %v", pattern, err)
	}
	return names[w.random.IntN(len(names))]
}

func (w *publisher) edit(pattern, old, text string) {
	name := w.pick(w.site, pattern)
	before := w.read(name)
	after := bytes.Replace(before, []byte(old), []byte(text), 1)
	if bytes.Equal(before, after) {
		w.t.Fatalf("there is no %q in %s", old, name)
	}
	w.write(name, after)
}

// sneak changes bytes in place, and leaves size and time as they were.
func (w *publisher) sneak(name string, change func(data []byte)) {
	data := w.read(name)
	before := slices.Clone(data)
	info, err := os.Stat(name)
	if err != nil {
		w.t.Fatal(err)
	}
	if change(data); bytes.Equal(before, data) {
		w.t.Fatalf("%s was not changed", name)
	}
	if err := os.WriteFile(name, data, 0o666); err != nil {
		w.t.Fatal(err)
	}
	if err := os.Chtimes(name, time.Time{}, info.ModTime()); err != nil {
		w.t.Fatal(err)
	}
}

func lastByte(data []byte) { data[len(data)-1]++ }

// bytesOfText exchanges two letters of the last word.
func bytesOfText(data []byte) {
	for i := len(data) - 1; i > 0; i-- {
		if a, b := data[i-1], data[i]; a != b && a >= 'a' && b >= 'a' && a <= 'z' && b <= 'z' {
			data[i-1], data[i] = b, a
			return
		}
	}
}
