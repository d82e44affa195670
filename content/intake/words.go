package intake

import (
	"net/url"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"github.com/JohannesKaufmann/html-to-markdown/v2/converter"
	"github.com/JohannesKaufmann/html-to-markdown/v2/plugin/base"
	"github.com/JohannesKaufmann/html-to-markdown/v2/plugin/commonmark"
	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
)

// toMarkdown turns HTML, or plain text, into Markdown. Scripts, styles and
// whatever runs or is filled in are dropped, and no link leads anywhere but to a
// page or a mailbox.
func toMarkdown(text string) string {
	root := fragment(text)
	neutralise(root)
	out, err := markdown.ConvertNode(root)
	if err != nil {
		return toText(text) // only a node that the library does not know
	}
	return strings.TrimSpace(strings.Map(printable, string(out)))
}

var markdown = converter.NewConverter(converter.WithPlugins(
	base.NewBasePlugin(),
	commonmark.NewCommonmarkPlugin(commonmark.WithEmDelimiter("*")),
))

// fragment reads a piece of HTML. Many pages escape it once more than they
// should, and plain text is a piece without tags.
func fragment(text string) *html.Node {
	if !strings.Contains(text, "<") && strings.Contains(text, "&lt;") {
		text = html.UnescapeString(text)
	}
	root := &html.Node{Type: html.ElementNode, Data: "div", DataAtom: atom.Div}
	nodes, err := html.ParseFragment(strings.NewReader(text), root)
	if err != nil { // nested too deeply
		nodes = []*html.Node{{Type: html.TextNode, Data: tags.ReplaceAllString(text, " ")}}
	}
	for _, n := range nodes {
		root.AppendChild(n)
	}
	return root
}

var tags = regexp.MustCompile(`<[^>]*>`)

// dropped are the elements that have no words for readers.
var dropped = []string{
	"script", "style", "noscript", "template", "iframe", "object", "embed", "form", "input", "button", "select", "textarea",
	"svg", "math", "canvas", "audio", "video", "img", "picture", "head", "title",
}

func neutralise(root *html.Node) {
	var drop []*html.Node
	for n := range root.Descendants() {
		switch {
		case n.Type == html.CommentNode, n.Type == html.ElementNode && slices.Contains(dropped, n.Data):
			drop = append(drop, n)
		case n.Type == html.ElementNode && n.Data == "a":
			n.Attr = slices.DeleteFunc(n.Attr, func(a html.Attribute) bool { return a.Key != "href" || !leadsToPage(a.Val) })
			if len(n.Attr) == 0 {
				n.Data, n.DataAtom = "span", atom.Span
			}
		}
	}
	for _, n := range drop {
		if n.Parent != nil {
			n.Parent.RemoveChild(n)
		}
	}
}

func leadsToPage(href string) bool {
	u, err := url.Parse(strings.TrimSpace(href))
	return err == nil && slices.Contains([]string{"http", "https", "mailto"}, strings.ToLower(u.Scheme))
}

// toText gives the words of HTML or plain text, with a line for each block.
func toText(text string) string {
	root := fragment(text)
	neutralise(root)
	var b strings.Builder
	writeText(&b, root, hasBlocks(root))
	var lines []string
	for l := range strings.SplitSeq(b.String(), "\n") {
		if l = strings.Join(strings.Fields(strings.Map(printable, l)), " "); l != "" {
			lines = append(lines, l)
		}
	}
	return strings.Join(lines, "\n")
}

// blocks are the elements that stand on lines of their own.
var blocks = []string{"p", "div", "li", "ul", "ol", "br", "h1", "h2", "h3", "h4", "h5", "h6", "tr", "section", "article", "dd", "dt", "blockquote"}

func isBlock(n *html.Node) bool { return n.Type == html.ElementNode && slices.Contains(blocks, n.Data) }

func hasBlocks(root *html.Node) bool {
	for n := range root.Descendants() {
		if isBlock(n) {
			return true
		}
	}
	return false
}

// writeText writes the words of a node. Where there are blocks, the end of a
// line in the source is no more than a space.
func writeText(b *strings.Builder, n *html.Node, blocks bool) {
	switch {
	case n.Type == html.TextNode && blocks:
		b.WriteString(strings.ReplaceAll(n.Data, "\n", " "))
	case n.Type == html.TextNode:
		b.WriteString(n.Data)
	}
	block := isBlock(n)
	if block {
		b.WriteByte('\n')
	}
	for c := range n.ChildNodes() {
		writeText(b, c, blocks)
	}
	if block {
		b.WriteByte('\n')
	}
}

// oneLine gives the words of HTML or plain text in one line.
func oneLine(text string) string { return strings.ReplaceAll(toText(text), "\n", " ") }

// printable drops controls and what turns the direction of writing: neither
// has a place in a recipe. Spaces of all widths become one.
func printable(r rune) rune {
	switch {
	case r == '\n':
		return r
	case r == '\t', unicode.Is(unicode.Zs, r):
		return ' '
	case r == '\ufffd': // a letter that was lost already leaves its place
		return '?'
	case unicode.IsControl(r), unicode.Is(unicode.Cf, r), r == '\u2028', r == '\u2029':
		return -1
	}
	return r
}
