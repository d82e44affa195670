package press

import "strings"

// An alphabet tells what is written for each byte.
type alphabet struct {
	marked [256]byte   // not zero if they are not written as they are
	marks  [256]string // what is written for those; nothing if they need thought
}

// marks are what html/template writes for the characters that mean something.
var marks = map[byte]string{0: "\uFFFD", '"': "&#34;", '&': "&amp;", '\'': "&#39;", '+': "&#43;", '<': "&lt;", '>': "&gt;"}

var (
	inText    = newAlphabet(func(byte) bool { return true }, marks)
	inAddress = newAlphabet(isOneOf("/-._~#?="), map[byte]string{'&': marks['&'], '+': marks['+'], '(': "%28", ')': "%29"})
	inQuery   = newAlphabet(isOneOf("-._~"), nil)
)

func newAlphabet(plain func(byte) bool, marks map[byte]string) *alphabet {
	a := new(alphabet)
	for c := range 256 {
		if a.marks[c] = marks[byte(c)]; a.marks[c] != "" || !plain(byte(c)) {
			a.marked[c] = 1
		}
	}
	return a
}

// isOneOf tells whether a byte is a letter, a digit, or one of others.
func isOneOf(others string) func(byte) bool {
	return func(c byte) bool { return isAlphanumeric(c) || strings.IndexByte(others, c) >= 0 }
}

func isAlphanumeric(c byte) bool {
	return 'a' <= c|0x20 && c|0x20 <= 'z' || '0' <= c && c <= '9'
}

// write writes a text, or nothing of it if a byte needs thought.
func (a *alphabet) write(s *sheet, text string) bool {
	begun := len(s.text)
	for {
		n := a.plain(text)
		s.text = append(s.text, text[:n]...)
		if n == len(text) {
			return true
		}
		mark := a.marks[text[n]]
		if mark == "" {
			s.text = s.text[:begun]
			return false
		}
		s.text = append(s.text, mark...)
		text = text[n+1:]
	}
}

// plain counts the bytes before the first that is marked.
func (a *alphabet) plain(text string) int {
	n, m := 0, &a.marked
	for ; n+8 <= len(text); n += 8 {
		t := text[n : n+8]
		if m[t[0]]|m[t[1]]|m[t[2]]|m[t[3]]|m[t[4]]|m[t[5]]|m[t[6]]|m[t[7]] != 0 {
			break
		}
	}
	for ; n < len(text); n++ {
		if m[text[n]] != 0 {
			break
		}
	}
	return n
}

// writeAddress writes an address of the web, or of the site.
func writeAddress(s *sheet, text string) bool {
	begun := len(s.text)
	for _, scheme := range []string{"https:", "http:"} {
		if rest, ok := strings.CutPrefix(text, scheme); ok {
			s.text = append(s.text, scheme...)
			text = rest
			break
		}
	}
	if !inAddress.write(s, text) {
		s.text = s.text[:begun]
		return false
	}
	return true
}

// writeSources writes a srcset that stays as it is: addresses of plain letters,
// each with its width behind it.
func writeSources(s *sheet, text string) bool {
	begun, told := false, false // the address of a source; what is told of it
	for i := range len(text) {
		switch c := text[i]; {
		case c == ',':
			begun, told = false, false
		case c == ' ':
			told = begun
		case isAlphanumeric(c), !told && strings.IndexByte("/-._~", c) >= 0:
			begun = true
		default:
			return false
		}
	}
	s.text = append(s.text, text...)
	return true
}
