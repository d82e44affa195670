package validate

import (
	"bytes"
	"unicode"
	"unicode/utf8"
)

// word reads a word.
func (z *tokenizer) word(i int) int {
	start, hash := i, uint32(fnvBasis)
	for i < len(z.text) && isLetterByte(z.text[i]) {
		hash = hashed(hash, z.text[i]|0x20)
		i++
	}
	if i < len(z.text) && (z.text[i] == '\'' || z.text[i] >= utf8.RuneSelf) {
		return z.knottyWord(start)
	}
	z.add(token{id: z.lex.look(z.low[start:i], hash), start: int32(start), end: int32(i), simple: true})
	return i
}

// knottyWord reads a word with apostrophes or accents, without what hangs on
// it: of "jar's" it makes jar, of "we'll" we, but "don't" stays whole.
func (z *tokenizer) knottyWord(i int) int {
	var buf [24]byte
	b := buf[:0]
	start, cut := i, -1
	for i < len(z.text) {
		switch c := z.text[i]; {
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
			if r, size := utf8.DecodeRuneInString(z.text[i:]); unicode.IsLetter(r) {
				b = append(b, unaccented(r))
				i += size
				continue
			}
		}
		break
	}
	if cut >= 0 && !bytes.HasSuffix(b, []byte("n't")) {
		b = b[:cut]
	}
	z.add(token{id: z.lex.number(string(b)), start: int32(start), end: int32(i)})
	return i
}

// unaccented gives the plain letter of one with an accent, or ? for others.
func unaccented(r rune) byte {
	if base := plainLetter(r); base != ' ' {
		return byte(base)
	}
	return '?'
}

// isApostrophe reports whether an apostrophe with letters behind it begins b.
func isApostrophe(b string) bool {
	return len(b) > 1 && b[0] == '\'' && isLetterByte(b[1])
}
