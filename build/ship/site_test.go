package ship

import (
	"crypto/sha256"
	"fmt"
	"maps"
	"math/rand/v2"
	"regexp"
	"slices"
	"strings"
	"testing"

	"stillroom/build"
)

// An edition of a site of a few pages. Each edition changes some pages, brings
// new ones and drops old ones; every page has a picture and a style under names
// that hold a hash, and pages and feed lead to each other.
func edition(n int) []build.File {
	files := map[string]string{}
	asset := func(name, ending, text string) string {
		p := fmt.Sprintf("assets/%s.%x%s", name, sha256.Sum256([]byte(text)), ending)
		files[p] = text
		return "/" + p
	}
	page := func(p, text string) { files[p] = "<html>" + text + "</html>" }
	style := asset("style", ".css", fmt.Sprintf("/* edition %d */", n/2))
	home, feed := leads(style), ""
	for i := n; i < n+12; i++ {
		look := 0
		if i%3 == 0 {
			look = n
		}
		noise := strings.Repeat(fmt.Sprintf("picture %d, edition %d; ", i, look), 400)
		text := leads(style) + leads(asset("picture", ".jpg", noise)) + fmt.Sprintf("recipe %d", i)
		if i > n {
			text += leads(fmt.Sprintf("/recipes/r%d/", i-1))
		}
		page(fmt.Sprintf("recipes/r%d/index.html", i), text)
		home += leads(fmt.Sprintf("/recipes/r%d/", i))
		feed += leads(fmt.Sprintf("/recipes/r%d/", i))
	}
	page("index.html", home)
	page("recipes/index.html", home)
	files["recipes.atom"] = feed + fmt.Sprint("edition ", n)
	files["show-notes/damsons/damsons.mp3"] = strings.Repeat("a recording of some length. ", 4000)
	var all []build.File
	for _, p := range slices.Sorted(maps.Keys(files)) {
		all = append(all, build.NewFile(p, []byte(files[p])))
	}
	return all
}

// textOf gives the bytes of a file of an edition, which can always be made.
func textOf(f build.File) string {
	data, err := f.Bytes()
	if err != nil {
		panic(err)
	}
	return string(data)
}

func leads(to string) string { return ` href="` + to + `"` }

var links = regexp.MustCompile(`href="/([^"]*)"`)

// broken says what a reader would find amiss in the files at a place: a page or
// feed that leads to nothing, a file that is cut off, a name whose hash is not
// that of the bytes.
func broken(there map[string]string) (faults []string) {
	for p, text := range there {
		if strings.HasSuffix(p, moving) || strings.HasPrefix(p, listName) {
			continue
		}
		if strings.HasSuffix(p, ".html") && !strings.HasSuffix(text, "</html>") {
			faults = append(faults, p+" is cut off")
		}
		if strings.HasPrefix(p, "assets/") && !strings.Contains(p, fmt.Sprintf("%x", sha256.Sum256([]byte(text)))) {
			faults = append(faults, p+" holds other bytes")
		}
		for _, m := range links.FindAllStringSubmatch(text, -1) {
			to := m[1]
			if to == "" || strings.HasSuffix(to, "/") {
				to += "index.html"
			}
			if _, ok := there[to]; !ok {
				faults = append(faults, p+" leads to "+to+", which is not there")
			}
		}
	}
	return faults
}

// same says where what is there differs from a site; what is the author's own
// is left out.
func differs(there map[string]string, site []build.File, own ...string) (faults []string) {
	left := maps.Clone(there)
	for _, f := range site {
		if there[f.Path] != textOf(f) {
			faults = append(faults, f.Path+" is not as it should be")
		}
		delete(left, f.Path)
	}
	delete(left, listName)
	for _, p := range own {
		if _, ok := left[p]; !ok {
			faults = append(faults, p+" is gone")
		}
		delete(left, p)
	}
	for p := range left {
		if strings.HasSuffix(p, moving) {
			continue // a server may obey after its connection broke; the next run finds it
		}
		faults = append(faults, p+" is too many")
	}
	return faults
}

func TestBrokenIsFound(t *testing.T) {
	files := func(site []build.File) map[string]string {
		m := make(map[string]string)
		for _, f := range site {
			m[f.Path] = textOf(f)
		}
		return m
	}
	if faults := broken(files(edition(3))); faults != nil {
		t.Errorf("a whole site: %v", faults)
	}
	dice := rand.New(rand.NewPCG(1, 2))
	for range 20 {
		m := files(edition(3))
		assets := slices.DeleteFunc(slices.Sorted(maps.Keys(m)), func(p string) bool { return !strings.HasPrefix(p, "assets/") })
		victim := assets[dice.IntN(len(assets))]
		if delete(m, victim); broken(m) == nil {
			t.Errorf("%s is gone, and nothing was found", victim)
		}
	}
}
