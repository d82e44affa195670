package content

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// isSpace reports whether r is a space, or a character without width that
// pasted text brings along.
func isSpace(r rune) bool {
	if r < utf8.RuneSelf {
		return r == ' ' || '\t' <= r && r <= '\r'
	}
	return unicode.IsSpace(r) || r == '\u200b' || r == '\u2060' || r == '\ufeff'
}

// isVisible reports whether a byte is a letter or a sign of ASCII.
func isVisible(c byte) bool { return c > ' ' && c < utf8.RuneSelf }

// skipSpace cuts the spaces at the start of s.
func skipSpace(s string) string {
	if s == "" || isVisible(s[0]) { // most often
		return s
	}
	return skipSpaces(s)
}

func skipSpaces(s string) string {
	for s != "" {
		if s[0] < utf8.RuneSelf {
			if s[0] != ' ' && s[0] != '\t' && s[0] != '\n' && s[0] != '\r' {
				return s
			}
			s = s[1:]
			continue
		}
		r, size := utf8.DecodeRuneInString(s)
		if !isSpace(r) {
			return s
		}
		s = s[size:]
	}
	return s
}

// trimSpace cuts the spaces at both ends of s.
func trimSpace(s string) string {
	if s != "" && !isVisible(s[len(s)-1]) {
		s = strings.TrimRightFunc(s, isSpace)
	}
	return skipSpace(s)
}

// singleSpaced gives s with plain single spaces, and none around it.
func singleSpaced(s string) string {
	s = trimSpace(s)
	if isSingleSpaced(s) {
		return s
	}
	return strings.Join(strings.FieldsFunc(s, isSpace), " ")
}

func isSingleSpaced(s string) bool {
	for i := 0; i < len(s); {
		switch c := s[i]; {
		case isVisible(c):
			i++
		case c == ' ' && i+1 < len(s) && s[i+1] != ' ':
			i++
		default:
			r, size := utf8.DecodeRuneInString(s[i:])
			if isSpace(r) {
				return false
			}
			i += size
		}
	}
	return true
}

// endsInSpace reports whether s ends with a space.
func endsInSpace(s string) bool {
	r, _ := utf8.DecodeLastRuneInString(s)
	return isSpace(r)
}

// lastByte gives the last byte of s, 0 if it is empty.
func lastByte(s string) byte {
	if s == "" {
		return 0
	}
	return s[len(s)-1]
}

// cutWord cuts a word in any case from the start of s, and the spaces behind
// it. It must be given in lower case, and is found only as a whole word; a
// full stop may follow it.
func cutWord(s, word string) (rest string, ok bool) {
	if len(s) < len(word) || !strings.EqualFold(s[:len(word)], word) {
		return s, false
	}
	rest = s[len(word):]
	if startsWord(rest) {
		return s, false
	}
	return skipSpace(strings.TrimPrefix(rest, ".")), true
}

// cutWords cuts several words with any spaces between them.
func cutWords(s, words string) (rest string, ok bool) {
	rest = s
	for word := range strings.FieldsSeq(words) {
		if rest, ok = cutWord(rest, word); !ok {
			return s, false
		}
	}
	return rest, ok
}

// cutAnyWord cuts the first of the phrases that s starts with.
func cutAnyWord(s string, phrases []string) (phrase, rest string) {
	if s == "" {
		return "", s
	}
	first := lower(s[0])
	for _, p := range phrases {
		if p[0] != first || len(s) < len(p) {
			continue
		}
		if rest, ok := cutWords(s, p); ok {
			return p, rest
		}
	}
	return "", s
}

// startsWord reports whether s goes on with a letter, a digit, or a hyphen
// and a letter, so that a word that ends here would be part of a longer one.
func startsWord(s string) bool {
	if s == "" {
		return false
	}
	r, size := utf8.DecodeRuneInString(s)
	if isHyphen(r) && size < len(s) {
		r, _ = utf8.DecodeRuneInString(s[size:])
		return unicode.IsLetter(r)
	}
	return unicode.IsLetter(r) || unicode.IsDigit(r)
}

// isHyphen reports whether r joins words.
func isHyphen(r rune) bool { return r == '-' || r == '‐' || r == '\u2011' }

// leadingLetters gives the letters at the start of s.
func leadingLetters(s string) string {
	for i, r := range s {
		if r < utf8.RuneSelf && !isLetter(byte(r)) || r >= utf8.RuneSelf && !unicode.IsLetter(r) {
			return s[:i]
		}
	}
	return s
}

func isLetter(b byte) bool { return 'a' <= lower(b) && lower(b) <= 'z' }

func lower(b byte) byte {
	if 'A' <= b && b <= 'Z' {
		return b + 'a' - 'A'
	}
	return b
}

// appendLower appends a word in lower case, or nothing if it is too long to be
// one that is looked up.
func appendLower(b []byte, word string) []byte {
	if len(word) > cap(b) {
		return b
	}
	for i := range len(word) {
		b = append(b, lower(word[i]))
	}
	return b
}

// clip shortens a text that a message repeats.
func clip(s string) string {
	const most = 40
	n := 0
	for i := range s {
		if n++; n > most {
			return s[:i] + "…"
		}
	}
	return s
}
