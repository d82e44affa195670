package preview

import (
	"bytes"
	"slices"

	"github.com/yuin/goldmark/ast"

	"stillroom/content"
)

// method charts a body whose lists of steps are a recipe's method.
func (c *chart) method(b content.Body) {
	if b.Doc == nil {
		return
	}
	before, after, seen := 0, 0, 0
	for n := b.Doc.FirstChild(); n != nil; n = n.NextSibling() {
		part := slices.IndexFunc(b.Method, func(p content.Part) bool { return ast.Node(p.List) == n })
		pos := placeOf(b, n)
		switch {
		case part >= 0:
			seen = part + 1
		case seen == len(b.Method) && seen > 0:
			c.put(pos, at("#notes > *", after))
			after += shows(n)
		case seen > 0 || overSteps(n, b.Method):
			c.put(pos, at("#method h2", 0))
		default:
			c.put(pos, at(".headnote > *", before))
			before += shows(n)
		}
	}
	step := 0
	for _, p := range b.Method {
		for _, s := range p.Steps {
			step++
			c.put(content.Pos{File: s.Pos.File, Line: s.Pos.Line, Col: 1}, at("#method ol > li", step-1))
		}
	}
}

// overSteps reports whether a block is the heading of the first steps, or
// stands below it.
func overSteps(n ast.Node, method []content.Part) bool {
	if len(method) == 0 || method[0].Heading == "" {
		return false
	}
	for above := ast.Node(method[0].List).PreviousSibling(); above != nil; above = above.PreviousSibling() {
		if above == n {
			return true
		}
		if above.Kind() == ast.KindHeading {
			return false
		}
	}
	return false
}

// prose charts a body that is shown as it is.
func (c *chart) prose(b content.Body, selector string) {
	if b.Doc == nil {
		return
	}
	shown := 0
	for n := b.Doc.FirstChild(); n != nil; n = n.NextSibling() {
		c.put(placeOf(b, n), at(selector, shown))
		shown += shows(n)
	}
}

// shows counts the elements that a block becomes: HTML is left out.
func shows(n ast.Node) int {
	if n.Kind() == ast.KindHTMLBlock {
		return 0
	}
	return 1
}

// placeOf gives the place where a block of a body begins.
func placeOf(b content.Body, n ast.Node) content.Pos {
	at := max(n.Pos(), 0)
	if lines := n.Lines(); n.Type() == ast.TypeBlock && lines != nil && lines.Len() > 0 {
		at = min(max(at, 0), lines.At(0).Start)
	}
	before := b.Source[:min(at, len(b.Source))]
	return content.Pos{File: b.Pos.File, Line: b.Pos.Line + bytes.Count(before, []byte("\n")), Col: 1}
}
