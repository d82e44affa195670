package build

import (
	"fmt"
	"slices"
	"strings"

	"stillroom/content"
)

// A searchIndex is what the search looks things up in, in a browser: a list of
// all words, and shards of the entries that hold them. A reader's browser
// fetches the list, finds in it the words that may be meant, and fetches the
// shards of those alone: of 5,000 recipes a few hundredths.
type searchIndex struct {
	words string // address of the list of words
	files []File
}

// How large a shard grows. One that holds a single word may be larger: up to
// mostFound entries, the pages of the site first and then the newest recipes.
// Whoever looks for a word that more of them hold is better served by the page
// of its produce, month, kind or way, which comes first.
const (
	inShard   = 120
	mostFound = 200
)

// commonWords say nothing of what is looked for.
var commonWords = []string{"a", "an", "and", "at", "by", "for", "from", "in", "is", "it", "of", "on", "or", "the", "to", "with"}

// A wordList is the file that a browser fetches first.
type wordList struct {
	Shards []string `json:"shards"` // addresses
	Words  []string `json:"words"`  // of each shard, with spaces between them
}

// index makes the index. The same site gives the same bytes.
func (e *edition) index() searchIndex {
	entries := append(e.placeEntries(), e.entries()...)
	holds := make(map[string][]int)
	for i, en := range entries {
		for _, w := range searchWords(en) {
			if len(holds[w]) < mostFound {
				holds[w] = append(holds[w], i)
			}
		}
	}
	var list wordList
	var ix searchIndex
	for _, words := range shardsOf(holds) {
		places := placesOf(holds, words)
		f := searchFile(fmt.Sprintf("part-%d", len(list.Shards)), func() any { return entriesAt(entries, places) })
		ix.files = append(ix.files, f)
		list.Shards = append(list.Shards, "/"+f.Path)
		list.Words = append(list.Words, strings.Join(words, " "))
	}
	f := searchFile("words", func() any { return list })
	ix.files, ix.words = append(ix.files, f), "/"+f.Path
	return ix
}

// searchFile has the hash of its bytes in its name: a list and its shards that
// are of two editions never meet. An entry stands in many shards, so these are
// made again when they are written, and not held.
func searchFile(name string, v func() any) File {
	address := hashed(name+".json", mustJSON(v()))
	return madeLater("search/"+strings.TrimPrefix(address, "/assets/"), func() ([]byte, error) { return mustJSON(v()), nil })
}

// shardsOf parts all words, in alphabetical order, where a shard is full.
func shardsOf(holds map[string][]int) [][]string {
	words := make([]string, 0, len(holds))
	for w := range holds {
		words = append(words, w)
	}
	slices.Sort(words)
	var shards [][]string
	within := make(map[int]bool)
	for _, w := range words {
		fresh := 0
		for _, i := range holds[w] {
			if !within[i] {
				fresh++
			}
		}
		if len(shards) == 0 || len(within)+fresh > inShard {
			shards = append(shards, nil)
			clear(within)
		}
		for _, i := range holds[w] {
			within[i] = true
		}
		last := len(shards) - 1
		shards[last] = append(shards[last], w)
	}
	return shards
}

// placesOf gives the places of the entries of a shard, in order.
func placesOf(holds map[string][]int, words []string) []int {
	var places []int
	for _, w := range words {
		places = append(places, holds[w]...)
	}
	slices.Sort(places)
	return slices.Clone(slices.Compact(places))
}

// entriesAt gives entries, each as its name, its address, its sort, its fill and
// what else it can be found by.
func entriesAt(all []Entry, places []int) [][5]string {
	var entries [][5]string
	for _, i := range places {
		en := all[i]
		entries = append(entries, [5]string{en.Name, en.Address, en.Sort, en.Fill, en.Words})
	}
	return entries
}

// searchWords are the words of an entry in ASCII, each once.
func searchWords(en Entry) []string {
	words := strings.Split(slug(en.Name+" "+en.Sort+" "+en.Words), "-")
	slices.Sort(words)
	return slices.DeleteFunc(slices.Compact(words), func(w string) bool {
		return len(w) < 2 || slices.Contains(commonWords, w)
	})
}

// placeEntries are the pages that gather recipes: whoever looks for a produce,
// a kind, a way or a month finds them before any one recipe.
func (e *edition) placeEntries() []Entry {
	var all []Entry
	for _, c := range e.produceCounts() {
		all = append(all, Entry{Name: c.Name, Address: c.Address, Sort: "Produce", Fill: c.Fill})
	}
	for _, k := range kindNames {
		if len(e.kinds[k.kind]) > 0 {
			all = append(all, Entry{Name: k.many, Address: recipesAddress + "#" + string(k.kind), Sort: "Shelf", Words: k.one})
		}
	}
	for _, c := range e.wayCounts() {
		all = append(all, Entry{Name: c.Name, Address: c.Address, Sort: "Way of keeping"})
	}
	for _, m := range e.year(e.day.Month) {
		all = append(all, Entry{Name: m.Short + m.Rest, Address: m.Address, Sort: "Season"})
	}
	return all
}

// findableBy gives what a recipe can be found by besides its name and kind.
func findableBy(r *content.Recipe) string {
	words := texts(r.Produce)
	words = append(words, texts(r.Tags)...)
	words = append(words, nameKind(r.Kind.V).many)
	for _, w := range waysOf(r) {
		words = append(words, nameWay(w).name)
	}
	for _, m := range Season(r) {
		words = append(words, m.String())
	}
	return strings.Join(words, " ")
}
