package validate

import (
	"bytes"
	"unicode"
	"unicode/utf8"
)

// word reads a word.
func (z *tokenizer) word(i int) int {
	start, text := i, z.text
	p, n := spellShort(text, i)
	if i += n; n == 8 {
		for i < len(text) && isLetterByte(text[i]) {
			i++
		}
		p = spellSmall(text[start:i])
	}
	if i < len(text) && (text[i] == '\'' || text[i] >= utf8.RuneSelf) {
		return z.knottyWord(start)
	}
	id := z.lex.look(p)
	if id == 0 {
		z.capitals = z.capitals || hasCapital(text[start:i])
	}
	z.add(id, start, i).simple = true
	return i
}

// hasCapital reports whether a capital of ASCII stands in a word.
func hasCapital(word string) bool {
	for i := range len(word) {
		if c := word[i]; 'A' <= c && c <= 'Z' {
			return true
		}
	}
	return false
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
	z.capitals = z.capitals || hasCapital(z.text[start:i])
	if cut >= 0 && !bytes.HasSuffix(b, []byte("n't")) {
		b = b[:cut]
	}
	z.add(z.lex.number(string(b)), start, i)
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
