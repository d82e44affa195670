package press

import (
	"bytes"
	"fmt"
	"reflect"
	"slices"
	"strings"
	"text/template/parse"
)

// A composer sets templates for the types of value that one page gives them.
type composer struct {
	trees map[string]*parse.Tree
	forms map[use]*form // nil is one that is being set
}

// A use is a template with a type of value. The type is nil if there is none.
type use struct {
	name string
	dot  reflect.Type
}

// A notSet is what the press leaves to html/template.
type notSet struct{ why string }

func (n notSet) Error() string { return n.why }

func give(format string, args ...any) {
	panic(notSet{fmt.Sprintf(format, args...)})
}

// compose gives the form of the whole page, or says what in it cannot be set.
func (p *Press) compose(t reflect.Type) (f *form, err error) {
	c := composer{p.trees(), make(map[use]*form)}
	defer func() {
		if caught, ok := recover().(notSet); ok {
			f, err = nil, caught
		} else if r := recover(); r != nil {
			panic(r)
		}
	}()
	return c.form(use{p.from.Name(), t}), nil
}

func (c *composer) form(u use) *form {
	if f, ok := c.forms[u]; ok {
		if f == nil {
			give("%q stands in itself", u.name)
		}
		return f
	}
	tree := c.tree(u.name)
	c.forms[u] = nil // as long as it is not set
	f := new(form)
	s := scope{dot: u.dot, vars: []variable{{"$", u.dot}}, most: &f.vars}
	f.steps = c.list(tree.Root, &s)
	c.forms[u] = f
	return f
}

// derived is what html/template puts after the name of a template that it makes
// safe for a place of another sort, such as an attribute. It keeps the result to
// itself, but what has no values stays as it is.
const derived = "$htmltemplate_"

func (c *composer) tree(name string) *parse.Tree {
	name, _, other := strings.Cut(name, derived)
	tree := c.trees[name]
	if tree == nil || tree.Root == nil || other && !isBare(tree.Root) {
		give("no template %q", name)
	}
	return tree
}

// isBare tells whether there is nothing but text, with no markup.
func isBare(l *parse.ListNode) bool {
	return !slices.ContainsFunc(l.Nodes, func(n parse.Node) bool {
		text, ok := n.(*parse.TextNode)
		return !ok || bytes.ContainsAny(text.Text, "<>\"'")
	})
}

// A scope is what can be named at a place in a template.
type scope struct {
	dot  reflect.Type
	vars []variable
	most *int // variables at once, in the whole form, as far as they are named
}

type variable struct {
	name string
	t    reflect.Type
}

// declare gives a variable its place.
func (s *scope) declare(name string, t reflect.Type) (slot int) {
	s.vars = append(s.vars, variable{name, t})
	*s.most = max(*s.most, len(s.vars))
	return len(s.vars) - 1
}

// slot is the place of a variable.
func (s *scope) slot(name string) int {
	for i := len(s.vars) - 1; i >= 0; i-- {
		if v := s.vars[i]; v.name == name && v.t != nil {
			*s.most = max(*s.most, i+1)
			return i
		}
	}
	give("no %s here", name)
	return 0
}

// within is a scope whose new variables end with it.
func (s *scope) within(dot reflect.Type) *scope {
	inner := *s
	inner.dot = dot
	inner.vars = inner.vars[:len(inner.vars):len(inner.vars)]
	return &inner
}

func (c *composer) list(l *parse.ListNode, s *scope) []step {
	if l == nil {
		return nil
	}
	var steps []step
	var text string
	for _, n := range l.Nodes {
		if t, ok := n.(*parse.TextNode); ok {
			text += string(t.Text)
			continue
		}
		steps = append(steps, step{text, c.filler(n, s)})
		text = ""
	}
	return append(steps, step{text: text})
}

