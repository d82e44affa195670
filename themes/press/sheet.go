package press

import (
	"reflect"
	"sync"
)

// A form is a template, set for one type of value.
type form struct {
	steps []step
	vars  int // how many variables it has, "$" the first of them
}

// A step prints a piece of a page. It is false if html/template has to do it,
// from the beginning.
type step func(*sheet) bool

// A sheet is a page while it is printed.
type sheet struct {
	text  []byte
	room  int
	dot   reflect.Value
	vars  []reflect.Value // of all forms that are being printed
	first int             // where those of the innermost form begin
}

var sheets = sync.Pool{New: func() any { return new(sheet) }}

func (s *sheet) begin(room int) {
	*s = sheet{text: s.text[:0], vars: s.vars[:0], room: room}
}

// print prints a form with a value of its type.
func (s *sheet) print(f *form, v reflect.Value) bool {
	dot, first, end := s.dot, s.first, len(s.vars)
	s.dot, s.first = v, end
	for range f.vars {
		s.vars = append(s.vars, reflect.Value{})
	}
	s.vars[s.first] = v
	ok := s.do(f.steps)
	clear(s.vars[end:])
	s.dot, s.first, s.vars = dot, first, s.vars[:end]
	return ok
}

func (s *sheet) do(steps []step) bool {
	for _, step := range steps {
		if !step(s) {
			return false
		}
	}
	return len(s.text) <= s.room
}

// with does steps while the dot is another value.
func (s *sheet) with(v reflect.Value, steps []step) bool {
	dot := s.dot
	s.dot = v
	ok := s.do(steps)
	s.dot = dot
	return ok
}
