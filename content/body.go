package content

import "github.com/yuin/goldmark/ast"

// A Body is the Markdown after the front matter, parsed once.
type Body struct {
	Source []byte   // the text that the nodes of Doc point into; nobody may change it
	Pos    Pos      // where it begins
	Doc    ast.Node // never nil after Read
	Method []Part   // the steps of the first ordered lists
}

// A Part is an ordered list of steps, and the heading above it.
type Part struct {
	Heading string // empty if the list has none of its own
	Pos     Pos
	List    *ast.List
	Steps   []Step
}

// A Step is one item of the method.
type Step struct {
	Pos  Pos
	Text string // plain words, without Markdown, one line
	Node ast.Node
}
