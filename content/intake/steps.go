package intake

import (
	"regexp"
	"strings"

	"golang.org/x/net/html"
)

// A part is some steps, and the heading above them.
type part struct {
	heading string // may be empty
	steps   []string
}

// partsOf reads the method of a recipe: texts, steps, and sections of steps.
// The steps are Markdown, each on one line.
func partsOf(vs []value) []part { return method{}.parts(vs) }

// A method is being read; it holds the things that were read, since they may
// lie in one another in rings.
type method map[*thing]bool

func (m method) parts(vs []value) []part {
	var parts []part
	open := func() *part {
		if len(parts) == 0 || parts[len(parts)-1].heading != "" {
			parts = append(parts, part{})
		}
		return &parts[len(parts)-1]
	}
	for _, v := range vs {
		switch t := v.thing; {
		case t == nil:
			p := open()
			p.steps = append(p.steps, stepsOf(v.text)...)
		case t.is("HowToSection"), t.is("ItemList") && len(t.all("name")) > 0:
			parts = append(parts, m.section(t))
		default:
			p := open()
			p.steps = append(p.steps, m.step(t)...)
		}
	}
	return nonEmpty(parts)
}

func (m method) section(t *thing) part {
	p := part{heading: t.line("name")}
	if m[t] {
		return p
	}
	m[t] = true
	for _, sub := range m.parts(t.all("itemListElement", "steps", "step")) {
		p.steps = append(p.steps, sub.steps...)
	}
	return p
}

// step reads a step, or a list of them. A step whose text is not given is made
// of its directions, or is its name.
func (m method) step(t *thing) []string {
	if m[t] {
		return nil
	}
	m[t] = true
	var steps []string
	if text := t.all("text"); len(text) > 0 {
		for _, v := range text {
			steps = append(steps, stepsOf(v.words())...)
		}
		return steps
	}
	for _, v := range t.all("itemListElement", "item", "step", "steps") {
		if v.thing != nil {
			steps = append(steps, m.step(v.thing)...)
		} else {
			steps = append(steps, stepsOf(v.text)...)
		}
	}
	switch {
	case len(steps) > 0 && t.is("HowToStep"):
		return []string{strings.Join(steps, " ")}
	case len(steps) > 0:
		return steps
	}
	return stepsOf(t.line("name", "description"))
}

// stepsOf takes a text apart: at its list items or paragraphs, or at its lines.
func stepsOf(text string) []string {
	root := fragment(text)
	neutralise(root)
	pieces := piecesOf(root)
	if pieces == nil {
		for l := range strings.SplitSeq(toText(text), "\n") {
			pieces = append(pieces, html.EscapeString(l))
		}
		if !hasBlocks(root) && !strings.Contains(strings.TrimSpace(text), "\n") {
			pieces = []string{text} // one line, whose emphasis is kept
		}
	}
	var steps []string
	for _, p := range pieces {
		step := strings.Join(strings.Fields(toMarkdown(p)), " ")
		step = strings.TrimSpace(ownNumber.ReplaceAllString(step, ""))
		if step != "" {
			steps = append(steps, step)
		}
	}
	return steps
}

// ownNumber is a number that a page writes before a step, as text: "1. ",
// "2) ", "Step 3: ".
var ownNumber = regexp.MustCompile(`^(?i:step\s+\d{1,2}\s*[:.)–-]\s*|\d{1,2}\\?[.)]\s+)`)

// piecesOf gives the list items of a piece of HTML, or else its paragraphs; nil
// if it has none.
func piecesOf(root *html.Node) []string {
	for _, name := range []string{"li", "p"} {
		var pieces []string
		for n := range root.Descendants() {
			if n.Type == html.ElementNode && n.Data == name {
				pieces = append(pieces, inner(n))
			}
		}
		if pieces != nil {
			return pieces
		}
	}
	return nil
}

func inner(n *html.Node) string {
	var b strings.Builder
	for c := range n.ChildNodes() {
		if html.Render(&b, c) != nil {
			return ""
		}
	}
	return b.String()
}

func nonEmpty(parts []part) []part {
	var all []part
	for _, p := range parts {
		if len(p.steps) > 0 {
			all = append(all, p)
		}
	}
	return all
}
