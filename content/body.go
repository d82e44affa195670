package content

import (
	"bytes"
	"fmt"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"
)

// A Body is the Markdown after the front matter, parsed once.
type Body struct {
	Source []byte   // the text that the nodes of Doc point into; nobody may change it
	Pos    Pos      // where it begins
	Doc    ast.Node // never nil after Read
	Method []Part   // the steps of the first ordered lists
}

// A Part is an ordered list of steps, and the heading above it.
type Part struct {
	Heading string // empty if the list has none of its own
	Pos     Pos
	List    *ast.List
	Steps   []Step
}

// A Step is one item of the method.
type Step struct {
	Pos  Pos
	Text string // plain words, without Markdown, one line
	Node ast.Node
}

// HTML writes a node of the body, and all below it. Raw HTML in the Markdown is
// left out.
func (b Body) HTML(n ast.Node) []byte {
	var buf bytes.Buffer
	if err := markdown.Renderer().Render(&buf, b.Source, n); err != nil {
		panic(fmt.Sprintf("content: a buffer refuses to be written to: %v", err))
	}
	return buf.Bytes()
}

// Plain gives the words of a node of the body in one line, without Markdown.
// Quotation marks are straight, as most people type them.
func (b Body) Plain(n ast.Node) string { return plain(n, b.Source) }

// NewRenderer makes a renderer that writes HTML as Body.HTML does, except for
// the kinds of nodes that own takes over. It may be shared.
func NewRenderer(own renderer.NodeRenderer) renderer.Renderer {
	const first = 1 // before the renderers of the library and its extensions
	return newMarkdown(goldmark.WithRendererOptions(
		renderer.WithNodeRenderers(util.Prioritized(own, first)))).Renderer()
}

// markdown reads and writes every body. Bare addresses are not made into
// links: it would add a fifth to the time of reading.
var markdown = newMarkdown()

func newMarkdown(options ...goldmark.Option) goldmark.Markdown {
	return goldmark.New(append(options,
		goldmark.WithExtensions(extension.Table, extension.Strikethrough, extension.TaskList, extension.Footnote, extension.Typographer),
	)...)
}

// body reads what stands after the front matter.
func (d *decoder) body() Body {
	begin := d.matter.body
	b := Body{Source: d.data[begin:], Pos: d.at(begin)}
	if !d.untangled(begin) {
		b.Source = nil
	}
	b.Doc = markdown.Parser().Parse(text.NewReader(b.Source))
	join(b.Doc, b.Source)
	if !d.shallow(b) {
		b.Source, b.Doc = nil, ast.NewDocument()
	}
	b.Method = d.method(b)
	return b
}

// join makes one node of texts that touch. The parser ends one at every mark that
// may mean something, such as a full stop, and nodes are most of what a site
// holds.
func join(n ast.Node, source []byte) {
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		t, ok := c.(*ast.Text)
		if !ok {
			join(c, source)
			continue
		}
		for next := t.NextSibling(); next != nil && t.Merge(next, source); next = t.NextSibling() {
			n.RemoveChild(n, next)
		}
	}
}
