package validate

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// word reads a word with its apostrophes, and without what hangs on them: of
// "jar's" it makes jar, of "we'll" we, but "don't" stays whole.
func (z *tokenizer) word(i int) int {
	var buf [24]byte
	b := buf[:0]
	start, cut := i, -1
	for i < len(z.text) {
		c := z.text[i]
		switch {
		case isLetterByte(c):
			b = append(b, c|0x20)
			i++
			continue
		case isApostrophe(z.text[i:]) && i > start:
			cut = len(b)
			b = append(b, '\'')
			i++
			continue
		case c >= utf8.RuneSelf:
			if r, size := utf8.DecodeRune(z.text[i:]); unicode.IsLetter(r) {
				if base := plainLetter(r); base != ' ' {
					b = append(b, byte(base))
				} else {
					b = append(b, '?')
				}
				i += size
				continue
			}
		}
		break
	}
	if cut >= 0 && !strings.HasSuffix(string(b), "n't") {
		b = b[:cut]
	}
	z.add(token{id: z.lex.ids[string(b)], start: int32(start), end: int32(i)})
	return i
}

// isApostrophe reports whether an apostrophe with letters behind it begins b.
func isApostrophe(b []byte) bool {
	return len(b) > 1 && b[0] == '\'' && isLetterByte(b[1])
}
