// Package press prints pages from templates of html/template many times faster
// than that package does, with the same bytes.
//
// A template that has been made safe for its page by html/template is set once
// for each type of value that it is given: fields are looked up then, and not
// at every page. What a press cannot set, or meets trouble with, is left to
// html/template, so that every template prints, and every error reads as usual.
package press

import (
	"errors"
	"html/template"
	"io"
	"reflect"
	"sync"
	"text/template/parse"
)

// A Press prints one kind of page. It may be used by several goroutines.
type Press struct {
	from  *template.Template
	trees func() map[string]*parse.Tree // safe ones; none if html/template refuses them
	set   sync.Map                      // of reflect.Type to *form: how values of a type are printed
	room  int
}

// New makes a press for pages of at most so many bytes. The template must not
// be changed afterwards.
func New(t *template.Template, room int) *Press {
	return &Press{from: t, room: room, trees: sync.OnceValue(func() map[string]*parse.Tree { return safe(t) })}
}

// safe has html/template make its templates safe, which it does before it
// prints the first page.
func safe(t *template.Template) map[string]*parse.Tree {
	trees := make(map[string]*parse.Tree)
	var refused *template.Error
	if errors.As(t.Execute(full{}, nil), &refused) {
		return trees
	}
	for _, t := range t.Templates() {
		trees[t.Name()] = t.Tree
	}
	return trees
}

// full is a page on which nothing has room.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("no room") }

// Print writes the page of a value. Nothing is written of a page that cannot
// be printed whole, unless it was html/template that gave up.
func (p *Press) Print(w io.Writer, page any) error {
	f := p.formFor(reflect.TypeOf(page))
	if f == nil {
		return p.print(w, page)
	}
	s := sheets.Get().(*sheet)
	defer sheets.Put(s)
	s.begin(p.room)
	if !s.print(f, reflect.ValueOf(page)) {
		return p.print(w, page)
	}
	_, err := w.Write(s.text)
	return err
}

// Sets tells whether values of this type are printed by the press itself, and
// if not, why not.
func (p *Press) Sets(page any) error {
	_, err := p.compose(reflect.TypeOf(page))
	return err
}

func (p *Press) formFor(t reflect.Type) *form {
	if f, ok := p.set.Load(t); ok {
		return f.(*form)
	}
	f, _ := p.compose(t)
	p.set.Store(t, f)
	return f
}

// print lets html/template do it.
func (p *Press) print(w io.Writer, page any) error {
	return p.from.Execute(&limited{w, p.room}, page)
}

// limited is a page with room for so many bytes.
type limited struct {
	w    io.Writer
	room int
}

func (l *limited) Write(b []byte) (int, error) {
	if l.room -= len(b); l.room < 0 {
		return 0, errors.New("the page grows beyond all measure: the theme writes something over and over")
	}
	return l.w.Write(b)
}
