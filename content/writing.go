package content

import "strings"

// A Writing is what a Patch writes for a key: a text, or keys, or a list.
type Writing struct {
	Text  string // what a cook would write: 1/4 in
	Pairs []Pair
	List  []Writing
}

// A Pair is a key and what is written for it.
type Pair struct {
	Key string
	Writing
}

func (w Writing) scalar() bool { return w.Pairs == nil && w.List == nil }

// flow gives the writing on one line.
func (w Writing) flow() string {
	var parts []string
	switch {
	case w.Pairs != nil:
		for _, p := range w.Pairs {
			parts = append(parts, p.flow())
		}
		return "{" + strings.Join(parts, ", ") + "}"
	case w.List != nil:
		for _, e := range w.List {
			parts = append(parts, e.flow())
		}
		return "[" + strings.Join(parts, ", ") + "]"
	}
	return quoted(w.Text)
}

func (p Pair) flow() string { return quoted(p.Key) + ": " + p.Writing.flow() }

// quoted puts quotation marks around a text that brackets would cut in two.
func quoted(s string) string {
	if strings.ContainsAny(s, ",[]{}") {
		return `"` + s + `"`
	}
	return s
}

// block gives the pair on lines of its own, without the spaces before the first
// and the end of the last.
func (p Pair) block(column int, s style) string {
	if p.scalar() {
		return p.Key + ": " + p.Text
	}
	return p.Key + ":" + s.end + strings.TrimSuffix(p.lines(column, s), s.end)
}

// lines gives keys or a list on lines of their own, under a key at a column
// from 0.
func (w Writing) lines(column int, s style) string {
	if w.Pairs != nil {
		return w.linesAt(column+s.step, s)
	}
	return w.linesAt(column+s.dash, s)
}

// linesAt gives keys or a list on lines of their own at a column.
func (w Writing) linesAt(column int, s style) string {
	var b strings.Builder
	indent := strings.Repeat(" ", column)
	for _, p := range w.Pairs {
		b.WriteString(indent + p.block(column, s) + s.end)
	}
	for _, e := range w.List {
		hyphen := "-" + strings.Repeat(" ", s.item-1)
		if e.scalar() {
			b.WriteString(indent + hyphen + e.Text + s.end)
			continue
		}
		keys := e.linesAt(column+s.item, s)
		b.WriteString(indent + hyphen + keys[column+s.item:])
	}
	return b.String()
}
