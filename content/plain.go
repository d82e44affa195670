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
	l := oneLine{b: make([]byte, 0, 256), source: source}
	l.walk(n)
	return string(l.b)
}

// A oneLine collects words, and puts one space where there were some.
type oneLine struct {
	b      []byte
	source []byte
	gap    bool // a space is due before the next word
}

// walk writes what n and all below it say.
func (l *oneLine) walk(n ast.Node) {
	if l.node(n) == ast.WalkContinue {
		for below := n.FirstChild(); below != nil; below = below.NextSibling() {
			l.walk(below)
		}
	}
	l.gap = l.gap || n.Type() == ast.TypeBlock
}

// node writes what n says, without what is below it.
func (l *oneLine) node(n ast.Node) ast.WalkStatus {
	switch n := n.(type) {
	case *ast.Text:
		l.write(typed(n, l.source))
		l.gap = l.gap || n.SoftLineBreak() || n.HardLineBreak()
	case *ast.String:
		l.write([]byte(straight.Replace(html.UnescapeString(string(n.Value)))))
	case *ast.AutoLink:
		l.write(n.Label(l.source))
	case *ast.CodeBlock, *ast.FencedCodeBlock:
		l.write(n.Lines().Value(l.source))
	case *ast.RawHTML, *ast.HTMLBlock, *extast.FootnoteLink, *extast.FootnoteBacklink, *extast.FootnoteList:
		return ast.WalkSkipChildren
	}
	return ast.WalkContinue
}

func (l *oneLine) write(s []byte) {
	start := 0
	for i := 0; i < len(s); {
		switch {
		case isVisible(s[i]):
			i++
			continue
		case s[i] == ' ' && i > start && i+1 < len(s) && isVisible(s[i+1]):
			i += 2 // one space between two words stays
			continue
		}
		r, size := utf8.DecodeRune(s[i:])
		if unicode.IsSpace(r) {
			l.word(s[start:i])
			l.gap = true
			start = i + size
		}
		i += size
	}
	l.word(s[start:])
}

// word writes what holds no space at its ends: words, or a part of one.
func (l *oneLine) word(s []byte) {
	if len(s) == 0 {
		return
	}
	if l.gap && len(l.b) > 0 {
		l.b = append(l.b, ' ')
	}
	l.gap = false
	l.b = append(l.b, s...)
}

// straight undoes what the typographer did to quotation marks.
var straight = strings.NewReplacer("“", `"`, "”", `"`, "‘", "'", "’", "'")

// typed gives the characters that n stands for: \* is *, &frac14; is ¼.
func typed(n *ast.Text, source []byte) []byte {
	raw := n.Value(source)
	if n.IsRaw() || n.Parent().Kind() == ast.KindCodeSpan || bytes.IndexByte(raw, '&') < 0 && bytes.IndexByte(raw, '\\') < 0 {
		return raw
	}
	var buf bytes.Buffer
	w := bufio.NewWriter(&buf)
	markup.DefaultWriter.Write(w, raw)
	w.Flush()
	return []byte(html.UnescapeString(buf.String()))
}
