package content

import (
	"github.com/yuin/goldmark/ast"
)

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
