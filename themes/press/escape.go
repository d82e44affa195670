package press

import (
	"bytes"
	"html/template"
	"reflect"
	"strconv"
	"strings"
	"text/template/parse"
)

// A place is where on a page html/template puts a value: what it puts there it
// makes safe with the same functions as in this small page.
type place struct {
	page          *template.Template
	before, after string
	write         func(*sheet, string) bool // what needs no thought; nil if all does. False if it was not written.
}

// places are those that can be set, by the names of the functions.
var places = byFunctions([]*place{
	{before: `<p>`, after: `</p>`, write: writeText},
	{before: `<p title="`, after: `"></p>`, write: writeText},
	{before: `<title>`, after: `</title>`, write: writeText},
	{before: `<a href="`, after: `"></a>`, write: writeAddress},
	{before: `<a href="/?q=`, after: `"></a>`, write: writeQuery},
	{before: `<img srcset="`, after: `">`, write: writeSources},
	{before: `<script type="application/ld+json">`, after: `</script>`},
})

func byFunctions(all []*place) map[string]*place {
	found := make(map[string]*place)
	for _, p := range all {
		p.page = template.Must(template.New("").Parse(p.before + "{{.}}" + p.after))
		if err := p.page.Execute(new(bytes.Buffer), ""); err != nil {
			panic(err) // the pages stand above
		}
		for _, n := range p.page.Tree.Root.Nodes {
			if a, ok := n.(*parse.ActionNode); ok {
				found[functions(a.Pipe)] = p
			}
		}
	}
	return found
}

// functions are those that a value goes through, after it is found.
func functions(p *parse.PipeNode) string {
	var names []string
	for _, c := range p.Cmds[1:] {
		names = append(names, c.String())
	}
	return strings.Join(names, " ")
}

// escaped prints a value as it is safe where it stands.
func (c *composer) escaped(p *parse.PipeNode, s *scope) step {
	at := places[functions(p)]
	if at == nil {
		give("%s", p)
	}
	v := c.command(p.Cmds[0], s)
	write := at.writer(v.t)
	return func(s *sheet) bool {
		x, ok := v.of(s)
		return ok && write(s, x)
	}
}

func (p *place) writer(t reflect.Type) func(*sheet, reflect.Value) bool {
	switch {
	case t == reflect.TypeFor[template.HTML]() && p.before == "<p>", t == reflect.TypeFor[template.JS]() && p.write == nil && strings.HasPrefix(p.before, "<script"):
		return func(s *sheet, v reflect.Value) bool {
			s.text = append(s.text, v.String()...)
			return true
		}
	case p.write != nil && t.Kind() == reflect.String && isPlain(t):
		return func(s *sheet, v reflect.Value) bool {
			return p.write(s, v.String()) || p.let(s, v)
		}
	case p.write != nil && t.Kind() == reflect.Int && isPlain(t):
		return func(s *sheet, v reflect.Value) bool {
			s.text = strconv.AppendInt(s.text, v.Int(), 10)
			return true
		}
	}
	return p.let
}

// isPlain tells whether values of a type are printed as what they are: neither
// trusted by html/template, nor by a method of theirs.
func isPlain(t reflect.Type) bool {
	return t.NumMethod() == 0 && reflect.PointerTo(t).NumMethod() == 0 && t.PkgPath() != reflect.TypeFor[template.HTML]().PkgPath()
}

// let lets html/template print the value on the small page, and takes it from
// there.
func (p *place) let(s *sheet, v reflect.Value) bool {
	if !v.CanInterface() {
		return false
	}
	var b bytes.Buffer
	if err := p.page.Execute(&b, v.Interface()); err != nil {
		return false
	}
	text, ok := strings.CutPrefix(b.String(), p.before)
	text, also := strings.CutSuffix(text, p.after)
	s.text = append(s.text, text...)
	return ok && also
}

// marks are what html/template writes for the characters that mean something.
var marks = [256]string{0: "\uFFFD", '"': "&#34;", '&': "&amp;", '\'': "&#39;", '+': "&#43;", '<': "&lt;", '>': "&gt;"}

func writeText(s *sheet, text string) bool {
	from := 0
	for i := range len(text) {
		if m := marks[text[i]]; m != "" {
			s.text = append(append(s.text, text[from:i]...), m...)
			from = i + 1
		}
	}
	s.text = append(s.text, text[from:]...)
	return true
}

// writeAddress writes an address that stays as it is.
func writeAddress(s *sheet, text string) bool {
	rest := strings.TrimPrefix(text, "https:")
	for i := range len(rest) {
		if c := rest[i]; !isAlphanumeric(c) && strings.IndexByte("/-._~#?=", c) < 0 {
			return false
		}
	}
	s.text = append(s.text, text...)
	return true
}

func isAlphanumeric(c byte) bool {
	return 'a' <= c|0x20 && c|0x20 <= 'z' || '0' <= c && c <= '9'
}

// writeQuery writes a part of a query that stays as it is.
func writeQuery(s *sheet, text string) bool {
	for i := range len(text) {
		if c := text[i]; !isAlphanumeric(c) && strings.IndexByte("-._~", c) < 0 {
			return false
		}
	}
	s.text = append(s.text, text...)
	return true
}

// writeSources writes a srcset that stays as it is: addresses of plain letters,
// each with its width behind it.
func writeSources(s *sheet, text string) bool {
	begun, told := false, false // the address of a source; what is told of it
	for i := range len(text) {
		switch c := text[i]; {
		case c == ',':
			begun, told = false, false
		case c == ' ':
			told = begun
		case isAlphanumeric(c), !told && strings.IndexByte("/-._~", c) >= 0:
			begun = true
		default:
			return false
		}
	}
	s.text = append(s.text, text...)
	return true
}
