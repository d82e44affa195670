package build

import (
	"bytes"
	"fmt"
	"html/template"
	"slices"
	"strings"

	"github.com/yuin/goldmark/ast"

	"stillroom/content"
)

// A Method is how a recipe is made, and what its author says before and after.
type Method struct {
	Before template.HTML // the head note
	Parts  []Part
	After  template.HTML // the notes
}

// A Part is a list of steps. Steps are numbered through all parts, so that a
// number means one step.
type Part struct {
	Heading string        // empty for steps that have none of their own
	Aside   template.HTML // what stands between the heading and the steps
	First   int           // number of the first step
	Steps   []Step
}

// A Step has its number in its anchor: #step-4.
type Step struct {
	ID      string
	HTML    template.HTML
	Process string // the way of keeping whose table and clock it speaks of; empty for most steps
}

// method parts a body at its lists of steps.
func (m *markdown) method(b content.Body) (Method, error) {
	w := &methodWriter{prose: m.prose(b.Source, b.Doc)}
	nodes := children(b.Doc)
	first, last := span(nodes, b.Method)
	var made Method
	var err error
	if made.Before, err = w.prose.blocks(nodes[:first]); err != nil {
		return Method{}, err
	}
	if made.After, err = w.prose.blocks(nodes[last:]); err != nil {
		return Method{}, err
	}
	for _, n := range nodes[first:last] {
		if err := w.add(n, b.Method); err != nil {
			return Method{}, err
		}
	}
	made.Parts = w.parts
	return made, nil
}

// span gives where the method begins and ends among the blocks of a body: from
// the heading over the first list to the end of the last one.
func span(nodes []ast.Node, parts []content.Part) (first, last int) {
	if len(parts) == 0 {
		return len(nodes), len(nodes)
	}
	first = slices.Index(nodes, ast.Node(parts[0].List))
	last = slices.Index(nodes, ast.Node(parts[len(parts)-1].List)) + 1
	for i := first - 1; i >= 0 && parts[0].Heading != ""; i-- {
		if nodes[i].Kind() == ast.KindHeading {
			return i, last
		}
	}
	return first, last
}

type methodWriter struct {
	prose *prose
	parts []Part
	steps int        // how many there are so far
	aside []ast.Node // blocks since the last list
}

// add takes the next block of the method. A heading is kept back: its words
// come with the list that it stands over.
func (w *methodWriter) add(n ast.Node, parts []content.Part) error {
	i := slices.IndexFunc(parts, func(p content.Part) bool { return ast.Node(p.List) == n })
	switch {
	case i >= 0:
		return w.addPart(parts[i])
	case n.Kind() != ast.KindHeading:
		w.aside = append(w.aside, n)
	}
	return nil
}

func (w *methodWriter) addPart(p content.Part) error {
	aside, err := w.prose.blocks(w.aside)
	if err != nil {
		return err
	}
	w.aside = nil
	part := Part{Heading: heading(p, len(w.parts)), Aside: aside, First: w.steps + 1}
	for _, s := range p.Steps {
		w.steps++
		html, err := w.step(s)
		if err != nil {
			return err
		}
		part.Steps = append(part.Steps, Step{ID: fmt.Sprintf("step-%d", w.steps), HTML: html})
	}
	w.parts = append(w.parts, part)
	return nil
}

// heading leaves out what the page says anyway.
func heading(p content.Part, before int) string {
	if before == 0 && strings.EqualFold(p.Heading, "method") {
		return ""
	}
	return p.Heading
}

func (w *methodWriter) step(s content.Step) (template.HTML, error) {
	var b bytes.Buffer
	err := w.prose.inline(&b, s.Node)
	return template.HTML(strings.TrimSpace(b.String())), err
}
