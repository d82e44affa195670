package press

import (
	"reflect"
	"text/template/parse"
)

// A value is found on each page, and is of the same type on all of them.
type value struct {
	t  reflect.Type
	of func(s *sheet, dot reflect.Value) (v reflect.Value, ok bool)
}

// value sets a pipeline of a single command.
func (c *composer) value(p *parse.PipeNode, s *scope) value {
	if len(p.Cmds) != 1 {
		give("%s", p)
	}
	return c.command(p.Cmds[0], s)
}

// command sets an operand, its length, or one of its elements.
func (c *composer) command(n *parse.CommandNode, s *scope) value {
	switch name := n.Args[0].String(); {
	case len(n.Args) == 1:
		return c.operand(n.Args[0], s)
	case len(n.Args) == 2 && name == "len":
		return length(c.operand(n.Args[1], s))
	case len(n.Args) == 3 && name == "index":
		return element(c.operand(n.Args[1], s), c.operand(n.Args[2], s))
	}
	give("%s", n)
	return value{}
}

func (c *composer) operand(n parse.Node, s *scope) value {
	switch n := n.(type) {
	case *parse.DotNode:
		return dot(s)
	case *parse.FieldNode:
		return fields(dot(s), n.Ident)
	case *parse.VariableNode:
		return fields(named(s, n.Ident[0]), n.Ident[1:])
	case *parse.ChainNode:
		return fields(c.operand(n.Node, s), n.Field)
	case *parse.PipeNode:
		return c.value(n, s)
	case *parse.StringNode:
		return constant(n.Text)
	case *parse.NumberNode:
		if n.IsInt {
			return constant(int(n.Int64))
		}
	}
	give("%s", n)
	return value{}
}

func constant(x any) value {
	v := reflect.ValueOf(x)
	return value{v.Type(), func(*sheet, reflect.Value) (reflect.Value, bool) { return v, true }}
}

func length(v value) value {
	if k := v.t.Kind(); k != reflect.Slice && k != reflect.String {
		give("len of %s", v.t)
	}
	return value{reflect.TypeFor[int](), func(s *sheet, dot reflect.Value) (reflect.Value, bool) {
		x, ok := v.of(s, dot)
		if !ok {
			return x, false
		}
		return reflect.ValueOf(x.Len()), true
	}}
}

func element(v, at value) value {
	if v.t.Kind() != reflect.Slice || at.t.Kind() != reflect.Int {
		give("index of %s by %s", v.t, at.t)
	}
	return value{v.t.Elem(), func(s *sheet, dot reflect.Value) (reflect.Value, bool) {
		x, ok := v.of(s, dot)
		i, also := at.of(s, dot)
		if !ok || !also || i.Int() < 0 || i.Int() >= int64(x.Len()) {
			return reflect.Value{}, false
		}
		return x.Index(int(i.Int())), true
	}}
}

func dot(s *scope) value {
	if s.dot == nil {
		give("no value here")
	}
	return value{s.dot, func(_ *sheet, dot reflect.Value) (reflect.Value, bool) { return dot, true }}
}

func named(s *scope, name string) value {
	i := s.slot(name)
	return value{s.vars[i].t, func(s *sheet, dot reflect.Value) (reflect.Value, bool) { return s.vars[s.first+i], true }}
}

func fields(v value, names []string) value {
	for _, n := range names {
		v = field(v, n)
	}
	return v
}

// field is a field of a struct, or of what a pointer leads to. Methods are left
// to html/template, and so is a pointer that leads nowhere.
func field(v value, name string) value {
	t, of := v.t, v.of
	behind := t.Kind() == reflect.Pointer
	if behind {
		t = t.Elem()
	}
	if t.Kind() != reflect.Struct {
		give("%s.%s", t, name)
	}
	f, ok := t.FieldByName(name)
	if _, method := reflect.PointerTo(t).MethodByName(name); !ok || !f.IsExported() || method || indirect(t, f.Index) {
		give("%s.%s", t, name)
	}
	return value{f.Type, func(s *sheet, dot reflect.Value) (reflect.Value, bool) {
		x, ok := of(s, dot)
		if behind {
			if !ok || x.IsNil() {
				return reflect.Value{}, false
			}
			x = x.Elem()
		}
		for _, i := range f.Index {
			x = x.Field(i)
		}
		return x, ok
	}}
}

// indirect tells whether a field is reached through a pointer that is embedded.
func indirect(t reflect.Type, index []int) bool {
	for _, i := range index[:len(index)-1] {
		if t = t.Field(i).Type; t.Kind() == reflect.Pointer {
			return true
		}
	}
	return false
}
