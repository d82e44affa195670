package content

import (
	"bytes"
	"strings"

	"go.yaml.in/yaml/v4"
)

// colonEnd gives the offset behind the colon of a key.
func (p *Patch) colonEnd(key *yaml.Node) int {
	at := p.offset(key)
	switch p.data[at] {
	case '"', '\'':
		at = quotedEnd(p.data, at)
	default:
		at += len(key.Value)
	}
	rest := bytes.TrimLeft(p.data[at:], " \t")
	if len(rest) == 0 || rest[0] != ':' {
		p.fault(p.place(key), BadValue, "there is no colon after this key", "write a colon and a space after it")
		return at
	}
	return len(p.data) - len(rest) + 1
}

// inlineEnd gives the offset behind a value that has no lines of its own: a
// text, or what stands in brackets. Its last line comes before the line after;
// inside reports that it stands in brackets itself.
func (p *Patch) inlineEnd(n *yaml.Node, after int, inside bool) int {
	from := p.offset(n)
	switch c := p.data[from]; {
	case c == '"' || c == '\'':
		return quotedEnd(p.data, from)
	case c == '{' || c == '[':
		return bracketEnd(p.data, from)
	case bytes.HasPrefix(p.data[from:], []byte(n.Value)) && inside:
		return from + len(n.Value)
	case inside:
		return plainEnd(p.data, from)
	}
	last := max(after-1, p.lineOf(n))
	for last > p.lineOf(n) && isRemark(p.line(last)) {
		last--
	}
	begin := max(from, p.lines[last-1])
	return begin + len(withoutComment(p.data[begin:p.lineEnd(last)]))
}

// isRemark reports whether a line holds nothing but a comment, or nothing.
func isRemark(line []byte) bool {
	text := bytes.TrimLeft(line, " \t")
	return len(text) == 0 || text[0] == '#'
}

// quotedEnd gives the offset behind a text in quotation marks that begins at
// from.
func quotedEnd(data []byte, from int) int {
	mark := data[from]
	for i := from + 1; i < len(data); i++ {
		switch {
		case mark == '"' && data[i] == '\\':
			i++
		case data[i] != mark:
		case mark == '\'' && i+1 < len(data) && data[i+1] == mark:
			i++
		default:
			return i + 1
		}
	}
	return len(data)
}

// bracketEnd gives the offset behind the bracket that closes the one at from.
func bracketEnd(data []byte, from int) int {
	depth := 0
	begins := true // a value can begin here, so a quotation mark is one
	for i := from; i < len(data); i++ {
		switch c := data[i]; c {
		case '{', '[':
			depth++
			begins = true
		case '}', ']':
			if depth--; depth == 0 {
				return i + 1
			}
			begins = false
		case ',', ':':
			begins = true
		case ' ', '\t', '\r', '\n':
		case '#':
			if isBlank(data[i-1]) {
				i += max(bytes.IndexByte(data[i:], '\n'), 0)
			}
		case '"', '\'':
			if begins {
				i = quotedEnd(data, i) - 1
			}
			begins = false
		default:
			begins = false
		}
	}
	return len(data)
}

// plainEnd gives the offset behind a text without quotation marks that begins
// at from and stands in brackets.
func plainEnd(data []byte, from int) int {
	end := bytes.IndexAny(data[from:], ",]}")
	if end < 0 {
		return len(data)
	}
	return from + len(withoutComment(data[from:from+end]))
}

// withoutComment cuts a comment from the end of a plain text, and the spaces
// before it.
func withoutComment(text []byte) []byte {
	for i := 1; i < len(text); i++ {
		if text[i] == '#' && isBlank(text[i-1]) {
			text = text[:i]
		}
	}
	return bytes.TrimRight(text, " \t\r\n")
}

func isBlank(c byte) bool { return c == ' ' || c == '\t' || c == '\r' || c == '\n' }

// comments gives the comments between two offsets as lines of their own: one
// that ended a line comes to stand at a column, from 0.
func (p *Patch) comments(from, to, column int) string {
	var b strings.Builder
	for _, line := range bytes.Split(p.data[from:to], []byte("\n")) {
		line = bytes.TrimRight(line, "\r")
		i := commentIn(line)
		if i < 0 {
			continue
		}
		if len(bytes.TrimLeft(line[:i], " \t")) == 0 {
			b.Write(line)
		} else {
			b.WriteString(strings.Repeat(" ", column))
			b.Write(line[i:])
		}
		b.WriteString(p.style.end)
	}
	return b.String()
}

// commentIn gives the index of the comment in a line, or -1.
func commentIn(line []byte) int {
	begins := true
	for i := 0; i < len(line); i++ {
		switch c := line[i]; {
		case c == '#' && (i == 0 || isBlank(line[i-1])):
			return i
		case isBlank(c):
		case (c == '"' || c == '\'') && begins:
			i = quotedEnd(line, i) - 1
			begins = false
		default:
			begins = strings.IndexByte("{[,:-", c) >= 0
		}
	}
	return -1
}
