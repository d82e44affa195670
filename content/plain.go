package content

import (
	"bufio"
	"bytes"
	"html"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"
	markup "github.com/yuin/goldmark/renderer/html"
)

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
