package build

import (
	"cmp"
	"slices"
	"unicode"
)

// A SearchPage lists everything by its first letter. A script makes the list
// shorter while the reader types; without it the list is the search.
type SearchPage struct {
	Shell
	Count   string
	Letters []Letter
}

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
	p := &SearchPage{Count: count(len(entries), "entry", "entries"), Letters: letters(entries)}
	p.Shell = e.shell(leaf{
		address:     searchAddress,
		name:        "Search",
		description: "Find a recipe or an episode of " + e.settings.Name.V + ", from A to Z.",
		scripts:     []string{"filter.js"},
	})
	return p
}

func (e *edition) entries() []Entry {
	var all []Entry
	for _, r := range e.recipes {
		j := jar(r)
		entry := Entry{Name: j.Name, Address: j.Address, Sort: j.Kind, Fill: j.Fill, Words: j.Keeps}
		for _, p := range r.Produce {
			entry.Words += " " + p.V
		}
		for _, t := range r.Tags {
			entry.Words += " " + t.V
		}
		all = append(all, entry)
	}
	for _, ep := range e.episodes {
		all = append(all, Entry{Name: ep.Name.V, Address: episodeAddress(ep), Sort: "Episode", Words: ep.Summary.V})
	}
	slices.SortFunc(all, func(a, b Entry) int {
		return cmp.Or(cmp.Compare(sortKey(a.Name), sortKey(b.Name)), cmp.Compare(a.Address, b.Address))
	})
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

func firstLetter(name string) rune {
	for _, c := range sortKey(name) {
		if c >= 'a' && c <= 'z' && !unicode.IsDigit(c) {
			return c
		}
		return 0
	}
	return 0
}
