package validate

import (
	"strings"
	"unicode/utf8"
)

// stop reads what may be the end of a sentence, with the quotation marks and
// brackets that close behind it. A question inside a sentence, as in "May I?" a
// reader asked, ends nothing.
func (z *tokenizer) stop(i int) int {
	mark, next := z.text[i], i+1
	for next < len(z.text) && strings.IndexByte(".?!", z.text[next]) >= 0 {
		if z.text[next] == '?' {
			mark = '?'
		}
		next++
	}
	z.joined = false
	after := z.closing(next)
	if mark == '.' && (after < len(z.text) && z.text[after] != ' ' || z.abbreviates(after)) {
		return next // 1.5, a file name, approx.
	}
	z.after(mark)
	if z.quoted && after > next {
		z.quoted = false
	}
	if mark == '.' || !z.goesOnSmall(after) {
		z.sentence(mark)
	}
	return after
}

// closing gives the end of the quotation marks and brackets that close at i.
func (z *tokenizer) closing(i int) int {
	for i < len(z.text) {
		r, size := utf8.DecodeRuneInString(z.text[i:])
		if !strings.ContainsRune("\"')]”’", r) {
			break
		}
		i += size
	}
	return i
}

// goesOnSmall reports whether the next word begins with a small letter.
func (z *tokenizer) goesOnSmall(i int) bool {
	for i < len(z.text) && z.text[i] == ' ' {
		i++
	}
	return i < len(z.text) && 'a' <= z.text[i] && z.text[i] <= 'z'
}

// abbreviates reports whether the full stop is that of an abbreviation: the
// word before it is one, and the text goes on in small letters or with a digit.
func (z *tokenizer) abbreviates(i int) bool {
	n := len(z.tokens)
	if n == z.first {
		return false
	}
	t := z.tokens[n-1]
	if t.end-t.start == 1 && 'a' <= z.text[t.start] && z.text[t.start] <= 'z' {
		return !t.joined || z.goesOnSmall(i) // e.g., i.e.
	}
	for i < len(z.text) && z.text[i] == ' ' {
		i++
	}
	if i == len(z.text) || !z.lex.is(t.id, famAbbreviation) {
		return false
	}
	c := z.text[i]
	return 'a' <= c && c <= 'z' || c == '(' || c == ','
}

// sentence ends the sentence.
func (z *tokenizer) sentence(mark byte) {
	if len(z.tokens) > z.first {
		z.ends = append(z.ends, sentence{first: int32(z.first), last: int32(len(z.tokens)), end: mark})
		z.first = len(z.tokens)
	}
	z.depth = 0
}
