package content

import (
	"fmt"
	"testing"
)

// tables are the tables of keys, each with a way to read a file of its sort.
var tables = map[string]struct {
	keys KeyTable
	read func(matter string) []Fault
}{
	"recipe":  {RecipeKeys, func(s string) []Fault { _, f := ReadRecipe("a.md", []byte("---\n"+s+"---\n")); return f }},
	"episode": {EpisodeKeys, func(s string) []Fault { _, f := ReadEpisode("a.md", []byte("---\n"+s+"---\n")); return f }},
	"page":    {PageKeys, func(s string) []Fault { _, f := ReadPage("a.md", []byte("---\n"+s+"---\n")); return f }},
	"site":    {SiteKeys, func(s string) []Fault { _, f := ReadSettings("site.yaml", []byte(s)); return f }},
}

// Every key of every table is read: what is wrong for it is reported.
func TestKeysAreRead(t *testing.T) {
	for name, table := range tables {
		eachKey(table.keys, "%s", func(k Key, matter string) {
			wrong := "[x]"
			if k.List {
				wrong = "[[x]]"
			}
			matter = fmt.Sprintf(matter, k.Name+": "+wrong) + "\n"
			for _, f := range table.read(matter) {
				if f.Kind == WrongType {
					return
				}
			}
			t.Errorf("%s: nobody minds %s", name, matter)
		})
	}
}

// eachKey calls f for each key, with a front matter that has %s in its place.
func eachKey(keys KeyTable, matter string, f func(k Key, matter string)) {
	for _, k := range keys {
		f(k, matter)
		for _, below := range []KeyTable{k.Keys, k.Or} {
			in := k.Name + ": {%s}"
			if k.List {
				in = k.Name + ": [{%s}]"
			}
			eachKey(below, fmt.Sprintf(matter, in), f)
		}
	}
}

// Every key says what it means and what it wants.
func TestKeysAreWhole(t *testing.T) {
	for name, table := range tables {
		eachKey(table.keys, "%s", func(k Key, _ string) {
			if k.Name == "" || k.Doc == "" || k.Want.String() == "" {
				t.Errorf("%s: the key %q has no name, doc or want", name, k.Name)
			}
			if (k.Want == WantWord) != (len(k.Words) > 0) {
				t.Errorf("%s: the key %s wants %s and knows %q", name, k.Name, k.Want, k.Words)
			}
			if k.Want == WantKeys && len(k.Keys) == 0 {
				t.Errorf("%s: the key %s wants keys and knows none", name, k.Name)
			}
		})
	}
}

// What other people call a key is never the name of a key beside it.
func TestOtherNames(t *testing.T) {
	for name, table := range tables {
		eachTable(table.keys, func(keys KeyTable) {
			for _, k := range keys {
				for _, other := range otherNames[k.Name] {
					if keys.Find(other) != nil {
						t.Errorf("%s: %s is a key, and so no other name of %s", name, other, k.Name)
					}
				}
			}
		})
	}
}

func eachTable(keys KeyTable, f func(KeyTable)) {
	f(keys)
	for _, k := range keys {
		eachTable(k.Keys, f)
	}
}

func TestUnknownKey(t *testing.T) {
	for _, c := range []struct {
		key  string
		in   KeyTable
		want string
	}{
		{"headspce", keepingKeys, "did you mean headspace?"},
		{"haedspace", keepingKeys, "did you mean headspace?"},
		{"Keeps", keepingKeys, "did you mean keeps?"},
		{"jars sterilised", keepingKeys, "did you mean jars_sterilised?"},
		{"headspace", RecipeKeys, "headspace belongs under keeping"},
		{"time", RecipeKeys, "did you mean times? time belongs under keeping, processing"},
		{"note", RecipeKeys, "note belongs under ingredients or under batches"},
		{"yield", keepingKeys, "yield belongs at the top of the front matter or under batches"},
		{"steps", RecipeKeys, "the method is the first numbered list below the front matter"},
		{"method", keepingKeys, "did you mean way?"},
		{"ph", itemKeys, "a measured pH goes to the batch in which it was measured, under batches"},
		{"zest", timesKeys, "the keys known here are hands_on, cooking, waiting"},
		{"Damson jam", RecipeKeys, "put a text that holds a colon in quotation marks"},
	} {
		if got := unknownKey(c.key, c.in, RecipeKeys); got != c.want {
			t.Errorf("unknownKey(%q) = %q, want %q", c.key, got, c.want)
		}
	}
}

func TestDistance(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"", "", 0}, {"pint", "", 4}, {"", "pint", 4},
		{"pint", "pint", 0}, {"pint", "pints", 1}, {"pint", "pin", 1}, {"pint", "mint", 1},
		{"pint", "pitn", 1}, {"pint", "ipnt", 1}, {"pint", "tnip", 3},
	} {
		if got := distance(c.a, c.b); got != c.want {
			t.Errorf("distance(%q, %q) = %d, want %d", c.a, c.b, got, c.want)
		}
		if got := distance(c.b, c.a); got != c.want {
			t.Errorf("distance(%q, %q) = %d, want %d", c.b, c.a, got, c.want)
		}
	}
}
