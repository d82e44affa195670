package validate

import (
	"slices"
	"strings"
)

// servingWords tell that an ingredient is for the table, not for the jar.
var servingWords = []string{
	"to serve", "for serving", "when serving", "at serving", "before serving", "to garnish", "for garnish",
	"after opening", "on opening", "when opened", "at the table", "for the table",
}

// inJar gives the ingredients that go into the jars: all but those that are
// said to be for serving. Nobody may change them.
func (m *Match) inJar() []Item { return m.jarred }

func jarred(items []Item) []Item {
	if !slices.ContainsFunc(items, Item.isForServing) {
		return items
	}
	return slices.DeleteFunc(slices.Clone(items), Item.isForServing)
}

func (in Item) isForServing() bool {
	return in.Note != "" && saysAny(strings.ToLower(in.Note), servingWords) ||
		in.For != "" && saysAny(strings.ToLower(in.For), servingWords)
}

// lists reports whether the published recipe of the cited process itself
// holds an ingredient of that kind.
func (m *Match) lists(kind ItemKind) bool {
	return m.Process != nil && slices.Contains(m.Process.Lists, kind)
}

// unlisted gives the ingredients of some kinds that go into canning jars
// although the cited process does not list them.
func (m *Match) unlisted(kinds ...ItemKind) []Item {
	if !m.Keeping.Way.V.Canned() {
		return nil
	}
	var all []Item
	for _, in := range m.inJar() {
		if k := in.Class.Kind; slices.Contains(kinds, k) && !m.lists(k) {
			all = append(all, in)
		}
	}
	return all
}

// keepOut reports ingredients that are kept out of canning jars. What an
// authority's letter allows cannot be seen here, so beside a letter it is a
// warning.
func (m *Match) keepOut(items []Item, message, advice string) []Finding {
	var fs []Finding
	for _, in := range items {
		f := Finding{
			Pos:     in.Pos,
			Message: in.Item + ": " + message,
			Advice:  advice,
			Notes:   []Note{{Pos: m.Keeping.Way.Pos, Message: "canned here"}},
		}
		if m.Keeping.TestedBy != nil {
			f.Severity = Warning
			f.Advice = "See that the written process names it; otherwise: " + advice
		}
		fs = append(fs, f)
	}
	return fs
}
