package content

import (
	"bufio"
	"bytes"
	"fmt"
	"html"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	extast "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/renderer"
	markup "github.com/yuin/goldmark/renderer/html"
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
		goldmark.WithParserOptions(parser.WithAutoHeadingID()),
	)...)
}

// body reads what stands after the front matter.
func (d *decoder) body() Body {
	begin := d.matter.body
	b := Body{Source: d.data[begin:], Pos: d.at(begin)}
	b.Doc = markdown.Parser().Parse(text.NewReader(b.Source))
	b.Method = d.method(b)
	return b
}

// method finds the steps: the ordered lists from the first one on, up to the
// first heading that has none below it before the next heading of its rank. A
// heading names the first list below it.
func (d *decoder) method(b Body) (parts []Part) {
	var above ast.Node
	for n := b.Doc.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Heading:
			if len(parts) > 0 && !leadsToSteps(n) {
				return parts
			}
			above = n
		case *ast.List:
			if n.IsOrdered() {
				parts = append(parts, d.part(b, above, n))
				above = nil
			}
		}
	}
	return parts
}

// leadsToSteps reports whether an ordered list stands in the section that h
// opens.
func leadsToSteps(h *ast.Heading) bool {
	for n := h.NextSibling(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Heading:
			if n.Level <= h.Level {
				return false
			}
		case *ast.List:
			if n.IsOrdered() {
				return true
			}
		}
	}
	return false
}

func (d *decoder) part(b Body, above ast.Node, list *ast.List) Part {
	p := Part{Pos: d.nodePos(list, b), List: list}
	if above != nil {
		p.Heading = b.Plain(above)
	}
	for item := list.FirstChild(); item != nil; item = item.NextSibling() {
		p.Steps = append(p.Steps, Step{Pos: d.stepPos(item, b), Text: b.Plain(item), Node: item})
	}
	return p
}

// stepPos gives the place of a step's first word, or of its number if there is
// none.
func (d *decoder) stepPos(item ast.Node, b Body) Pos {
	if first := item.FirstChild(); first != nil && first.Pos() >= 0 {
		return d.nodePos(first, b)
	}
	return d.nodePos(item, b)
}

func (d *decoder) nodePos(n ast.Node, b Body) Pos {
	return d.at(d.matter.body + min(max(n.Pos(), 0), len(b.Source)))
}

// plain gives the words below n, with single spaces between them.
func plain(n ast.Node, source []byte) string {
	var l oneLine
	ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if entering {
			return l.node(n, source), nil
		}
		l.gap = l.gap || n.Type() == ast.TypeBlock
		return ast.WalkContinue, nil
	})
	return l.b.String()
}

// A oneLine collects words, and puts one space where there were some.
type oneLine struct {
	b   strings.Builder
	gap bool // a space is due before the next word
}

// node writes what n says, without what is below it.
func (l *oneLine) node(n ast.Node, source []byte) ast.WalkStatus {
	switch n := n.(type) {
	case *ast.Text:
		l.write(typed(n, source))
		l.gap = l.gap || n.SoftLineBreak() || n.HardLineBreak()
	case *ast.String:
		l.write(straight.Replace(html.UnescapeString(string(n.Value))))
	case *ast.AutoLink:
		l.write(string(n.Label(source)))
	case *ast.CodeBlock, *ast.FencedCodeBlock:
		l.write(string(n.Lines().Value(source)))
	case *ast.RawHTML, *ast.HTMLBlock, *extast.FootnoteLink, *extast.FootnoteBacklink, *extast.FootnoteList:
		return ast.WalkSkipChildren
	}
	return ast.WalkContinue
}

func (l *oneLine) write(s string) {
	start := 0
	for i, r := range s {
		if unicode.IsSpace(r) {
			l.word(s[start:i])
			l.gap = true
			start = i + utf8.RuneLen(r)
		}
	}
	l.word(s[start:])
}

// word writes what holds no space, a whole word or a part of one.
func (l *oneLine) word(s string) {
	if s == "" {
		return
	}
	if l.gap && l.b.Len() > 0 {
		l.b.WriteByte(' ')
	}
	l.gap = false
	l.b.WriteString(s)
}

// straight undoes what the typographer did to quotation marks.
var straight = strings.NewReplacer("“", `"`, "”", `"`, "‘", "'", "’", "'")

// typed gives the characters that n stands for: \* is *, &frac14; is ¼.
func typed(n *ast.Text, source []byte) string {
	raw := n.Value(source)
	if n.IsRaw() || n.Parent().Kind() == ast.KindCodeSpan || bytes.IndexByte(raw, '&') < 0 && bytes.IndexByte(raw, '\\') < 0 {
		return string(raw)
	}
	var buf bytes.Buffer
	w := bufio.NewWriter(&buf)
	markup.DefaultWriter.Write(w, raw)
	w.Flush()
	return html.UnescapeString(buf.String())
}
