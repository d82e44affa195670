package content

import (
	"bytes"
	"cmp"
	"slices"
	"sort"
	"unicode/utf8"
)

// A source is the text of one file, where its lines begin, and the faults
// that were found in it so far. Byte offsets are offsets in data.
//
// A byte order mark is neither part of the text nor counted in a column:
// editors hide it.
type source struct {
	file   string
	data   []byte
	lines  []int // the offset at which each line begins; never empty
	cursor cursor
	faults []Fault
	blanks []Pos // keys and hyphens after which nothing was written
	lost   bool  // nothing of the text could be read
	copied bool  // data is a copy of what was given
}

// A cursor is the last letter that was looked up: the next one is most often
// further along the same line.
type cursor struct{ line, letters, offset int }

var byteOrderMark = []byte("\uFEFF")

// newSource takes the text of a file apart into lines, and reports every
// character that has no place in it. It never changes data.
func newSource(file string, data []byte) *source {
	s := &source{file: file, data: bytes.TrimPrefix(data, byteOrderMark)}
	s.clean()
	s.lines = append(make([]int, 0, bytes.Count(s.data, []byte("\n"))+1), 0)
	for at := 0; ; {
		i := bytes.IndexByte(s.data[at:], '\n')
		if i < 0 {
			return s
		}
		at += i + 1
		s.lines = append(s.lines, at)
	}
}

// at gives the place of an offset.
func (s *source) at(offset int) Pos {
	line := sort.SearchInts(s.lines, offset+1)
	return Pos{File: s.file, Line: line, Col: offset - s.lines[line-1] + 1}
}

// letter gives the place of a letter, by its line and its number in the line,
// both from 1. What lies outside the file becomes the nearest place inside.
func (s *source) letter(line, letter int) Pos {
	line = min(max(line, 1), len(s.lines))
	begin := s.lines[line-1]
	c := s.cursor
	if c.line != line || c.letters > letter {
		c = cursor{line: line, letters: 1, offset: begin}
	}
	if n := letter - c.letters; n > 0 {
		n = plainRun(s.data[c.offset:min(c.offset+n, len(s.data))]) // letters of one byte
		c.offset += n
		c.letters += n
	}
	for c.letters < letter && c.offset < len(s.data) && !s.ends(c.offset) {
		_, size := utf8.DecodeRune(s.data[c.offset:])
		c.offset += size
		c.letters++
	}
	s.cursor = c
	return Pos{File: s.file, Line: line, Col: c.offset - begin + 1}
}

// ends reports whether a line ends at offset.
func (s *source) ends(offset int) bool {
	return s.data[offset] == '\n' || s.data[offset] == '\r'
}

// line gives a line's text by its number from 1, without its end.
func (s *source) line(n int) []byte {
	end := len(s.data)
	if n < len(s.lines) {
		end = s.lines[n] - 1
	}
	return bytes.TrimSuffix(s.data[s.lines[n-1]:end], []byte("\r"))
}

// maxFaults is how many faults are told of one file. More help nobody.
const maxFaults = 500

// fault keeps a fault.
func (s *source) fault(p Pos, kind FaultKind, message, advice string) {
	s.add(Fault{Pos: p, Kind: kind, Message: message, Advice: advice})
}

func (s *source) add(f Fault) {
	if len(s.faults) < maxFaults {
		s.faults = append(s.faults, f)
	}
}

// sorted gives the faults in order of their place.
func (s *source) sorted() []Fault {
	slices.SortStableFunc(s.faults, compareFaults)
	return s.faults
}

func compareFaults(a, b Fault) int {
	return cmp.Or(
		cmp.Compare(a.Pos.File, b.Pos.File),
		cmp.Compare(a.Pos.Line, b.Pos.Line),
		cmp.Compare(a.Pos.Col, b.Pos.Col),
	)
}
