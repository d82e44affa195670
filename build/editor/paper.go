package editor

import (
	"bytes"
	"fmt"
	"sort"
	"strings"
	"unicode/utf8"
)

// A paper is the text of a document, by lines.
type paper struct {
	text  []byte
	lines []int // where each begins
	wide  bool  // positions count UTF-16 code units, not bytes
}

func newPaper(text []byte, wide bool) *paper {
	p := &paper{text: text, lines: []int{0}, wide: wide}
	for i, c := range text {
		if c == '\n' || c == '\r' && (i+1 == len(text) || text[i+1] != '\n') {
			p.lines = append(p.lines, i+1)
		}
	}
	return p
}

// line gives a line without its end; nil past the last.
func (p *paper) line(n int) []byte {
	if n < 0 || n >= len(p.lines) {
		return nil
	}
	end := len(p.text)
	if n+1 < len(p.lines) {
		end = p.lines[n+1]
	}
	return bytes.TrimRight(p.text[p.lines[n]:end], "\r\n")
}

// offset gives the byte at a position; the end of the line, or of the text, for
// one that lies past it.
func (p *paper) offset(at position) int {
	if at.Line < 0 {
		return 0
	}
	if at.Line >= len(p.lines) {
		return len(p.text)
	}
	return p.lines[at.Line] + p.column(p.line(at.Line), at.Character)
}

// column gives the byte of a line at which a character stands.
func (p *paper) column(line []byte, character int) int {
	if !p.wide {
		return min(max(character, 0), len(line))
	}
	i := 0
	for units := 0; i < len(line) && units < character; {
		r, size := utf8.DecodeRune(line[i:])
		units += unitsOf(r)
		if units > character {
			break // within a pair of code units
		}
		i += size
	}
	return i
}

// unitsOf is how many UTF-16 code units a character takes.
func unitsOf(r rune) int {
	if r > 0xffff {
		return 2
	}
	return 1
}

// at gives the position of a byte.
func (p *paper) at(offset int) position {
	offset = min(max(offset, 0), len(p.text))
	n := sort.SearchInts(p.lines, offset+1) - 1
	return p.place(n, offset-p.lines[n])
}

// place gives the position of a byte of a line.
func (p *paper) place(line, col int) position {
	s := p.line(line)
	col = min(max(col, 0), len(s))
	if !p.wide {
		return position{line, col}
	}
	units := 0
	for i := 0; i < col; {
		r, size := utf8.DecodeRune(s[i:])
		units += unitsOf(r)
		i += size
	}
	return position{line, units}
}

// span gives the range of some bytes of a line.
func (p *paper) span(line, from, to int) textRange {
	return textRange{p.place(line, from), p.place(line, to)}
}

// change gives the paper as it is after some changes, one after the other.
func (p *paper) change(changes []contentChange) (*paper, error) {
	for _, c := range changes {
		if c.Range == nil {
			p = newPaper([]byte(c.Text), p.wide)
			continue
		}
		from, to := p.offset(c.Range.Start), p.offset(c.Range.End)
		if from > to {
			return p, fmt.Errorf("a change ends at line %d before it begins at line %d", c.Range.End.Line, c.Range.Start.Line)
		}
		var b strings.Builder
		b.Grow(len(p.text) - (to - from) + len(c.Text))
		b.Write(p.text[:from])
		b.WriteString(c.Text)
		b.Write(p.text[to:])
		p = newPaper([]byte(b.String()), p.wide)
	}
	return p, nil
}
