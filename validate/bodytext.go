package validate

import (
	"html"
	"strings"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"

	"stillroom/content"
)

// A bodyReader makes passages of the blocks of a Markdown body.
type bodyReader struct {
	body     content.Body
	lex      *lexicon
	passages []*passage
	heading  *passage
	steps    map[ast.Node]int // the items that are steps of the method, and their part
	begun    bool             // the first step was met
}

// readBody gives the passages of a body in their order.
func readBody(b content.Body, l *lexicon) []*passage {
	if b.Doc == nil {
		return nil
	}
	r := &bodyReader{body: b, lex: l, steps: map[ast.Node]int{}}
	for i, p := range b.Method {
		for _, s := range p.Steps {
			r.steps[s.Node] = i
		}
	}
	r.blocks(b.Doc, passage{place: placeHead})
	return r.passages
}

// blocks reads the blocks below a node. in holds what they take over from it.
func (r *bodyReader) blocks(n ast.Node, in passage) {
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		switch c.Kind() {
		case ast.KindHeading:
			h := in
			h.place = placeHeading
			h.heading = nil
			r.heading = r.leaf(c, h)
		case ast.KindHTMLBlock, ast.KindThematicBreak:
		case ast.KindParagraph, ast.KindTextBlock, extast.KindTableCell:
			r.leaf(c, in)
		case ast.KindList:
			r.blocks(c, r.inList(c, in))
		case ast.KindListItem:
			r.blocks(c, r.inItem(c, in))
		case ast.KindCodeBlock, ast.KindFencedCodeBlock:
			r.code(c, in)
		default:
			r.blocks(c, in)
		}
	}
}

// inItem gives what the blocks of an item take over.
func (r *bodyReader) inItem(item ast.Node, in passage) passage {
	if part, ok := r.steps[item]; ok {
		in.place, in.part = placeStep, part
		r.begun = true
	}
	return in
}

// inList gives what the items of a list take over: one that is announced by
// "Never:", or stands under "Myths", tells what is not done.
func (r *bodyReader) inList(list ast.Node, in passage) passage {
	if prev := list.PreviousSibling(); prev != nil && prev.Kind() == ast.KindParagraph && len(r.passages) > 0 {
		in.denied = in.denied || r.passages[len(r.passages)-1].announcesDenied()
	}
	return in
}

// leaf makes a passage of a block that holds text.
func (r *bodyReader) leaf(n ast.Node, in passage) *passage {
	p := in
	if r.begun && p.place == placeHead {
		p.place = placeNotes
	}
	if p.place != placeHeading {
		p.heading = r.heading
		p.denied = p.denied || r.heading != nil && r.heading.headsDenied()
	}
	w := scribe{source: r.body.Source}
	w.inline(n)
	return r.take(&p, &w)
}

// code makes a passage of a block of code, which a page shows as it is.
func (r *bodyReader) code(n ast.Node, in passage) {
	w := scribe{source: r.body.Source}
	for i := range n.Lines().Len() {
		l := n.Lines().At(i)
		w.segment(l.Start, l.Stop, true)
		w.space()
	}
	r.take(&in, &w)
}

func (r *bodyReader) take(p *passage, w *scribe) *passage {
	p.text, p.links = w.text.String(), w.links
	p.trace = trace{source: r.body.Source, begin: r.body.Pos, pieces: w.pieces}
	p.cut(r.lex)
	r.passages = append(r.passages, p)
	return p
}

// A scribe puts the words of inline nodes into one line and keeps their
// places.
type scribe struct {
	source []byte
	text   strings.Builder
	pieces []piece
	links  []string
	end    int // in the source, of what was written last
}

// inline writes what stands below a node. What is struck out is not said.
func (w *scribe) inline(n ast.Node) {
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		switch c := c.(type) {
		case *ast.Text:
			w.segment(c.Segment.Start, c.Segment.Stop, c.IsRaw() || n.Kind() == ast.KindCodeSpan)
			if c.SoftLineBreak() || c.HardLineBreak() {
				w.space()
			}
		case *ast.String:
			w.piece(straightApostrophe.Replace(html.UnescapeString(string(c.Value))), w.end, 1)
		case *ast.Link:
			w.links = append(w.links, string(c.Destination))
			w.inline(c)
		case *ast.AutoLink, *ast.RawHTML, *extast.Strikethrough, *extast.FootnoteLink, *extast.FootnoteBacklink:
		default:
			w.inline(c)
		}
	}
}

// segment writes a stretch of the source. What stands for another character,
// as &frac14; or \*, becomes that character unless raw.
func (w *scribe) segment(from, to int, raw bool) {
	for start := from; start < to; {
		i := start
		for i < to && !w.isSpecial(i, to, raw) {
			i++
		}
		w.piece(string(w.source[start:i]), start, i-start)
		start = i
		if i < to {
			start = w.special(i, to)
		}
	}
	w.end = to
}

// isSpecial reports whether something at i is not written as it stands.
func (w *scribe) isSpecial(i, to int, raw bool) bool {
	switch w.source[i] {
	case '&', '\\':
		return !raw
	case apostropheMark[0]:
		return strings.HasPrefix(string(w.source[i:min(i+len(apostropheMark), to)]), apostropheMark)
	}
	return false
}

// apostropheMark is the apostrophe that typesetters use. Texts are read with
// the straight one.
const apostropheMark = "’"

var straightApostrophe = strings.NewReplacer(apostropheMark, "'")

// special writes the character that an entity or a backslash at i stands for,
// and gives its end.
func (w *scribe) special(i, to int) int {
	const longest = 32
	if w.source[i] == apostropheMark[0] {
		w.piece("'", i, len(apostropheMark))
		return i + len(apostropheMark)
	}
	if w.source[i] == '\\' {
		if i+1 < to && strings.IndexByte("!\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~", w.source[i+1]) >= 0 {
			i++
		}
		w.piece(string(w.source[i:i+1]), i, 1)
		return i + 1
	}
	if end := strings.IndexByte(string(w.source[i:min(to, i+longest)]), ';'); end > 0 {
		written := string(w.source[i : i+end+1])
		if c := html.UnescapeString(written); c != written {
			w.piece(c, i, len(written))
			return i + end + 1
		}
	}
	w.piece("&", i, 1)
	return i + 1
}

func (w *scribe) piece(s string, source, length int) {
	if s == "" {
		return
	}
	w.pieces = append(w.pieces, piece{w.text.Len(), source, min(length, len(s))})
	if strings.ContainsAny(s, "\n\r\t\u00a0\u2002\u2003\u2009\u202f") {
		s = oneLine.Replace(s)
	}
	w.text.WriteString(s)
	w.end = source + length
}

// oneLine puts spaces in the place of every character that ends a line or
// moves on it, as many as it has bytes.
var oneLine = strings.NewReplacer("\n", " ", "\r", " ", "\t", " ", "\u00a0", "  ", "\u2002", "   ", "\u2003", "   ", "\u2009", "   ", "\u202f", "   ")

func (w *scribe) space() { w.text.WriteByte(' ') }
