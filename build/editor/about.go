package editor

import (
	"fmt"
	"slices"
	"strings"

	"stillroom/content"
	"stillroom/validate"
)

// hover tells of what is written at a place: what a key means, what was tested,
// which recipe a slug is of.
func (s *Server) hover(p placeParams) (any, error) {
	d := s.document(p.TextDocument)
	if d == nil {
		return nil, nil
	}
	col := d.column(d.line(p.Position.Line), p.Position.Character)
	at, ok := spotAt(d.paper, d.file, p.Position.Line, col)
	if !ok || at.word == "" {
		return nil, nil
	}
	text := s.about(d, at)
	if text == "" {
		return nil, nil
	}
	return hover{markup{"markdown", text}, d.span(at.line, at.from, at.to)}, nil
}

func (s *Server) about(d *document, at spot) string {
	var parts []string
	keys, key := s.meaning(d.file, at)
	if k := keys.Find(at.word); k != nil {
		parts = append(parts, aboutKey(k))
	}
	if key != nil && key.Want == content.WantSlug {
		if r := s.recipe(at.word); r != nil {
			parts = append(parts, aboutRecipe(r))
		}
	}
	if slices.Contains(at.path, "keeping") || at.word == "keeping" {
		if p := processOf(keepingAt(readNow(d, at.line), at)); p != nil {
			parts = append(parts, aboutProcess(p))
		}
	}
	return strings.Join(parts, "\n\n---\n\n")
}

// aboutKey tells what a key means and what it wants.
func aboutKey(k *content.Key) string {
	text := "**" + k.Name + "**: " + k.Doc
	switch {
	case len(k.Words) > 0:
		text += "\n\nOne of " + strings.Join(k.Words, ", ") + "."
	case k.List:
		text += "\n\nA list; each is " + k.Want.String() + "."
	default:
		text += "\n\nWants " + k.Want.String() + "."
	}
	if k.Required {
		text += " It must be there."
	}
	return text
}

func aboutRecipe(r *content.Recipe) string {
	text := "**" + r.Name.V + "**"
	switch {
	case r.Withdrawn != nil:
		text += " (withdrawn)"
	case r.Status.V == content.Draft:
		text += " (draft)"
	}
	if r.Summary.V != "" {
		text += "\n\n" + r.Summary.V
	}
	return text + "\n\n" + r.File
}

// aboutProcess shows all that a process asks for, with its source. It works
// nothing out: every figure is one that was published.
func aboutProcess(p *validate.Process) string {
	var b strings.Builder
	fmt.Fprintf(&b, "**%s**: %s\n\n%s", p.ID, p.Food, p.Method)
	if p.Pack != "" {
		fmt.Fprintf(&b, ", %s pack", p.Pack)
	}
	if acid := validate.AcidFor(p); len(acid.Choices) > 0 {
		var ways []string
		for _, c := range acid.Choices {
			ways = append(ways, c.String())
		}
		fmt.Fprintf(&b, "\n\nAcid: %s", strings.Join(ways, ", or "))
	}
	for _, j := range p.Jars {
		b.WriteString("\n\n")
		b.WriteString(jarLine(j))
		for _, c := range j.Schedules {
			b.WriteString(scheduleTable(c))
		}
	}
	fmt.Fprintf(&b, "\n\nSource: %s", p.Publication)
	if p.Edition != "" {
		fmt.Fprintf(&b, ", %s", p.Edition)
	}
	return b.String()
}

func jarLine(j validate.JarProcess) string {
	line := "Any jar"
	if j.Jar != "" {
		line = "**" + j.Jar + "**"
	}
	if j.Headspace != nil {
		line += ", headspace " + content.Quantity{Low: j.Headspace, High: j.Headspace, Unit: content.Inch}.String()
	}
	return line
}

// scheduleTable sets a schedule as a table.
func scheduleTable(c validate.Schedule) string {
	var b strings.Builder
	if c.Name != "" {
		fmt.Fprintf(&b, "\n\n%s gauge", c.Name)
	}
	b.WriteString("\n\n| altitude | time |")
	if c.Gauge != "" {
		b.WriteString(" pressure |\n| --- | --- | --- |")
	} else {
		b.WriteString("\n| --- | --- |")
	}
	for _, band := range c.Bands {
		fmt.Fprintf(&b, "\n| %s | %d min |", band, band.Minutes)
		if c.Gauge != "" {
			fmt.Fprintf(&b, " %d psi |", band.PSI)
		}
	}
	return b.String()
}

// keepingAt gives the way of keeping that a spot is in; nil if it is in none.
func keepingAt(r *content.Recipe, at spot) *content.Keeping {
	var found *content.Keeping
	if r == nil || len(at.path) == 0 || at.path[0] != "keeping" {
		return nil
	}
	for i := range r.Keeping {
		pos := r.Keeping[i].Pos
		if pos.Line-1 < at.line || pos.Line-1 == at.line && pos.Col-1 <= at.from {
			found = &r.Keeping[i]
		}
	}
	return found
}

// processOf gives the process that a way of keeping cites; nil if it cites none.
func processOf(k *content.Keeping) *validate.Process {
	if k == nil || !k.Process.Set() {
		return nil
	}
	p, _ := validate.FindProcess(k.Process.V, k.Way.V, k.Pack.V)
	return p
}

// readNow gives the recipe that a document holds, if need be without the line that
// is being written; nil if it cannot be read.
func readNow(d *document, line int) *content.Recipe {
	r, _ := content.ReadRecipe(d.file, d.text)
	if r.Keys == nil && line < len(d.lines) {
		end := d.lines[line] + len(d.line(line))
		r, _ = content.ReadRecipe(d.file, slices.Concat(d.text[:d.lines[line]], d.text[end:]))
	}
	if r.Keys == nil {
		return nil
	}
	return r
}

// recipeOf gives the recipe that a document holds, as it could last be read. Its
// places may be others by now.
func (s *Server) recipeOf(d *document, line int) *content.Recipe {
	if r := readNow(d, line); r != nil {
		return r
	}
	for _, last := range s.site.Site().Recipes {
		if last.File == d.file {
			return last
		}
	}
	return &content.Recipe{}
}

// recipe gives the recipe of a slug; nil if there is none.
func (s *Server) recipe(slug string) *content.Recipe {
	for _, r := range s.site.Site().Recipes {
		if r.Slug == slug {
			return r
		}
	}
	return nil
}
