package press

import (
	"reflect"
	"sync"
)

// A form is a template, set for one type of value.
type form struct {
	steps []step
	vars  int // how many variables it has, "$" the first of them; none if it names none
}

// A step prints a piece of a page: text that is always the same, and then what
// comes of a value, if anything does.
type step struct {
	text  string
	value filler
}

// A filler prints what comes of a dot. It is false if html/template has to do
// the page, from the beginning.
type filler func(s *sheet, dot reflect.Value) bool

// A sheet is a page while it is printed.
type sheet struct {
	text  []byte
	room  int
	vars  []reflect.Value // of all forms that are being printed
	first int             // where those of the innermost form begin
}

var sheets = sync.Pool{New: func() any { return new(sheet) }}

func (s *sheet) begin(room int) {
	*s = sheet{text: s.text[:0], vars: s.vars[:0], room: room}
}

// print prints a form with a value of its type.
func (s *sheet) print(f *form, dot reflect.Value) bool {
	if f.vars == 0 {
		return s.do(f.steps, dot)
	}
	first, end := s.first, len(s.vars)
	s.first = end
	s.vars = append(s.vars, dot)
	for range f.vars - 1 {
		s.vars = append(s.vars, reflect.Value{})
	}
	ok := s.do(f.steps, dot)
	clear(s.vars[end:])
	s.first, s.vars = first, s.vars[:end]
	return ok
}

func (s *sheet) do(steps []step, dot reflect.Value) bool {
	for i := range steps {
		s.text = append(s.text, steps[i].text...)
		if value := steps[i].value; value != nil && !value(s, dot) {
			return false
		}
	}
	return len(s.text) <= s.room
}
