package build

import (
	"bytes"
	"html/template"
	"slices"
	"strings"

	"github.com/yuin/goldmark/ast"
)

// A prose turns the Markdown of one body into HTML that fits a page: below its
// one h1, with links only to pages that are out.
type prose struct {
	md     *markdown
	source []byte
	levels []int // the levels of heading that the body has, highest first
	last   int   // place in levels of the heading before, from 1
}

func (m *markdown) prose(source []byte, doc ast.Node) *prose {
	p := &prose{md: m, source: source}
	for n := doc.FirstChild(); n != nil; n = n.NextSibling() {
		if h, ok := n.(*ast.Heading); ok && !slices.Contains(p.levels, h.Level) {
			p.levels = append(p.levels, h.Level)
		}
	}
	slices.Sort(p.levels)
	return p
}

// blocks renders blocks that stand side by side.
func (p *prose) blocks(nodes []ast.Node) (template.HTML, error) {
	var b bytes.Buffer
	p.last = 0
	for _, n := range nodes {
		if err := p.block(&b, n); err != nil {
			return "", err
		}
	}
	return template.HTML(strings.TrimSpace(b.String())), nil
}

// whole renders a whole body.
func (p *prose) whole(doc ast.Node) (template.HTML, error) { return p.blocks(children(doc)) }

func (p *prose) block(b *bytes.Buffer, n ast.Node) error {
	h, ok := n.(*ast.Heading)
	if !ok {
		return p.md.render(b, p.source, n)
	}
	// A body's highest heading stands right below the page's h1, and no level
	// is skipped on the way down.
	p.last = min(slices.Index(p.levels, h.Level), p.last, 4) + 1
	level := string(rune('1' + p.last))
	b.WriteString("<h" + level + ">")
	if err := p.inline(b, h); err != nil {
		return err
	}
	b.WriteString("</h" + level + ">")
	return nil
}

// inline renders what stands in a block, without the block itself.
func (p *prose) inline(b *bytes.Buffer, n ast.Node) error {
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		if err := p.md.render(b, p.source, c); err != nil {
			return err
		}
	}
	return nil
}

func children(n ast.Node) []ast.Node {
	var all []ast.Node
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		all = append(all, c)
	}
	return all
}
