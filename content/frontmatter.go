package content

import (
	"bytes"
	"errors"
	"fmt"
	"strings"

	"github.com/adrg/frontmatter"
	"go.yaml.in/yaml/v4"
)

// maxMatter is the longest front matter that is read: 128 kB, forty times a
// long one.
const maxMatter = 128 << 10

// A matter is where the front matter of a file stands, and what it says.
type matter struct {
	pos      Pos        // of the --- that opens it
	first    int        // the number of its first line, after the ---
	root     *yaml.Node // nil if it could not be read
	complete bool       // false if it ends before its time: what is missing may stand below
	closing  int        // the number of the line with the --- that ends it
	body     int        // the offset at which the Markdown begins
}

// fences is the one form of front matter that is read. The library compares
// trimmed lines, and does not tell what it skipped before them.
var fences = frontmatter.NewFormat("---", "---", func(block []byte, v any) error {
	*v.(*[]byte) = block
	return nil
})

// cut cuts the front matter off and reads it as far as it can be read.
func (s *source) cut() matter {
	var block []byte
	opening := s.firstLine()
	head := s.head(opening)
	rest, err := frontmatter.MustParse(bytes.NewReader(head), &block, fences)
	m := matter{pos: s.begin(opening), first: opening + 1}
	switch {
	case errors.Is(err, frontmatter.ErrNotFound) && string(bytes.TrimSpace(s.line(opening))) == "---":
		s.unclosed(m)
		m.body = len(s.data)
		return m
	case err != nil:
		s.fault(Pos{s.file, 1, 1}, FrontMatter, "there is no front matter", "begin the file with a line ---, then keys and values, then another line ---")
		return m
	}
	m.body = len(head) - len(rest)
	m.closing = m.first + bytes.Count(block, []byte("\n"))
	s.indented(opening, "the --- that opens the front matter is indented")
	m.complete = !s.indented(m.closing, "the front matter ends at this ---, although it is indented")
	m.root = s.yaml(block, m)
	return m
}

// firstLine gives the number of the first line that is not blank, or of the
// last one.
func (s *source) firstLine() int {
	for n := range s.lines {
		if len(bytes.TrimSpace(s.line(n+1))) > 0 {
			return n + 1
		}
	}
	return len(s.lines)
}

// head gives the text down to the line that can end the front matter: the
// library copies whatever it is given.
func (s *source) head(opening int) []byte {
	for n := opening + 1; n < len(s.lines); n++ {
		if string(bytes.TrimSpace(s.line(n))) == "---" {
			return s.data[:s.lines[n]]
		}
	}
	return s.data
}

func (s *source) begin(line int) Pos { return Pos{File: s.file, Line: line, Col: 1} }

// indented reports a --- that does not stand at the start of its line. Inside
// a text of several lines the cook did not mean it to end the front matter, and
// yet it does.
func (s *source) indented(line int, message string) bool {
	col := len(s.line(line)) - len(bytes.TrimLeft(s.line(line), " \t")) + 1
	if col == 1 {
		return false
	}
	s.fault(Pos{s.file, line, col}, FrontMatter, message, "move it to the start of the line; inside a text write other than three hyphens")
	return true
}

// unclosed reports a front matter without end, and points to the line that
// may have been meant as its end.
func (s *source) unclosed(m matter) {
	f := Fault{Pos: m.pos, Kind: FrontMatter, Message: "the front matter is never closed", Advice: "write a line --- under its last key"}
	for n := m.first; n <= len(s.lines); n++ {
		if nearFence(string(bytes.TrimSpace(s.line(n)))) {
			f.Also, f.AlsoSay = s.begin(n), "this line does not close it"
			break
		}
	}
	s.add(f)
}

func nearFence(line string) bool {
	return line == "..." || len(line) > 1 && strings.Trim(line, "-\u2013\u2014") == ""
}

// yaml reads the block as one document. It gives nil if that cannot be done,
// which it reports.
func (s *source) yaml(block []byte, m matter) *yaml.Node {
	if len(block) > maxMatter {
		s.fault(m.pos, FrontMatter, fmt.Sprintf("the front matter holds %d kB, and no more than %d kB are read", len(block)>>10, maxMatter>>10), "move text into the body")
		return nil
	}
	block = s.oneDocument(block, m.first)
	if n := usual(block); n != nil {
		return n
	}
	var doc yaml.Node
	switch err := yaml.Load(block, &doc, yamlOptions); {
	case err == nil:
		return doc.Content[0]
	case strings.Contains(err.Error(), "no documents"): // blank, or nothing but comments
		return &yaml.Node{Kind: yaml.MappingNode, Line: 1, Column: 1}
	default:
		s.yamlFault(err, m)
		return nil
	}
}

// oneDocument reports the marks by which YAML ends a document or begins a
// second one, and gives what stands before them.
func (s *source) oneDocument(block []byte, first int) []byte {
	begin := s.lines[first-1]
	for n := first; n <= len(s.lines) && s.lines[n-1] < begin+len(block); n++ {
		if line := s.line(n); marksDocument(line) {
			s.fault(s.begin(n), FrontMatter, fmt.Sprintf("a line here cannot begin with %s", line[:3]),
				"take it away; what ends front matter is a line of three hyphens and nothing else")
			return block[:s.lines[n-1]-begin]
		}
	}
	return block
}

func marksDocument(line []byte) bool {
	return (bytes.HasPrefix(line, []byte("...")) || bytes.HasPrefix(line, []byte("---"))) &&
		(len(line) == 3 || line[3] == ' ' || line[3] == '\t')
}
