package validate

import (
	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"

	"stillroom/content"
)

// A bodyReader makes passages of the blocks of a Markdown body.
type bodyReader struct {
	body content.Body
	*cutter
	passages []*passage
	heading  *passage
	denies   bool // the heading tells of what is not to be done
	part     int  // of the method, of the next step
	step     int  // the place of the next step in its part
	begun    bool // the first step was met
}

// readBody gives the passages of a body in their order.
func readBody(b content.Body, c *cutter) []*passage {
	if b.Doc == nil {
		return nil
	}
	r := &bodyReader{body: b, cutter: c}
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
			r.denies = r.heading.headsDenied()
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
	if part, ok := r.takeStep(item); ok {
		in.place, in.part = placeStep, part
		r.begun = true
	}
	return in
}

// takeStep reports whether an item is the next step of the method, and gives its
// part. Steps are met in their order.
func (r *bodyReader) takeStep(item ast.Node) (part int, ok bool) {
	for r.part < len(r.body.Method) && r.step == len(r.body.Method[r.part].Steps) {
		r.part, r.step = r.part+1, 0
	}
	if r.part == len(r.body.Method) || r.body.Method[r.part].Steps[r.step].Node != item {
		return 0, false
	}
	r.step++
	return r.part, true
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
func (r *bodyReader) leaf(n ast.Node, p passage) *passage {
	if r.begun && p.place == placeHead {
		p.place = placeNotes
	}
	if p.place != placeHeading {
		p.heading = r.heading
		p.denied = p.denied || r.denies
	}
	w := r.scribe(r.body.Source)
	w.inline(n)
	return r.take(p, &w)
}

// code makes a passage of a block of code, which a page shows as it is.
func (r *bodyReader) code(n ast.Node, in passage) {
	w := r.scribe(r.body.Source)
	for i := range n.Lines().Len() {
		l := n.Lines().At(i)
		w.segment(l.Start, l.Stop, true)
		w.space()
	}
	r.take(in, &w)
}

func (r *bodyReader) take(p passage, w *scribe) *passage {
	p.trace.begin = r.body.Pos
	kept := r.takeUp(p, w)
	r.passages = append(r.passages, kept)
	return kept
}
