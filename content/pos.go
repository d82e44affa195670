package content

import "fmt"

// A Pos is a place in a source file. The zero Pos means that the place is not
// known, or that the value was never written.
type Pos struct {
	File string // slash-separated, relative to the site's folder: content/recipes/damson-jam.md
	Line int    // from 1; 0 if only the file is known
	Col  int    // from 1, in bytes
}

// IsZero reports whether the place is unknown.
func (p Pos) IsZero() bool { return p == Pos{} }

// String gives file:line:column, the form that editors follow.
func (p Pos) String() string {
	switch {
	case p.Line == 0:
		return p.File
	case p.Col == 0:
		return fmt.Sprintf("%s:%d", p.File, p.Line)
	}
	return fmt.Sprintf("%s:%d:%d", p.File, p.Line, p.Col)
}

// A Field is a value and the place where it was written.
type Field[T any] struct {
	V   T
	Pos Pos // zero if the key is missing
}

// Set reports whether the value was written at all.
func (f Field[T]) Set() bool { return f.Pos.Line > 0 }