func (c *composer) filler(n parse.Node, s *scope) filler {
	switch n := n.(type) {
	case *parse.ActionNode:
		return c.action(n.Pipe, s)
	case *parse.IfNode:
		return c.ifNode(n, s)
	case *parse.WithNode:
		return c.with(n, s)
	case *parse.RangeNode:
		return c.each(n, s)
	case *parse.TemplateNode:
		return c.template(n, s)
	}
	give("%s", n)
	return nil
}

func (c *composer) action(p *parse.PipeNode, s *scope) filler {
	if len(p.Decl) == 0 {
		return c.escaped(p, s)
	}
	v := c.value(p, s)
	var slot int
	if p.IsAssign {
		slot = s.slot(p.Decl[0].Ident[0])
		if s.vars[slot].t != v.t {
			give("%s", p)
		}
	} else {
		slot = s.declare(name(p, 0), v.t)
	}
	return func(s *sheet, dot reflect.Value) bool {
		x, ok := v.of(s, dot)
		s.vars[s.first+slot] = x
		return ok
	}
}

// name is what a pipeline declares.
func name(p *parse.PipeNode, i int) string {
	if p.IsAssign {
		give("%s", p)
	}
	return p.Decl[i].Ident[0]
}

func (c *composer) ifNode(n *parse.IfNode, s *scope) filler {
	if len(n.Pipe.Decl) > 0 {
		give("%s", n.Pipe)
	}
	test := c.test(n.Pipe, s)
	then, other := c.list(n.List, s.within(s.dot)), c.list(n.ElseList, s.within(s.dot))
	return func(s *sheet, dot reflect.Value) bool {
		yes, ok := test(s, dot)
		switch {
		case !ok:
			return false
		case yes:
			return s.do(then, dot)
		}
		return s.do(other, dot)
	}
}

func (c *composer) with(n *parse.WithNode, s *scope) filler {
	v := c.value(n.Pipe, s)
	inner, slot := s.within(v.t), 0
	if len(n.Pipe.Decl) > 0 {
		slot = inner.declare(name(n.Pipe, 0), v.t)
	}
	then, other := c.list(n.List, inner), c.list(n.ElseList, s.within(s.dot))
	holds := truth(v.t)
	return func(s *sheet, dot reflect.Value) bool {
		x, ok := v.of(s, dot)
		switch {
		case !ok:
			return false
		case !holds(x):
			return s.do(other, dot)
		}
		if slot > 0 {
			s.vars[s.first+slot] = x
		}
		return s.do(then, x)
	}
}

func (c *composer) each(n *parse.RangeNode, s *scope) filler {
	v := c.value(n.Pipe, s)
	if v.t.Kind() != reflect.Slice {
		give("range over %s", v.t)
	}
	inner := s.within(v.t.Elem())
	var index, elem int
	switch len(n.Pipe.Decl) {
	case 1:
		elem = inner.declare(name(n.Pipe, 0), v.t.Elem())
	case 2:
		index = inner.declare(name(n.Pipe, 0), reflect.TypeFor[int]())
		elem = inner.declare(name(n.Pipe, 1), v.t.Elem())
	}
	then, other := c.list(n.List, inner), c.list(n.ElseList, s.within(s.dot))
	return func(s *sheet, dot reflect.Value) bool {
		x, ok := v.of(s, dot)
		if !ok {
			return false
		}
		if x.Len() == 0 {
			return s.do(other, dot)
		}
		for i := range x.Len() {
			e := x.Index(i)
			if index > 0 {
				s.vars[s.first+index] = reflect.ValueOf(i)
			}
			if elem > 0 {
				s.vars[s.first+elem] = e
			}
			if !s.do(then, e) {
				return false
			}
		}
		return true
	}
}

func (c *composer) template(n *parse.TemplateNode, s *scope) filler {
	if n.Pipe == nil {
		f := c.form(use{n.Name, nil})
		return func(s *sheet, dot reflect.Value) bool { return s.print(f, reflect.Value{}) }
	}
	v := c.value(n.Pipe, s)
	f := c.form(use{n.Name, v.t})
	return func(s *sheet, dot reflect.Value) bool {
		x, ok := v.of(s, dot)
		return ok && s.print(f, x)
	}
}
