package content

import (
	"strings"

	"go.yaml.in/yaml/v4"
)

// Set writes a value under a key, in the place of the value that stands there
// or after the key that best stands before it. What goes wrong is told by
// Bytes.
func (t Place) Set(key string, w Writing) {
	i := t.find(key)
	switch {
	case isOdd(t.node):
		t.p.refuse(t.node)
	case i < 0:
		t.insert(key, w)
	case isOdd(t.node.Content[i]) || isOdd(t.node.Content[i+1]):
		t.p.refuse(t.node.Content[i+1])
	case t.flow():
		t.replaceInline(i, w.flow())
	default:
		t.replace(i, w)
	}
}

// isOdd reports whether a node is what no recipe may hold: it stands for another
// place or is stood for, has its type set with an exclamation mark, or has a key
// that is no word.
func isOdd(n *yaml.Node) bool {
	for i := 0; i < len(n.Content) && n.Kind == yaml.MappingNode; i += 2 {
		if n.Content[i].Kind != yaml.ScalarNode || n.Content[i].Value == "" {
			return true
		}
	}
	return n.Kind == yaml.AliasNode || n.Anchor != "" || n.Style&yaml.TaggedStyle != 0 || n.Tag == "!"
}

// refuse reports a value that cannot be changed for that.
func (p *Patch) refuse(n *yaml.Node) {
	p.fault(p.place(n), WrongType, "what begins with *, & or !, or has a key that is no word, cannot be changed", "write it out, or put it in quotation marks")
}

// insert writes a key that is not there yet.
func (t Place) insert(key string, w Writing) {
	i := t.before(key)
	if t.flow() {
		t.insertFlow(i, Pair{key, w}.flow())
		return
	}
	column := t.node.Column - 1
	text := Pair{key, w}.block(column, t.p.style)
	if i < 0 { // before the first key, which may stand behind a hyphen
		at := t.p.offset(t.node)
		t.p.put(at, at, text+t.p.style.end+strings.Repeat(" ", column))
		return
	}
	t.p.putLines(t.after(i), strings.Repeat(" ", column)+text+t.p.style.end, column)
}

// insertFlow writes a key into curly brackets, behind the one at an index.
func (t Place) insertFlow(i int, text string) {
	at := t.p.offset(t.node) + 1
	switch {
	case i >= 0:
		at = t.p.inlineEnd(t.node.Content[i+1], t.after(i), true)
		if isNothing(t.node.Content[i+1]) {
			at = t.p.colonEnd(t.node.Content[i])
		}
		text = ", " + text
	case len(t.node.Content) > 0:
		text += ", "
	}
	t.p.put(at, at, text)
}

// before gives the index of the key after which a new one is best written; -1
// if it goes first.
func (t Place) before(key string) int {
	rank := func(name string) int {
		for i, k := range t.keys {
			if k.Name == name {
				return i
			}
		}
		return -1
	}
	best, index := -1, -1
	for i := 0; i < len(t.node.Content); i += 2 {
		if r := rank(t.node.Content[i].Value); r < rank(key) && r > best {
			best, index = r, i
		}
	}
	return index
}

// replace writes a value in the place of another, where keys stand on lines of
// their own.
func (t Place) replace(i int, w Writing) {
	key, old := t.node.Content[i], t.node.Content[i+1]
	collection := old.Kind != yaml.ScalarNode
	switch {
	case old.Style&(yaml.LiteralStyle|yaml.FoldedStyle) != 0:
		t.p.fault(t.p.place(old), BadValue, "this value is written as a text of several lines, which fill cannot change", "write it on the line of its key")
	case collection && old.Style&yaml.FlowStyle == 0:
		t.replaceBlock(i, w)
	case collection || w.scalar():
		t.replaceInline(i, w.flow())
	default:
		at := t.p.colonEnd(key)
		to := at
		if !isNothing(old) {
			to = t.p.inlineEnd(old, t.after(i), false)
		}
		t.p.put(at, to, "")
		t.p.putLines(t.after(i), w.lines(key.Column-1, t.p.style), key.Column)
	}
}

// replaceInline writes a value on the line of its key, or in the brackets that
// hold it, in the place of one that has no lines of its own.
func (t Place) replaceInline(i int, text string) {
	key, old := t.node.Content[i], t.node.Content[i+1]
	if isNothing(old) {
		at := t.p.colonEnd(key)
		t.p.put(at, at, " "+text)
		return
	}
	from, to := t.p.offset(old), t.p.inlineEnd(old, t.after(i), t.flow())
	t.p.put(from, to, text)
	if kept := t.p.comments(from, to, t.node.Column-1); kept != "" {
		t.p.putLines(t.p.at(to).Line+1, kept, t.node.Column)
	}
}

// replaceBlock writes a value in the place of lines. Their comments stay.
func (t Place) replaceBlock(i int, w Writing) {
	key, old := t.node.Content[i], t.node.Content[i+1]
	from, to := t.p.lines[t.p.lineOf(key)], t.p.lines[t.after(i)-1]
	column := old.Column - 1
	kept := t.p.comments(from, to, column)
	if w.scalar() {
		at := t.p.colonEnd(key)
		t.p.put(at, at, " "+w.Text)
		t.p.put(from, to, kept)
		return
	}
	if old.Kind == yaml.MappingNode && len(w.Pairs) > 0 {
		t.p.put(from, to, kept+w.linesAt(column, t.p.style))
		return
	}
	t.p.put(from, to, kept+w.lines(key.Column-1, t.p.style))
}
