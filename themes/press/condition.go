package press

import (
	"cmp"
	"reflect"
	"text/template/parse"
)

// A test is what a template decides by.
type test func(s *sheet, dot reflect.Value) (yes, ok bool)

func (c *composer) test(p *parse.PipeNode, s *scope) test {
	if len(p.Cmds) != 1 {
		give("%s", p)
	}
	args := p.Cmds[0].Args
	id, ok := args[0].(*parse.IdentifierNode)
	switch {
	case !ok && len(args) == 1:
		return c.holds(args[0], s)
	case ok && len(args) > 1 && (id.Ident == "or" || id.Ident == "and"):
		return c.several(id.Ident == "or", args[1:], s)
	case ok && len(args) == 2 && id.Ident == "not":
		return c.not(args[1], s)
	case ok && len(args) == 3 && orders[id.Ident] != nil:
		return c.compare(orders[id.Ident], args[1], args[2], s)
	}
	give("%s", p)
	return nil
}

// holds is true of what html/template takes for true.
func (c *composer) holds(n parse.Node, s *scope) test {
	if p, ok := n.(*parse.PipeNode); ok {
		return c.test(p, s)
	}
	v := c.operand(n, s)
	holds := truth(v.t)
	return func(s *sheet, dot reflect.Value) (bool, bool) {
		x, ok := v.of(s, dot)
		return ok && holds(x), ok
	}
}

func (c *composer) not(n parse.Node, s *scope) test {
	inner := c.holds(n, s)
	return func(s *sheet, dot reflect.Value) (bool, bool) {
		yes, ok := inner(s, dot)
		return !yes, ok
	}
}

// several asks one after the other, until the answer is found.
func (c *composer) several(or bool, nodes []parse.Node, s *scope) test {
	var tests []test
	for _, n := range nodes {
		tests = append(tests, c.holds(n, s))
	}
	return func(s *sheet, dot reflect.Value) (bool, bool) {
		for _, t := range tests {
			if yes, ok := t(s, dot); !ok || yes == or {
				return yes, ok
			}
		}
		return !or, true
	}
}

// orders are the comparisons that can be set, by what they ask of the order of
// two values: -1, 0 or 1.
var orders = map[string]func(int) bool{
	"eq": func(o int) bool { return o == 0 },
	"ne": func(o int) bool { return o != 0 },
	"lt": func(o int) bool { return o < 0 },
	"le": func(o int) bool { return o <= 0 },
	"gt": func(o int) bool { return o > 0 },
	"ge": func(o int) bool { return o >= 0 },
}

func (c *composer) compare(asks func(int) bool, a, b parse.Node, s *scope) test {
	x, y := c.operand(a, s), c.operand(b, s)
	kind := x.t.Kind()
	if kind != y.t.Kind() || kind != reflect.String && kind != reflect.Int {
		give("compare %s and %s", a, b)
	}
	return func(s *sheet, dot reflect.Value) (bool, bool) {
		v, ok := x.of(s, dot)
		w, also := y.of(s, dot)
		switch {
		case !ok || !also:
			return false, false
		case kind == reflect.Int:
			return asks(cmp.Compare(v.Int(), w.Int())), true
		}
		return asks(cmp.Compare(v.String(), w.String())), true
	}
}

// truth is what html/template takes for true of a type: all but zero and
// nothing.
func truth(t reflect.Type) func(reflect.Value) bool {
	switch t.Kind() {
	case reflect.Bool:
		return reflect.Value.Bool
	case reflect.String, reflect.Slice:
		return func(v reflect.Value) bool { return v.Len() > 0 }
	case reflect.Int:
		return func(v reflect.Value) bool { return v.Int() != 0 }
	case reflect.Pointer:
		return func(v reflect.Value) bool { return !v.IsNil() }
	case reflect.Struct:
		return func(reflect.Value) bool { return true }
	}
	give("whether a %s holds", t)
	return nil
}
