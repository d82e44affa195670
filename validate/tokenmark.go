package validate

import "strings"

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

// hyphen reads a hyphen or a dash: between spaces, or doubled, it parts.
func (z *tokenizer) hyphen(i, size int) int {
	spaced := i > 0 && z.text[i-1] == ' '
	next := i + size
	double := next < len(z.text) && z.text[next] == '-'
	long := strings.HasPrefix(z.text[i:next], "—")
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
		z.tokens[n-1].num, z.tokens[n-1].den = 0, 0
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
