package content

import (
	"bytes"
	"cmp"
	"slices"

	"go.yaml.in/yaml/v4"
)

// A Patch changes values in the front matter of one file, and leaves every
// other byte as it was: comments, the order of keys, quotation marks, the ends
// of lines, the Markdown below. Nothing is changed before Bytes is called.
type Patch struct {
	*source
	matter
	whole []byte // the file as it was given
	mark  int    // how many bytes of it are a byte order mark
	keys  KeyTable
	edits []edit
	style style
}

// An edit puts a text in the place of the bytes from one offset of the source
// to another.
type edit struct {
	from, to int
	text     string
	column   int // at which lines are put in; of several at one place the deepest come first
}

// A style is how a file is written.
type style struct {
	end  string // of a line
	step int    // how far keys stand to the right of the key that holds them
	dash int    // how far the hyphens of a list do
	item int    // how far an entry stands to the right of its hyphen
}

// NewPatch opens the front matter of a recipe, whose keys are those of t. It
// gives the faults for which nothing can be changed there, and then no Patch.
// It never changes data.
func NewPatch(name string, data []byte, t KeyTable) (*Patch, []Fault) {
	p := &Patch{source: newSource(name, data), whole: data, keys: t}
	p.mark = len(data) - len(bytes.TrimPrefix(data, byteOrderMark))
	if !p.lost {
		p.matter = p.cut()
	}
	for _, f := range p.faults {
		if f.Kind == FrontMatter {
			return nil, p.sorted()
		}
	}
	if p.root == nil || p.root.Kind != yaml.MappingNode {
		p.fault(Pos{name, 1, 1}, FrontMatter, "there are no keys to change", "begin the file with a line ---, then keys and values, then another line ---")
		return nil, p.sorted()
	}
	p.faults = nil
	p.style = p.styleOf()
	return p, nil
}

// Bytes gives the whole file with every change made in it, or the faults for
// which a change could not be made.
func (p *Patch) Bytes() ([]byte, []Fault) {
	if len(p.faults) > 0 {
		return nil, p.sorted()
	}
	edits := slices.Clone(p.edits)
	slices.SortStableFunc(edits, func(a, b edit) int {
		return cmp.Or(cmp.Compare(a.from, b.from), cmp.Compare(b.column, a.column))
	})
	out := bytes.NewBuffer(make([]byte, 0, len(p.whole)+256))
	at := 0
	for _, e := range edits {
		out.Write(p.whole[at : p.mark+e.from])
		out.WriteString(e.text)
		at = max(at, p.mark+e.to)
	}
	out.Write(p.whole[at:])
	return out.Bytes(), nil
}

// put notes a change.
func (p *Patch) put(from, to int, text string) {
	if from < to || text != "" {
		p.edits = append(p.edits, edit{from: from, to: to, text: text})
	}
}

// putLines notes lines that are put in before a line, at a column from 0.
func (p *Patch) putLines(line int, text string, column int) {
	at := p.lines[line-1]
	p.edits = append(p.edits, edit{from: at, to: at, text: text, column: column})
}

// styleOf takes the first example of each habit that the front matter gives.
func (p *Patch) styleOf() style {
	s := style{end: "\n", step: -1, dash: -1, item: -1}
	if bytes.HasSuffix(p.data[:p.lines[p.first-1]], []byte("\r\n")) {
		s.end = "\r\n"
	}
	p.habits(p.root, &s)
	if s.step < 0 {
		s.step = 2
	}
	if s.dash < 0 {
		s.dash = 2
	}
	if s.item < 0 {
		s.item = 2
	}
	return s
}

func (p *Patch) habits(n *yaml.Node, s *style) {
	if n.Style&yaml.FlowStyle != 0 {
		return
	}
	for i, v := range n.Content {
		block := v.Style&yaml.FlowStyle == 0
		switch {
		case n.Kind == yaml.SequenceNode && v.Line == n.Line && v.Column > n.Column+1 && s.item < 0:
			s.item = v.Column - n.Column
		case n.Kind != yaml.MappingNode || i%2 == 0 || !block:
		case v.Kind == yaml.MappingNode && v.Column > n.Column && s.step < 0:
			s.step = v.Column - n.Column
		case v.Kind == yaml.SequenceNode && v.Column >= n.Column && s.dash < 0:
			s.dash = v.Column - n.Column
		}
		p.habits(v, s)
	}
}

// offset gives the offset at which a node begins.
func (p *Patch) offset(n *yaml.Node) int {
	at := p.place(n)
	return p.lines[at.Line-1] + at.Col - 1
}

// place gives the place of a node in the file.
func (p *Patch) place(n *yaml.Node) Pos { return p.letter(p.first+n.Line-1, n.Column) }

// lineOf gives the number of the line in which a node begins.
func (p *Patch) lineOf(n *yaml.Node) int { return p.first + n.Line - 1 }

// lineEnd gives the offset of the end of a line, before the bytes that end it.
func (p *Patch) lineEnd(n int) int { return p.lines[n-1] + len(p.line(n)) }
