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
	{before: `<p>`, after: `</p>`, write: inText.write},
	{before: `<p title="`, after: `"></p>`, write: inText.write},
	{before: `<title>`, after: `</title>`, write: inText.write},
	{before: `<a href="`, after: `"></a>`, write: writeAddress},
	{before: `<a href="/?q=`, after: `"></a>`, write: inQuery.write},
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
func (c *composer) escaped(p *parse.PipeNode, s *scope) filler {
	at := places[functions(p)]
	if at == nil {
		give("%s", p)
	}
	v := c.command(p.Cmds[0], s)
	switch {
	case at.trusts(v.t):
		return func(s *sheet, dot reflect.Value) bool {
			x, ok := v.of(s, dot)
			if ok {
				s.text = append(s.text, x.String()...)
			}
			return ok
		}
	case at.write != nil && v.t.Kind() == reflect.String && isPlain(v.t):
		return func(s *sheet, dot reflect.Value) bool {
			x, ok := v.of(s, dot)
			return ok && (at.write(s, x.String()) || at.let(s, x))
		}
	case at.write != nil && v.t.Kind() == reflect.Int && isPlain(v.t):
		return func(s *sheet, dot reflect.Value) bool {
			x, ok := v.of(s, dot)
			if ok {
				s.text = strconv.AppendInt(s.text, x.Int(), 10)
			}
			return ok
		}
	}
	return func(s *sheet, dot reflect.Value) bool {
		x, ok := v.of(s, dot)
		return ok && at.let(s, x)
	}
}

// trusts tells whether values of a type stand here as they are.
func (p *place) trusts(t reflect.Type) bool {
	return t == reflect.TypeFor[template.HTML]() && p.before == "<p>" || t == reflect.TypeFor[template.JS]() && p.write == nil && strings.HasPrefix(p.before, "<script")
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
