package content

import (
	"bytes"
	"errors"
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/yuin/goldmark/ast"
)

// What a body may hold. Whoever reads Markdown goes over every mark of a
// paragraph again for each other one that may end there, and steps down once
// for each list or quotation within another: far beyond what anybody writes,
// that takes hours, or all memory there is.
const (
	maxMarks    = 1000    // of one kind in a paragraph
	maxHeadings = 1000    // of a body
	maxNesting  = 40      // lists, quotations and emphasis in one another
	maxLinked   = 1 << 20 // bytes that the addresses and titles of all links have
)

// A tangle is what is found of a body before it is read.
type tangle struct {
	marks    [utf8.RuneSelf]int // since the last empty line
	headings int
}

// untangled reports the first place at which a body holds more than may be
// read, and every character reference to what has no place in a text. It is
// false if the body must not be read.
func (s *source) untangled(begin int) bool {
	var t tangle
	for at := begin; at < len(s.data); {
		end := at + bytes.IndexByte(s.data[at:], '\n')
		if end < at {
			end = len(s.data)
		}
		if col, message, advice := t.line(s.data[at:end]); message != "" {
			s.fault(s.at(at+col), BadText, message, advice)
			return false
		}
		at = end + 1
	}
	s.references(begin)
	return true
}

// line looks at one line. message is empty if nothing is wrong with it.
func (t *tangle) line(line []byte) (col int, message, advice string) {
	rest := bytes.TrimLeft(line, " \t")
	if len(rest) == 0 {
		t.marks = [utf8.RuneSelf]int{}
		return 0, "", ""
	}
	if rest[0] == '#' || rest[0] == '=' || rest[0] == '-' && len(bytes.Trim(rest, "- \t\r")) == 0 {
		if t.headings++; t.headings > maxHeadings {
			return len(line) - len(rest), fmt.Sprintf("the text has more than %d headings and rules", maxHeadings), "split it into several files"
		}
	}
	if deep := nesting(line); deep > maxNesting {
		return 0, fmt.Sprintf("more than %d lists and quotations begin in one another on this line", maxNesting), "take some of the marks at its beginning away"
	}
	for i, b := range line {
		if !opens[b] {
			continue
		}
		if t.marks[b]++; t.marks[b] > maxMarks {
			return i, fmt.Sprintf("this paragraph holds more than %d times %c", maxMarks, b), "part it with empty lines"
		}
	}
	return 0, "", ""
}

// opens are the marks that another one may end.
var opens = [256]bool{'[': true, ']': true, '(': true, '*': true, '_': true, '~': true, '`': true, '<': true, '"': true, '\'': true, '!': true}

// nesting counts the lists and quotations that begin at the start of a line.
func nesting(line []byte) (deep int) {
	for i := 0; i < len(line); {
		switch b := line[i]; {
		case b == ' ' || b == '\t':
			i++
		case b == '>':
			deep++
			i++
		case b == '-' || b == '+' || b == '*':
			if i+1 < len(line) && line[i+1] != ' ' && line[i+1] != '\t' {
				return deep
			}
			deep++
			i++
		case b >= '0' && b <= '9':
			end := i
			for end < len(line) && line[end] >= '0' && line[end] <= '9' {
				end++
			}
			if end == len(line) || line[end] != '.' && line[end] != ')' {
				return deep
			}
			deep++
			i = end + 1
		default:
			return deep
		}
	}
	return deep
}

// references reports the first character reference of each line that stands for
// what no text holds, such as &#27; for the character that terminals obey.
func (s *source) references(begin int) {
	last := 0
	for at := begin; ; {
		i := bytes.Index(s.data[at:], []byte("&#"))
		if i < 0 {
			return
		}
		at += i
		end := at + 2
		for end < len(s.data) && isAlphanumeric(s.data[end]) {
			end++
		}
		if bad := unfit(s.data[at:end]); bad != "" {
			if p := s.at(at); p.Line != last {
				s.fault(p, BadText, fmt.Sprintf("%s stands for %s", clip(string(s.data[at:end])), bad), "take it away")
				last = p.Line
			}
		}
		at = end
	}
}

func isAlphanumeric(b byte) bool {
	return b >= '0' && b <= '9' || b >= 'a' && b <= 'z' || b >= 'A' && b <= 'Z'
}

// unfit tells what a character reference stands for that no text holds; nothing
// if it may stand, or is none. CommonMark 0.31, 2.5.
func unfit(reference []byte) string {
	digits, base := string(reference[2:]), 10
	if hex := strings.TrimLeft(digits, "xX"); hex != digits {
		digits, base = hex, 16
	}
	n, err := strconv.ParseUint(digits, base, 32)
	r := rune(min(n, utf8.MaxRune+1))
	switch {
	case errors.Is(err, strconv.ErrSyntax):
		return ""
	case err != nil || r == 0 || !utf8.ValidRune(r):
		return "no character"
	case isControl(r):
		return "a control character"
	case isHidden(r):
		return "a hidden character"
	}
	return ""
}

// shallow reports whether what was read of a body is no deeper than may be,
// and its links no longer. It tells where it is not.
func (s *source) shallow(b Body) bool {
	deep, linked, ok := 0, 0, true
	at := func(n ast.Node) Pos {
		for n != nil && n.Type() == ast.TypeInline {
			n = n.Parent()
		}
		return s.at(len(s.data) - len(b.Source) + min(max(n.Pos(), 0), len(b.Source)))
	}
	ast.Walk(b.Doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			deep--
			return ast.WalkContinue, nil
		}
		deep++
		linked += linkLength(n)
		switch {
		case deep > 3*maxNesting: // a list has items, and an item paragraphs
			s.fault(at(n), BadText, fmt.Sprintf("lists, quotations or emphasis stand more than %d deep in one another", maxNesting), "take some of their marks or their indentation away")
		case linked > maxLinked:
			s.fault(at(n), BadText, fmt.Sprintf("the addresses of all links together hold more than %d kB", maxLinked>>10), "link less often, or to shorter addresses")
		default:
			return ast.WalkContinue, nil
		}
		ok = false
		return ast.WalkStop, nil
	})
	return ok
}

func linkLength(n ast.Node) int {
	switch n := n.(type) {
	case *ast.Link:
		return len(n.Destination) + len(n.Title)
	case *ast.Image:
		return len(n.Destination) + len(n.Title)
	}
	return 0
}
