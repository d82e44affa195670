package build

import (
	"bytes"
	"html"
	"net/url"
	"slices"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	extast "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/util"
)

// A markdown renders what content has parsed. HTML in the source is left out,
// and so are links that would run a script.
type markdown struct {
	renderer renderer.Renderer
	out      func(address string) bool // whether the page of an address of the site is out
	figure   func(file, alt string) *Picture
	away     *url.URL // the page whose text is read elsewhere: links lead there; nil on the page itself
}

func newMarkdown(out func(string) bool, figure func(file, alt string) *Picture) *markdown {
	m := &markdown{out: out, figure: figure}
	m.renderer = goldmark.New(
		goldmark.WithExtensions(extension.Table, extension.Strikethrough, extension.TaskList,
			extension.Footnote, extension.DefinitionList, extension.Typographer),
		goldmark.WithRendererOptions(renderer.WithNodeRenderers(util.Prioritized(m, 100))),
	).Renderer()
	return m
}

// render writes HTML in which degrees do not part from their number at the end
// of a line.
func (m *markdown) render(b *bytes.Buffer, source []byte, n ast.Node) error {
	start := b.Len()
	if err := m.renderer.Render(atOnce{b}, source, n); err != nil {
		return err
	}
	if text := b.Bytes()[start:]; bytes.Contains(text, []byte(" °")) {
		tied := bytes.ReplaceAll(text, []byte(" °"), []byte("\u00a0°"))
		b.Truncate(start)
		b.Write(tied)
	}
	return nil
}

// atOnce is a buffer as renderers want one; they would put another before it.
type atOnce struct{ *bytes.Buffer }

func (atOnce) Buffered() int { return 0 }

func (atOnce) Flush() error { return nil }

var _ util.BufWriter = atOnce{}

// RegisterFuncs puts our own way of writing in the place of goldmark's, where
// that would break what we promise of every page.
func (m *markdown) RegisterFuncs(r renderer.NodeRendererFuncRegisterer) {
	r.Register(ast.KindHeading, innerHeading)
	r.Register(ast.KindLink, m.link)
	r.Register(ast.KindImage, m.image)
	r.Register(extast.KindTable, table)
	r.Register(extast.KindTableCell, tableCell)
}

// innerHeading writes a heading that stands inside a quotation or a list, where it has no
// part in the order of the page.
func innerHeading(w util.BufWriter, _ []byte, _ ast.Node, entering bool) (ast.WalkStatus, error) {
	return ast.WalkContinue, tag(w, entering, "<p><strong>", "</strong></p>")
}

// schemes are what a link may begin with: a page, a letter, a telephone. Others
// run a script, or a program of the reader's.
var schemes = []string{"", "https", "http", "mailto", "tel"}

// link leads to another site, or to a page of this one if it is out: a recipe
// that is held back is named without a link.
func (m *markdown) link(w util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	l := n.(*ast.Link)
	address := string(l.Destination)
	to, err := url.Parse(address)
	if internal(address) && !m.out(address) || err != nil || !slices.Contains(schemes, to.Scheme) {
		return ast.WalkContinue, nil
	}
	if m.away != nil {
		address = m.away.ResolveReference(to).String()
	}
	open := `<a href="` + html.EscapeString(string(util.URLEscape([]byte(address), true))) + `">`
	return ast.WalkContinue, tag(w, entering, open, "</a>")
}

// image becomes a figure if it is one of the site's pictures, and else its own
// description: pages load no pictures from elsewhere.
func (m *markdown) image(w util.BufWriter, source []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		return ast.WalkContinue, nil
	}
	i := n.(*ast.Image)
	alt := plainText(i, source)
	p := m.figure(string(i.Destination), alt)
	if p == nil {
		_, err := w.WriteString(html.EscapeString(alt))
		return ast.WalkSkipChildren, err
	}
	_, err := w.WriteString(prosePicture(p))
	return ast.WalkSkipChildren, err
}

// table may be wider than a phone, and then moves inside a frame that the
// keyboard reaches too.
func table(w util.BufWriter, _ []byte, _ ast.Node, entering bool) (ast.WalkStatus, error) {
	return ast.WalkContinue, tag(w, entering,
		`<section class="wide" aria-label="Table" tabindex="0"><table>`, "</table></section>")
}

// alignments are classes: a style attribute would be refused by our own
// content security policy.
var alignments = map[extast.Alignment]string{
	extast.AlignLeft: ` class="left"`, extast.AlignRight: ` class="right"`, extast.AlignCenter: ` class="centre"`,
}

func tableCell(w util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	c := n.(*extast.TableCell)
	name, scope := "td", ""
	if c.Parent().Kind() == extast.KindTableHeader {
		name, scope = "th", ` scope="col"`
	}
	return ast.WalkContinue, tag(w, entering, "<"+name+scope+alignments[c.Alignment]+">", "</"+name+">")
}

func tag(w util.BufWriter, entering bool, open, shut string) error {
	if !entering {
		open = shut
	}
	_, err := w.WriteString(open)
	return err
}

// plainText gives the words of a node without their marks.
func plainText(n ast.Node, source []byte) string {
	var b bytes.Buffer
	_ = ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if t, ok := n.(*ast.Text); ok && entering {
			b.Write(t.Segment.Value(source))
			if t.SoftLineBreak() {
				b.WriteByte(' ')
			}
		}
		if s, ok := n.(*ast.String); ok && entering {
			b.Write(s.Value)
		}
		return ast.WalkContinue, nil
	})
	return b.String()
}
