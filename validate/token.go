package validate

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// A token is a word, a number or a sign of measure of a running text.
type token struct {
	id         int32 // of the lexicon; 0 for a word that it does not hold
	start, end int32 // in the text of its passage
	number     ratio // the value of a number in digits; zero for a word
	after      byte  // the strongest mark between it and the next token: 0 , : ; - ( ) . ? !
	joined     bool  // nothing, or a hyphen, stands between it and the token before
	quoted     bool
	bracketed  bool
}

// A ratio is a number as a cook writes it; its den is 0 if there is none.
type ratio struct{ num, den int64 }

func (r ratio) set() bool { return r.den != 0 }

// ranks orders marks by how much they part.
var ranks = [256]uint8{',': 1, ':': 2, '-': 3, ';': 4, '(': 5, ')': 6, '.': 7, '?': 8, '!': 9}

func rank(mark byte) int { return int(ranks[mark]) }

// parts reports whether a mark parts two clauses for certain.
func parts(mark byte) bool { return rank(mark) > 1 }

// A tokenizer cuts a passage into tokens, and its tokens into sentences.
type tokenizer struct {
	lex    *lexicon
	text   []byte
	tokens []token
	first  int // the token at which the sentence begins
	ends   []sentence

	quoted, joined bool
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

func isDigitByte(c byte) bool  { return '0' <= c && c <= '9' }
func isLetterByte(c byte) bool { return 'a' <= c|0x20 && c|0x20 <= 'z' }

// add appends a token.
func (z *tokenizer) add(t token) {
	t.joined, t.quoted, t.bracketed = z.joined, z.quoted, z.depth > 0
	z.tokens = append(z.tokens, t)
	z.joined = true
}

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

// mark reads a sign of ASCII.
func (z *tokenizer) mark(i int) int {
	c := z.text[i]
	switch c {
	case '-':
		return z.hyphen(i, 1)
	case ',', ';':
		z.after(c)
	case ':':
		if i+1 < len(z.text) && isDigitByte(z.text[i+1]) && i > 0 && isDigitByte(z.text[i-1]) {
			return z.clock(i)
		}
		z.after(c)
	case '(', '[':
		z.after('(')
		z.depth++
	case ')', ']':
		z.after(')')
		z.depth = max(z.depth-1, 0)
	case '.', '?', '!':
		return z.stop(i)
	case '"':
		if i > 0 && z.afterNumber(i) && !z.quoted {
			return z.sign(i, 1)
		}
		z.quoted = !z.quoted
		z.joined = false
		return i + 1
	case '%':
		return z.sign(i, 1)
	}
	z.joined = c == '/' && z.joined
	return i + 1
}

// afterNumber reports whether a number ends just before i.
func (z *tokenizer) afterNumber(i int) bool {
	n := len(z.tokens)
	return n > z.first && z.tokens[n-1].number.set() && int(z.tokens[n-1].end) == i
}

// rune reads a character outside ASCII.
func (z *tokenizer) rune(i int) int {
	r, size := utf8.DecodeRune(z.text[i:])
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
	z.add(token{id: z.lex.ids[string(z.text[i:i+size])], start: int32(i), end: int32(i + size)})
	return i + size
}

// hyphen reads a hyphen or a dash: between spaces, or doubled, it parts.
func (z *tokenizer) hyphen(i, size int) int {
	spaced := i > 0 && z.text[i-1] == ' '
	next := i + size
	double := next < len(z.text) && z.text[next] == '-'
	long := strings.HasPrefix(string(z.text[i:next]), "—")
	if spaced && next < len(z.text) && z.text[next] == ' ' || double || long && !z.betweenDigits(i, next) {
		z.after('-')
		z.joined = false
		if double {
			next++
		}
	}
	return next
}

func (z *tokenizer) betweenDigits(i, next int) bool {
	return i > 0 && isDigitByte(z.text[i-1]) && next < len(z.text) && isDigitByte(z.text[next])
}

// clock makes one word of a time of day, so that no figure is made of it.
func (z *tokenizer) clock(i int) int {
	i++
	for i < len(z.text) && isDigitByte(z.text[i]) {
		i++
	}
	if n := len(z.tokens); n > 0 {
		z.tokens[n-1].number = ratio{}
		z.tokens[n-1].end = int32(i)
	}
	return i
}

// after notes a mark behind the last token, unless a stronger one stands there.
func (z *tokenizer) after(mark byte) {
	z.joined = false
	if n := len(z.tokens); n > z.first && rank(mark) > rank(z.tokens[n-1].after) {
		z.tokens[n-1].after = mark
	}
}

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
		r, size := utf8.DecodeRune(z.text[i:])
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
