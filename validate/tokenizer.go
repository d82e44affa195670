package validate

import (
	"unicode"
	"unicode/utf8"
)

// A tokenizer cuts a passage into tokens, and its tokens into sentences.
type tokenizer struct {
	lex    *lexicon
	text   string
	tokens []token
	first  int // the token at which the sentence begins
	ends   []sentence

	quoted, joined bool
	capitals       bool // stand in words that the lexicon does not know
	depth          int
}

// run cuts the whole text.
func (z *tokenizer) run() {
	for i := 0; i < len(z.text); {
		c := z.text[i]
		switch {
		case c == ' ':
			z.joined = false
			i++
		case isDigitByte(c) || c == '.' && i+1 < len(z.text) && isDigitByte(z.text[i+1]):
			i = z.number(i)
		case isLetterByte(c):
			i = z.word(i)
		case c < utf8.RuneSelf:
			i = z.mark(i)
		default:
			i = z.rune(i)
		}
	}
	z.sentence(0)
}

func isDigitByte(c byte) bool  { return c-'0' < 10 }
func isLetterByte(c byte) bool { return c|0x20-'a' < 26 }

// add appends a token.
func (z *tokenizer) add(id int32, start, end int) *token {
	z.tokens = append(z.tokens, token{})
	t := &z.tokens[len(z.tokens)-1]
	t.id, t.start, t.end = id, int32(start), int32(end)
	t.joined, t.quoted, t.bracketed = z.joined, z.quoted, z.depth > 0
	z.joined = true
	return t
}

// rune reads a character outside ASCII.
func (z *tokenizer) rune(i int) int {
	r, size := utf8.DecodeRuneInString(z.text[i:])
	switch {
	case vulgarFraction(r).set():
		return z.number(i)
	case r == '°', r == 'º', r == '˚', r == '″', r == '℉', r == '℃':
		return z.sign(i, size)
	case unicode.IsLetter(r):
		return z.word(i)
	case r == '‐', r == '‑', r == '–', r == '—':
		return z.hyphen(i, size)
	case r == '“', r == '«':
		z.quoted = true
	case r == '”', r == '»':
		z.quoted = false
	case r == '…':
		z.after('-')
	case r == '•', r == '·':
		z.after(';')
	}
	z.joined = false
	return i + size
}

// sign reads a sign that stands for a unit: %, °, ".
func (z *tokenizer) sign(i, size int) int {
	z.add(z.lex.number(z.text[i:i+size]), i, i+size)
	return i + size
}

// afterNumber reports whether a number ends just before i.
func (z *tokenizer) afterNumber(i int) bool {
	n := len(z.tokens)
	return n > z.first && z.tokens[n-1].number().set() && int(z.tokens[n-1].end) == i
}
