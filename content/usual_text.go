package content

import (
	"strings"
	"time"

	"go.yaml.in/yaml/v4"
)

// text reads a text in quotation marks or without, in brackets or not.
func (r *usualReader) text(inside bool) *yaml.Node {
	n := r.node(yaml.ScalarNode, "!!str")
	switch r.peek() {
	case '"':
		n.Style = yaml.DoubleQuotedStyle
		n.Value = r.quoted('"')
	case '\'':
		n.Style = yaml.SingleQuotedStyle
		n.Value = r.quoted('\'')
	default:
		n.Value = r.plain(inside)
		n.Tag = usualTag(n.Value)
		if n.Tag == "" {
			r.refuse()
		}
	}
	return n
}

// quoted reads a text in quotation marks that holds neither a backslash nor a
// mark that is written twice.
func (r *usualReader) quoted(mark byte) string {
	r.at++
	rest := r.line[r.at:]
	i := strings.IndexByte(rest, mark)
	if i < 0 || mark == '"' && strings.IndexByte(rest[:i], '\\') >= 0 {
		r.refuse()
		return ""
	}
	r.at += i + 1
	return rest[:i]
}

// plain reads a text without quotation marks.
func (r *usualReader) plain(inside bool) string {
	i := r.at
	for i < len(r.line) && (!stops[r.line[i]] || !r.stops(i, inside)) {
		i++
	}
	text := strings.TrimRight(r.line[r.at:i], " ")
	r.at += len(text)
	return text
}

// stops are the signs before which a plain text may end.
var stops = [256]bool{':': true, '#': true, ',': true, '[': true, ']': true, '{': true, '}': true}

// stops reports whether a plain text ends before such a sign.
func (r *usualReader) stops(i int, inside bool) bool {
	switch r.line[i] {
	case ':':
		return r.blank(i+1) || inside && strings.IndexByte(",]}", r.line[i+1]) >= 0
	case '#':
		return i > 0 && r.line[i-1] == ' '
	}
	return inside
}

// usualTag gives the tag that the library finds for a plain text; nothing if
// that takes more to tell, or if the text begins with a sign that means more.
func usualTag(s string) string {
	switch {
	case s == "" || strings.IndexByte("-?:,[]{}#&*!|>'\"%@`.+~<=", s[0]) >= 0:
		return ""
	case isDigit(s[0]):
		return numberTag(s)
	case s == "true" || s == "false":
		return "!!bool"
	case len(s) > len("false"):
		return "!!str"
	case strings.EqualFold(s, "true") || strings.EqualFold(s, "false") || strings.EqualFold(s, "null"):
		return ""
	}
	return "!!str"
}

// numberSigns are all that YAML's numbers are written with: 0x1F, 1_000, 1e-3.
const numberSigns = "0123456789abcdefABCDEFxXoOpP_.+-"

// numberTag is usualTag for what begins with a digit. Only what begins with
// four digits and a hyphen can be a time, and no number holds a sign that is
// not of numberSigns.
func numberTag(s string) string {
	whole := leadingDigits(s)
	rest := s[len(whole):]
	leads := len(whole) > 1 && s[0] == '0'
	switch {
	case len(whole) == 4 && strings.HasPrefix(rest, "-"):
		if _, err := time.Parse(time.DateOnly, s); err == nil {
			return "!!timestamp"
		}
	case !madeOf(rest, numberSigns) || rest != "" && madeOf(rest, "-0123456789"):
		return "!!str"
	case leads || len(s) > 15:
	case rest == "":
		return "!!int"
	case rest[0] == '.' && leadingDigits(rest[1:]) == rest[1:]:
		return "!!float"
	}
	return ""
}

func madeOf(s, signs string) bool {
	for i := range len(s) {
		if strings.IndexByte(signs, s[i]) < 0 {
			return false
		}
	}
	return true
}
