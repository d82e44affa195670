package validate

import (
	"math"
	"unicode/utf8"
)

// number reads a number in digits, with its fraction: 6, 4,500, 1.5, 3/4,
// 1 1/2, 1½.
func (z *tokenizer) number(i int) int {
	start := i
	n, i := z.plainNumber(i)
	if n.den == 1 {
		if f, after := z.fractionAfter(i); f.set() {
			n, i = ratio{n.num*f.den + f.num, f.den}, after
		}
	}
	t := z.add(0, start, i)
	t.num, t.den = kept(n)
	return i
}

// kept gives a number as a token keeps it: to the whole where it is too long, and
// no more than any kitchen has of anything.
func kept(n ratio) (num, den int32) {
	if n.num > math.MaxInt32 || n.den > math.MaxInt32 {
		n = ratio{min(n.num/n.den, math.MaxInt32), 1}
	}
	return int32(n.num), int32(n.den)
}

// plainNumber reads one number without a whole before its fraction.
func (z *tokenizer) plainNumber(i int) (ratio, int) {
	if r, size := utf8.DecodeRuneInString(z.text[i:]); r >= utf8.RuneSelf {
		return vulgarFraction(r), i + size
	}
	n, i := z.digits(ratio{0, 1}, i)
	for i+3 < len(z.text) && z.text[i] == ',' && z.threeDigits(i+1) {
		n, i = z.digits(n, i+1)
	}
	switch {
	case i+1 < len(z.text) && z.text[i] == '.' && isDigitByte(z.text[i+1]):
		whole := n
		d, end := z.digits(ratio{0, 1}, i+1)
		if end-i-1 > 6 {
			return whole, end
		}
		for range end - i - 1 {
			whole.num, whole.den = whole.num*10, whole.den*10
		}
		return ratio{whole.num + d.num, whole.den}, end
	case i+1 < len(z.text) && isStroke(z.text[i:]) && isDigitByte(z.text[i+strokeLen(z.text[i:])]):
		d, end := z.digits(ratio{0, 1}, i+strokeLen(z.text[i:]))
		if d.num > 0 && d.num <= 64 && n.num < d.num {
			return ratio{n.num, d.num}, end
		}
	}
	return n, i
}

// isStroke reports whether a stroke of a fraction stands at the start of b,
// with a byte behind it.
func isStroke(b string) bool { return len(b) > strokeLen(b) && strokeLen(b) > 0 }

func strokeLen(b string) int {
	if b[0] == '/' {
		return 1
	}
	if r, size := utf8.DecodeRuneInString(b); r == '⁄' {
		return size
	}
	return 0
}

// digits appends the digits at i to a whole number, at most fifteen of them.
func (z *tokenizer) digits(n ratio, i int) (ratio, int) {
	const most = 1e15
	for i < len(z.text) && isDigitByte(z.text[i]) {
		if n.num < most {
			n.num = n.num*10 + int64(z.text[i]-'0')
		}
		i++
	}
	return n, i
}

// threeDigits reports whether just three digits stand at i.
func (z *tokenizer) threeDigits(i int) bool {
	for k := i; k < i+3; k++ {
		if k >= len(z.text) || !isDigitByte(z.text[k]) {
			return false
		}
	}
	return i+3 >= len(z.text) || !isDigitByte(z.text[i+3])
}

// fractionAfter reads the fraction that may follow a whole number, after
// nothing, a space or a hyphen.
func (z *tokenizer) fractionAfter(i int) (ratio, int) {
	if i < len(z.text) && (z.text[i] == ' ' || z.text[i] == '-') {
		i++
	}
	if i >= len(z.text) {
		return ratio{}, i
	}
	if r, size := utf8.DecodeRuneInString(z.text[i:]); vulgarFraction(r).set() {
		return vulgarFraction(r), i + size
	}
	if !isDigitByte(z.text[i]) {
		return ratio{}, i
	}
	if f, end := z.plainNumber(i); f.den > 1 && f.num < f.den && end < i+6 && hasStroke(z.text[i:end]) {
		return f, end
	}
	return ratio{}, i
}

func hasStroke(b string) bool {
	for i := range b {
		if isStroke(b[i:]) {
			return true
		}
	}
	return false
}

// vulgarFraction gives the value of a fraction of one character.
func vulgarFraction(r rune) ratio {
	switch r {
	case '½':
		return ratio{1, 2}
	case '¼':
		return ratio{1, 4}
	case '¾':
		return ratio{3, 4}
	case '⅓':
		return ratio{1, 3}
	case '⅔':
		return ratio{2, 3}
	case '⅛':
		return ratio{1, 8}
	case '⅜':
		return ratio{3, 8}
	case '⅝':
		return ratio{5, 8}
	case '⅞':
		return ratio{7, 8}
	case '⅕':
		return ratio{1, 5}
	case '⅙':
		return ratio{1, 6}
	}
	return ratio{}
}
