package build

import (
	"bytes"
	"io/fs"
	"math/rand/v2"
	"path"
	"slices"
	"testing"

	"stillroom/build/internal/unchecked"
	"stillroom/content"
)

// Whatever an author leaves half written, there is a page of what could be
// read of it, and of all others.
func TestProofsOfBrokenFiles(t *testing.T) {
	names, err := fs.Glob(content.Starter, "content/*/*.md")
	if err != nil || len(names) < 20 {
		t.Fatal("the starter site has no texts", err)
	}
	random := rand.New(rand.NewPCG(1, 2))
	plates := &Plates{Darkroom: darkroom}
	rounds := 60
	if testing.Short() {
		rounds = 10
	}
	for range rounds {
		site := &content.Site{FS: content.Starter, Settings: content.Settings{}}
		for _, name := range names {
			text, err := fs.ReadFile(content.Starter, name)
			if err != nil {
				t.Fatal(err)
			}
			if random.IntN(3) == 0 {
				text = damaged(random, text)
			}
			switch path.Dir(name) {
			case "content/recipes":
				r, _ := content.ReadRecipe(name, text)
				site.Recipes = append(site.Recipes, r)
			case "content/episodes":
				e, _ := content.ReadEpisode(name, text)
				site.Episodes = append(site.Episodes, e)
			case "content/pages":
				p, _ := content.ReadPage(name, text)
				site.Pages = append(site.Pages, p)
			}
		}
		p := NewProofs(unchecked.Site{Content: site, Day: content.Date{Year: 2026, Month: 11, Day: 25}}, theme(t), plates)
		paths, err := p.Paths()
		if err != nil {
			t.Fatal(err)
		}
		for _, i := range random.Perm(len(paths))[:12] {
			if f, ok, err := p.Find(paths[i]); !ok || err != nil {
				t.Errorf("%s: %v, %v", f.Path, ok, err)
			}
		}
	}
}

// damaged does to a text what happens while it is written: lines go, come twice,
// end early, lose their indentation, or hold something else.
func damaged(random *rand.Rand, text []byte) []byte {
	lines := bytes.Split(text, []byte("\n"))
	for range 1 + random.IntN(4) {
		i := random.IntN(len(lines))
		line := lines[i]
		switch random.IntN(7) {
		case 0:
			lines = slices.Delete(slices.Clone(lines), i, min(len(lines), i+1+random.IntN(3)))
		case 1:
			lines = slices.Insert(slices.Clone(lines), i, line)
		case 2:
			lines[i] = line[:random.IntN(len(line)+1)]
		case 3:
			lines[i] = bytes.TrimLeft(line, " -")
		case 4:
			key, _, _ := bytes.Cut(line, []byte(":"))
			values := []string{"0", "-1", "1/0", "[]", "{}", "''", "about 3", "10 min", "1-2 in", "half-pint", "~", "2026-13-01", "/", "5 of"}
			lines[i] = append(slices.Clone(key), ": "+values[random.IntN(len(values))]...)
		case 5:
			lines = lines[:i+1]
		case 6:
			other := random.IntN(len(lines))
			lines[i], lines[other] = lines[other], lines[i]
		}
		if len(lines) == 0 {
			break
		}
	}
	return bytes.Join(lines, []byte("\n"))
}
