package content

import (
	"errors"
	"fmt"
	"strings"

	"go.yaml.in/yaml/v4"
)

// maxText is the longest text of a value in bytes. What is longer belongs into
// the body.
const maxText = 4000

// scalar gives what may stand without keys of its own: a text, a number, a
// date. ok is false if v is none, or not fit to be read, which is reported.
func (d *decoder) scalar(v value) (s string, ok bool) {
	if v.Kind != yaml.ScalarNode {
		d.wrong(v)
		return "", false
	}
	if !d.untagged(v) {
		return "", false
	}
	if len(v.Value) > maxText {
		d.fault(d.place(v.Node), BadValue, fmt.Sprintf("this text takes %d bytes, and no more than %d are read", len(v.Value), maxText), "move it into the body")
		return "", false
	}
	return v.Value, true
}

// text reads a text of one line. Where it was written over several lines they
// are joined.
func (d *decoder) text(v value) Field[string] {
	s, ok := d.scalar(v)
	if !ok {
		return Field[string]{}
	}
	p := d.place(v.Node)
	if v.Style&yaml.DoubleQuotedStyle != 0 && strings.ContainsFunc(s, isUnseen) {
		d.fault(p, BadText, "the text holds a character that is not seen", "take away what stands for it after a backslash")
		return Field[string]{}
	}
	s = strings.TrimSpace(s)
	if strings.IndexByte(s, '\n') >= 0 || strings.IndexByte(s, '\t') >= 0 {
		s = strings.Join(strings.Fields(s), " ")
	}
	return Field[string]{s, p}
}

// isUnseen reports whether r is a character that no text of a value holds. The
// source is free of them, but double quotation marks make them of a backslash
// and letters.
func isUnseen(r rune) bool { return isControl(r) && r != '\n' || isHidden(r) }

// as reads a value by the function parse, whose error is a misreading.
func as[T any](d *decoder, v value, parse func(string) (T, error)) Field[T] {
	f := d.text(v)
	if !f.Set() {
		return Field[T]{}
	}
	got, err := parse(f.V)
	if err != nil {
		d.bad(f.Pos, err)
		return Field[T]{}
	}
	return Field[T]{got, f.Pos}
}

// bad reports a value that could not be read.
func (d *decoder) bad(p Pos, err error) {
	m, ok := errors.AsType[*misreading](err)
	if !ok {
		m = &misreading{wrong: err.Error()}
	}
	d.fault(p, BadValue, m.wrong, m.advice)
}

// amiss makes a misreading of what is wrong with s.
func amiss(s, wrong, advice string) error {
	return &misreading{fmt.Sprintf("%q %s", clip(s), wrong), advice}
}

// word reads one of the words that the key knows.
func word[T ~string](d *decoder, v value) Field[T] {
	f := d.text(v)
	if !f.Set() {
		return Field[T]{}
	}
	for _, w := range v.key.Words {
		if w == f.V {
			return Field[T]{T(f.V), f.Pos}
		}
	}
	advice := "write one of " + strings.Join(v.key.Words, ", ")
	if near := nearest(f.V, v.key.Words); near != "" {
		advice = "did you mean " + near + "?"
	}
	d.fault(f.Pos, BadValue, fmt.Sprintf("%s cannot be %q", v.key.Name, clip(f.V)), advice)
	return Field[T]{}
}

// truth reads true or false. YAML would take yes, on and y for a text, and older
// readers of YAML for true.
func (d *decoder) truth(v value) Field[bool] {
	s, ok := d.scalar(v)
	if !ok {
		return Field[bool]{}
	}
	if v.Style != 0 || s != "true" && s != "false" {
		d.wrongScalar(v, "write true or false")
		return Field[bool]{}
	}
	return Field[bool]{s == "true", d.place(v.Node)}
}

// wrongScalar reports a text or a number that is not of the sort that is wanted.
func (d *decoder) wrongScalar(v value, advice string) {
	d.fault(d.place(v.Node), WrongType, fmt.Sprintf("%s wants %s, not %q", v.name(), v.wants(), clip(v.Value)), advice)
}
