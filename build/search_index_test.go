package build

import (
	"bytes"
	"compress/gzip"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"

	"stillroom/content"
)

// larderOf is a site of many recipes: each produce in each kind, in many guises.
func larderOf(t testing.TB, n int) *edition {
	t.Helper()
	produce := strings.Fields(`apples apricots asparagus beets blackberries blackcurrants blueberries cabbage carrots cauliflower
		cherries corn cranberries cucumbers damsons elderberries figs garlic gooseberries grapefruit grapes greengages horseradish
		kumquats lemons limes medlars mint mushrooms nectarines okra onions oranges parsnips peaches pears peas peppers plums
		pumpkins quinces radishes raspberries sloes strawberries tomatillos tomatoes turnips watermelon zucchini`)
	guises := strings.Fields(`plain spiced dark sharp smoky summer winter festive quick slow rustic golden old-fashioned grandmother
		harvest picnic hedgerow orchard market autumn midnight farmhouse ruby amber velvet gingered peppered honeyed minted
		drunken candied whole crushed chunky silky roasted charred frosty cellar pantry`)
	kinds := []content.Kind{content.Jam, content.Jelly, content.Chutney, content.Pickle, content.Relish, content.Salsa, content.Syrup}
	e := &edition{settings: &content.Settings{}, site: &content.Site{}, day: content.Date{Year: 2026, Month: 9, Day: 1}}
	var recipes []*content.Recipe
	for i := range n {
		p, q := produce[i%len(produce)], produce[(i*7+3)%len(produce)]
		r := &content.Recipe{Keeping: []content.Keeping{{}}}
		r.Name.V = fmt.Sprintf("%s %s and %s %s", guises[i/len(produce)%len(guises)], p, q, kinds[i%len(kinds)])
		r.Slug = fmt.Sprintf("%s-%d", slug(r.Name.V), i)
		r.Kind.V = kinds[i%len(kinds)]
		r.Produce = []content.Field[string]{{V: p}, {V: q}}
		r.Published.V = content.Date{Year: 2000 + i%26, Month: 5, Day: 1 + i%28}
		r.Keeping[0].Way.V = wayNames[i%len(wayNames)].way
		recipes = append(recipes, r)
	}
	e.store = newStore(recipes)
	return e
}

func zipped(data []byte) int {
	var b bytes.Buffer
	w, _ := gzip.NewWriterLevel(&b, gzip.BestCompression)
	w.Write(data)
	w.Close()
	return b.Len()
}

// beforeAResult is what may be fetched of an index before the first result is
// shown, after gzip, the two scripts with it.
const beforeAResult = 60 << 10

// What is fetched before the first result: the scripts, the list of words, and
// at most the four largest parts.
func TestSearchOfFiveThousand(t *testing.T) {
	ix := larderOf(t, 5000).index()
	var sizes []int
	total := 0
	for _, f := range ix.files {
		if "/"+f.Path == ix.words {
			total += zipped(bytesOf(t, f))
		} else {
			sizes = append(sizes, zipped(bytesOf(t, f)))
		}
	}
	for _, f := range theme(t).Files {
		if f.Name == "minisearch.js" || f.Name == "search.js" {
			total += zipped(f.Data)
		}
	}
	slices.Sort(sizes)
	for _, n := range sizes[len(sizes)-4:] {
		total += n
	}
	t.Logf("%d bytes, %d parts, the largest %d", total, len(sizes), sizes[len(sizes)-1])
	if len(sizes) < 20 || total > beforeAResult {
		t.Errorf("%d bytes before the first result, in %d parts; want at most %d", total, len(sizes), beforeAResult)
	}
}

// Every word of every recipe leads to a part that holds the recipe, unless so
// many hold the word that its page is the better answer.
func TestSearchIndexIsWhole(t *testing.T) {
	e := larderOf(t, 700)
	ix := e.index()
	files := byPath(ix.files)
	var list wordList
	if err := json.Unmarshal(bytesOf(t, files[ix.words[1:]]), &list); err != nil {
		t.Fatal(err)
	}
	holds := make(map[string]map[string]bool)
	for i, part := range list.Shards {
		var entries [][5]string
		if err := json.Unmarshal(bytesOf(t, files[part[1:]]), &entries); err != nil {
			t.Fatal(err)
		}
		for _, w := range strings.Fields(list.Words[i]) {
			if holds[w] != nil {
				t.Fatalf("%s is in two parts", w)
			}
			holds[w] = make(map[string]bool)
			for _, en := range entries {
				holds[w][en[1]] = true
			}
		}
	}
	for _, en := range e.entries() {
		for _, w := range searchWords(en) {
			if !holds[w][en.Address] && len(holds[w]) < mostFound {
				t.Errorf("%s is not found by %s", en.Name, w)
			}
		}
	}
}

func TestSearchIndexKeepsItsBytes(t *testing.T) {
	one, two := larderOf(t, 300).index(), larderOf(t, 300).index()
	for i := range one.files {
		if one.files[i].Path != two.files[i].Path || !bytes.Equal(bytesOf(t, one.files[i]), bytesOf(t, two.files[i])) {
			t.Errorf("%s is %s the second time", one.files[i].Path, two.files[i].Path)
		}
	}
}
