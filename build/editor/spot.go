package editor

import (
	"bytes"
	"regexp"
	"strings"
)

// A spot is a word of the front matter, or of site.yaml, and what it stands in.
// It is found by indentation and brackets alone, so that it is found also while
// the file is not YAML yet.
type spot struct {
	line     int
	from, to int      // the bytes of the line that the word takes; equal where none is written yet
	word     string   // as it is written
	path     []string // the keys that it is below, the outermost first
	asKey    bool     // it stands where a key may; a plain entry of a list does so too
	beside   []string // with asKey: the other keys of its map
}

// An indented key is one that lines below it may belong to.
type indented struct {
	key    string
	indent int
}

var (
	keyAhead = regexp.MustCompile(`^["']?([A-Za-z_][A-Za-z0-9_-]*)["']?[ \t]*:(?:[ \t]|$)`)
	inFlow   = regexp.MustCompile(`["']?([A-Za-z_][A-Za-z0-9_-]*)["']?[ \t]*:$`)
)

// front gives the lines of the front matter, from one to before another; of
// site.yaml all.
func front(p *paper, file string) (from, to int) {
	if strings.HasSuffix(file, ".yaml") {
		return 0, len(p.lines)
	}
	if !isFence(p.line(0)) {
		return 0, 0
	}
	for i := 1; i < len(p.lines); i++ {
		if isFence(p.line(i)) {
			return 1, i
		}
	}
	return 1, len(p.lines)
}

func isFence(line []byte) bool { return string(bytes.TrimRight(line, " \t")) == "---" }

// spotAt finds the spot at a byte of a line; ok is false outside of the front
// matter, and in comments.
func spotAt(p *paper, file string, line, col int) (s spot, ok bool) {
	first, last := front(p, file)
	text := string(p.line(line))
	if line < first || line >= last || col > commentIn(text) {
		return spot{}, false
	}
	s = spot{line: line, from: col, to: col}
	for s.from > 0 && isWordByte(text[s.from-1]) {
		s.from--
	}
	for s.to < len(text) && isWordByte(text[s.to]) {
		s.to++
	}
	s.word = text[s.from:s.to]
	var open []indented
	for n := first; n < line; n++ {
		open = under(string(p.line(n)), open)
	}
	for _, k := range parents(open, text[:s.from]) {
		s.path = append(s.path, k.key)
	}
	s.onLine(text)
	if s.asKey && s.beside == nil {
		s.beside = besides(p, first, last, s)
	}
	return s, true
}

func isWordByte(c byte) bool { return !strings.ContainsRune(" \t,[]{}\"'#:", rune(c)) }

// commentIn gives where the comment of a line begins, or its end.
func commentIn(text string) int {
	for i := range len(text) {
		if text[i] == '#' && (strings.TrimSpace(text[:i]) == "" || text[i-1] == ' ') {
			return i
		}
	}
	return len(text)
}

// under takes a line into the keys that are open behind it.
func under(text string, open []indented) []indented {
	rest, indent := undented(text)
	if rest == "" || rest[0] == '#' {
		return open
	}
	open = parents(open, text)
	if m := keyAhead.FindStringSubmatch(rest); m != nil {
		open = append(open, indented{m[1], indent})
	}
	return open
}

// parents gives those of the open keys that a line is below. The dashes of a list
// may stand as far left as its key does.
func parents(open []indented, text string) []indented {
	outer := len(text) - len(strings.TrimLeft(text, " "))
	dash := strings.HasPrefix(text[outer:], "-")
	n := len(open)
	for n > 0 && !(open[n-1].indent < outer || dash && open[n-1].indent == outer) {
		n--
	}
	return open[:n:n]
}

// undented gives a line without the blanks and the dashes that it begins with,
// and how many characters they take.
func undented(text string) (rest string, indent int) {
	rest = strings.TrimLeft(text, " ")
	for strings.HasPrefix(rest, "- ") || rest == "-" {
		rest = strings.TrimLeft(rest[1:], " ")
	}
	return rest, len(text) - len(rest)
}

// onLine takes in what stands before the word on its own line.
func (s *spot) onLine(text string) {
	before, _ := undented(text[:s.from])
	m := keyAhead.FindStringSubmatch(before)
	if m != nil {
		s.path = append(s.path, m[1])
		before = before[strings.IndexByte(before, ':')+1:]
	}
	frames := flow(before)
	for _, f := range frames {
		if f.key != "" {
			s.path = append(s.path, f.key)
		}
	}
	switch n := len(frames); {
	case n == 0:
		s.asKey = m == nil && strings.TrimSpace(before) == ""
	case frames[n-1].isMap:
		if s.asKey = frames[n-1].key == ""; s.asKey {
			s.beside = append(frames[n-1].keys, keysBehind(text[s.to:])...)
		}
	}
}

// A frame is a pair of brackets that is open.
type frame struct {
	isMap bool
	key   string   // whose value is being written
	keys  []string // that the map has
}

// flow gives the brackets that are open at the end of a text, outermost first.
func flow(text string) (frames []frame) {
	var quote byte
	begin := 0
	for i := range len(text) {
		c := text[i]
		switch n := len(frames); {
		case quote != 0:
			if c == quote {
				quote = 0
			}
		case c == '"' || c == '\'':
			quote = c
		case c == '{' || c == '[':
			frames = append(frames, frame{isMap: c == '{'})
			begin = i + 1
		case n == 0:
		case c == '}' || c == ']':
			frames = frames[:n-1]
		case c == ',':
			frames[n-1].key = ""
			begin = i + 1
		case c == ':' && frames[n-1].isMap && frames[n-1].key == "":
			if m := inFlow.FindStringSubmatch(text[begin : i+1]); m != nil {
				frames[n-1].key = m[1]
				frames[n-1].keys = append(frames[n-1].keys, m[1])
			}
		}
	}
	return frames
}

// keysBehind gives the keys of a map in brackets that follow a place within it.
func keysBehind(text string) []string {
	depth := 0
	for i := range len(text) {
		switch text[i] {
		case '{', '[':
			depth++
		case '}', ']':
			depth--
		}
		if depth < 0 {
			text = text[:i]
			break
		}
	}
	frames := flow("{" + text)
	if len(frames) == 0 {
		return nil
	}
	return frames[0].keys
}

// besides gives the other keys of the map that a key stands in, one to a line.
func besides(p *paper, first, last int, s spot) (keys []string) {
	_, indent := undented(string(p.line(s.line))[:s.from])
	take := func(n int) bool {
		text := string(p.line(n))
		rest, at := undented(text)
		if rest == "" || rest[0] == '#' {
			return true
		}
		if m := keyAhead.FindStringSubmatch(rest); m != nil && at == indent && n != s.line {
			keys = append(keys, m[1])
		}
		return at >= indent
	}
	dashed := func(n int) bool { // begins another entry of a list that holds the map
		text := strings.TrimLeft(string(p.line(n)), " ")
		return strings.HasPrefix(text, "-") && len(p.line(n))-len(text) < indent
	}
	for n := s.line; n >= first && take(n) && !dashed(n); n-- {
	}
	for n := s.line + 1; n < last && !dashed(n) && take(n); n++ {
	}
	return keys
}
