package build

import (
	"slices"
	"unicode"
	"unicode/utf8"
)

// A SearchPage has a field that a script makes useful. Without the script, and
// below it, stand lists: everything by its first letter, or if that is too long
// to look through, the shelves, months, produce and ways.
type SearchPage struct {
	Shell
	Count   string
	Words   string // address of the list of words to search
	Letters []Letter
	Year    []Month // this and what follows only if there are no letters
	Shelves []Link
	Produce []Counted
	Ways    []Counted
}

// lookThrough is how many entries a reader may look through.
const lookThrough = 300

// A Letter is a part of the list.
type Letter struct {
	ID      string // letter-d
	Name    string // D
	Entries []Entry
}

// An Entry is a recipe or an episode.
type Entry struct {
	Name    string
	Address string
	Sort    string // Jam, Episode 3
	Fill    string // empty for an episode
	Words   string // what else it can be found by
}

func (e *edition) searchPage() *SearchPage {
	entries := e.entries()
	p := &SearchPage{Count: count(len(entries), "entry", "entries"), Words: e.searching().words}
	if len(entries) <= lookThrough {
		p.Letters = letters(entries)
	} else {
		p.Year, p.Produce, p.Ways = e.year(e.day.Month), e.produceCounts(), e.wayCounts()
		for _, k := range kindNames {
			if len(e.kinds[k.kind]) > 0 {
				p.Shelves = append(p.Shelves, Link{Name: k.many, Address: recipesAddress + "#" + string(k.kind)})
			}
		}
	}
	p.Shell = e.shell(leaf{
		address:     searchAddress,
		name:        "Search",
		description: "Find a recipe or an episode of " + e.settings.Name.V + ", from A to Z.",
		scripts:     []string{"minisearch.js", "search.js"},
	})
	return p
}

func (e *edition) entries() []Entry {
	var all []Entry
	for _, r := range e.recipes {
		j := jar(r)
		entry := Entry{Name: j.Name, Address: j.Address, Sort: j.Kind, Fill: j.Fill, Words: findableBy(r)}
		all = append(all, entry)
	}
	for _, ep := range e.episodes {
		all = append(all, Entry{Name: ep.Name.V, Address: episodeAddress(ep), Sort: "Episode", Words: ep.Summary.V})
	}
	sortBy(all, func(en Entry) string { return sortKey(en.Name) + "\x00" + en.Address })
	return all
}

// letters parts entries, which come in order of name, by their first letter.
// What begins with a number, or with a letter of another script, stands apart.
func letters(entries []Entry) []Letter {
	var all []Letter
	for _, en := range entries {
		l := Letter{ID: "letter-other", Name: "0–9"}
		if c := firstLetter(en.Name); c != 0 {
			l = Letter{ID: "letter-" + string(c), Name: string(unicode.ToUpper(c))}
		}
		i := slices.IndexFunc(all, func(other Letter) bool { return other.ID == l.ID })
		if i < 0 {
			i = len(all)
			all = append(all, l)
		}
		all[i].Entries = append(all[i].Entries, en)
	}
	return all
}

// firstLetter is the letter, of a to z, that a name is sorted by; 0 if it begins otherwise.
func firstLetter(name string) rune {
	c, _ := utf8.DecodeRuneInString(sortKey(name))
	if c < 'a' || c > 'z' {
		return 0
	}
	return c
}
