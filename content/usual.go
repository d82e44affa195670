package content

import (
	"bytes"
	"strings"
	"unicode/utf8"

	"go.yaml.in/yaml/v4"
)

// usual reads front matter that is written as it usually is: keys and lists by
// indentation or in brackets on one line, texts plain or in quotation marks,
// comments. It gives the very node that yaml.Load gives, but for the comments,
// in a sixth of the time; and nil for anything else, right or wrong, of which
// the library is to judge. The text must be clean.
func usual(block []byte) *yaml.Node {
	if bytes.IndexByte(block, '\t') >= 0 {
		return nil
	}
	r := usualReader{rest: string(block)}
	if r.next(); r.indent != 0 {
		return nil
	}
	if n := r.lines(); r.indent < 0 && !r.odd {
		return n
	}
	return nil
}

// A usualReader stands at a letter of a line.
type usualReader struct {
	rest    string // the lines below
	line    string // without its end
	number  int    // of the line, from 1
	at      int    // the offset in the line
	indent  int    // of the line; -1 behind the last one
	counted int    // an offset in the line, before which
	letters int    // so many letters stand
	deep    int    // collections that are not closed
	odd     bool   // something was not as usual: from then on nothing is left to read
	room    []yaml.Node
	open    []*yaml.Node // what the collections hold that are not closed
}

// usualDepth is far from maxDepth, at which the library begins to complain.
const usualDepth = 12

// next goes to the next line that holds more than a comment.
func (r *usualReader) next() {
	for r.rest != "" {
		r.line, r.rest, _ = strings.Cut(r.rest, "\n")
		r.line = strings.TrimSuffix(r.line, "\r")
		r.number++
		r.at, r.counted, r.letters = 0, 0, 0
		if r.spaces(); r.at < len(r.line) && r.line[r.at] != '#' {
			r.indent = r.at
			return
		}
	}
	r.line, r.at, r.counted, r.indent = "", 0, 0, -1
}

// refuse leaves it to the library to read the whole.
func (r *usualReader) refuse() {
	r.odd, r.rest = true, ""
	r.next()
}

// lines reads the keys or the list that begin with this line.
func (r *usualReader) lines() *yaml.Node {
	if r.hyphen() {
		return r.list()
	}
	return r.keys(r.text(false))
}

// list reads the entries whose hyphens stand in one column.
func (r *usualReader) list() *yaml.Node {
	in, n, from := r.indent, r.begin(yaml.SequenceNode, "!!seq"), len(r.open)
	for r.indent == in && r.hyphen() {
		r.at++
		v := r.value(in, true)
		r.open = append(r.open, v)
	}
	if r.indent > in {
		r.refuse()
	}
	return r.end(n, from)
}

// keys reads the keys that begin in one column, of which the first was read.
func (r *usualReader) keys(key *yaml.Node) *yaml.Node {
	in, n, from := key.Column-1, r.begin(yaml.MappingNode, "!!map"), len(r.open)
	n.Column = key.Column
	for {
		if !r.colon() {
			r.refuse()
		}
		v := r.value(in, false)
		r.open = append(r.open, key, v)
		if r.indent != in {
			break
		}
		key = r.text(false)
	}
	if r.indent > in {
		r.refuse()
	}
	return r.end(n, from)
}

// value reads what stands behind a hyphen or a colon that belongs to a column,
// and goes to the line below it.
func (r *usualReader) value(in int, entry bool) *yaml.Node {
	line, column := r.number, r.column()
	if r.ends() {
		if r.next(); r.indent > in || r.indent == in && !entry && r.hyphen() {
			return r.lines()
		}
		n := r.node(yaml.ScalarNode, "!!null")
		n.Line, n.Column = line, column
		return n
	}
	n := r.inline(false)
	if entry && n.Kind == yaml.ScalarNode && r.peek() == ':' {
		return r.keys(n)
	}
	if !r.ends() {
		r.refuse()
	}
	r.next()
	return n
}

// inline reads a value that ends on its line.
func (r *usualReader) inline(inside bool) *yaml.Node {
	switch r.peek() {
	case '[':
		return r.brackets(yaml.SequenceNode, "!!seq", "[]")
	case '{':
		return r.brackets(yaml.MappingNode, "!!map", "{}")
	}
	return r.text(inside)
}

func (r *usualReader) brackets(kind yaml.Kind, tag, pair string) *yaml.Node {
	n, from := r.begin(kind, tag), len(r.open)
	n.Style = yaml.FlowStyle
	r.take(pair[0])
	r.spaces()
	for more := !r.take(pair[1]); more; {
		v := r.inline(true)
		r.open = append(r.open, v)
		if kind == yaml.MappingNode {
			v = r.paired(v)
			r.open = append(r.open, v)
		}
		r.spaces()
		if more = r.take(','); more {
			r.spaces()
		} else if !r.take(pair[1]) {
			r.refuse()
		}
	}
	return r.end(n, from)
}

// paired reads what belongs to a key in curly brackets.
func (r *usualReader) paired(key *yaml.Node) *yaml.Node {
	switch {
	case key.Kind != yaml.ScalarNode:
		r.refuse()
	case r.colon() && !r.ends():
		return r.inline(true)
	}
	r.spaces()
	return r.node(yaml.ScalarNode, "!!null")
}

// begin makes a collection that begins here.
func (r *usualReader) begin(kind yaml.Kind, tag string) *yaml.Node {
	if r.deep++; r.deep > usualDepth {
		r.refuse()
	}
	return r.node(kind, tag)
}

// end gives a collection what was read since from.
func (r *usualReader) end(n *yaml.Node, from int) *yaml.Node {
	n.Content = append(n.Content, r.open[from:]...)
	r.open = r.open[:from]
	r.deep--
	return n
}

// node makes a node that begins here.
func (r *usualReader) node(kind yaml.Kind, tag string) *yaml.Node {
	if len(r.room) == 0 {
		r.room = make([]yaml.Node, 64)
	}
	n := &r.room[0]
	r.room = r.room[1:]
	n.Kind, n.Tag, n.Line, n.Column = kind, tag, r.number, r.column()
	return n
}

// column gives the number of the letter at which r stands.
func (r *usualReader) column() int {
	r.letters += utf8.RuneCountInString(r.line[r.counted:r.at])
	r.counted = r.at
	return r.letters + 1
}

// peek gives the byte at which r stands; 0 at the end of the line.
func (r *usualReader) peek() byte {
	if r.at < len(r.line) {
		return r.line[r.at]
	}
	return 0
}

func (r *usualReader) take(c byte) bool {
	if r.peek() == c {
		r.at++
		return true
	}
	return false
}

func (r *usualReader) spaces() {
	for r.peek() == ' ' {
		r.at++
	}
}

// hyphen reports whether an entry of a list begins here.
func (r *usualReader) hyphen() bool { return r.peek() == '-' && r.blank(r.at+1) }

// colon takes what ends a key.
func (r *usualReader) colon() bool { return r.peek() == ':' && r.blank(r.at+1) && r.take(':') }

func (r *usualReader) blank(i int) bool { return i == len(r.line) || r.line[i] == ' ' }

// ends goes over spaces, and reports whether nothing but a comment comes behind
// them. A comment has a space before it.
func (r *usualReader) ends() bool {
	r.spaces()
	return r.at == len(r.line) || r.line[r.at] == '#' && r.line[r.at-1] == ' '
}
