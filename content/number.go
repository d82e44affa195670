package content

import (
	"errors"
	"math/big"
	"strings"
	"sync/atomic"
	"unicode"
	"unicode/utf8"
)

// A ratio is a number as a cook writes it. It fits machine words because no
// number has more than maxDigits digits.
type ratio struct{ num, den int64 }

const (
	maxDigits      = 12
	maxDenominator = 100
)

// What can be wrong with a number, each said so that it can be put right.
var (
	errNoNumber    = errors.New("a number comes first, as in 1/2 or 1.5")
	errNegative    = errors.New("a measure is never below zero")
	errLeadingZero = errors.New("a number does not begin with 0 unless a point follows, as in 0.5")
	errLongNumber  = errors.New("a number has at most 12 digits")
	errComma       = errors.New("a comma stands only before three digits, as in 4,500; write 1.5 with a point")
	errPoint       = errors.New("a number has one point at most, with digits after it, as in 1.5")
	errByZero      = errors.New("nothing is divided by 0")
	errFraction    = errors.New("a fraction is less than one, as in 3/4 or 1 3/4")
	errOddFraction = errors.New("a fraction has small whole numbers, as in 3/4")
	errPlainDigits = errors.New("a number is written in the digits 0 to 9, as in 10 or 1.5")
	errFalls       = errors.New("a range rises, as in 4-5; for one and a half write 1 1/2")
)

// cutNumber reads the number at the start of s: 6, 1.5, 4,500, 3/4, 1 1/2,
// 1-1/2, 1½, ½.
func cutNumber(s string) (n ratio, rest string, err error) {
	if err := startsNumber(s); err != nil {
		return ratio{}, s, err
	}
	if f, rest, err := cutFraction(s); err != errNoNumber {
		return f, rest, err
	}
	n, rest, err = cutDecimal(s)
	if err != nil || n.den != 1 {
		return n, rest, err
	}
	f, after, err := cutFraction(afterWhole(rest))
	switch err {
	case nil:
		return ratio{n.num*f.den + f.num, f.den}, after, nil
	case errNoNumber:
		return n, rest, nil
	}
	return ratio{}, s, err
}

// startsNumber says what is wrong if s cannot start a number.
func startsNumber(s string) error {
	if s == "" {
		return errNoNumber
	}
	if isDigit(s[0]) || s[0] == '.' && len(s) > 1 && isDigit(s[1]) {
		return nil
	}
	r, size := utf8.DecodeRuneInString(s)
	switch {
	case vulgar(r).den != 0:
		return nil
	case unicode.IsDigit(r):
		return errPlainDigits
	case (isDash(r) || r == '−') && size < len(s) && isDigit(s[size]):
		return errNegative
	}
	return errNoNumber
}

// cutDecimal reads 6, 4,500 or 1.5.
func cutDecimal(s string) (n ratio, rest string, err error) {
	digits := leadingDigits(s)
	rest = s[len(digits):]
	switch {
	case len(digits) > maxDigits:
		return ratio{}, s, errLongNumber
	case len(digits) > 1 && digits[0] == '0':
		return ratio{}, s, errLeadingZero
	}
	n = ratio{wholeOf(digits), 1}
	if digits != "" && len(rest) > 1 && rest[0] == ',' && isDigit(rest[1]) {
		n.num, rest, err = cutThousands(digits, rest)
	}
	if err != nil || !strings.HasPrefix(rest, ".") {
		return n, rest, err
	}
	places := leadingDigits(rest[1:])
	rest = rest[1+len(places):]
	switch {
	case places == "" || strings.HasPrefix(rest, "."):
		return ratio{}, s, errPoint
	case digitsIn(n.num)+len(places) > maxDigits:
		return ratio{}, s, errLongNumber
	}
	for range places {
		n.den *= 10
	}
	return ratio{n.num*n.den + wholeOf(places), n.den}, rest, nil
}

// cutThousands reads the ,500 of 4,500 after the digits that were read.
func cutThousands(digits, s string) (n int64, rest string, err error) {
	n = wholeOf(digits)
	if len(digits) > 3 || n == 0 {
		return 0, s, errComma
	}
	for rest = s; len(rest) > 1 && rest[0] == ',' && isDigit(rest[1]); {
		group := leadingDigits(rest[1:])
		if len(group) != 3 {
			return 0, s, errComma
		}
		n = n*1000 + wholeOf(group)
		if digitsIn(n) > maxDigits {
			return 0, s, errLongNumber
		}
		rest = rest[1+len(group):]
	}
	return n, rest, nil
}

// A valued is a number and its value.
type valued struct {
	ratio
	value *big.Rat
}

// lately holds some of the numbers that were read last: cooks write the same few
// again and again.
var lately [1 << 10]atomic.Pointer[valued]

// rat gives the value of the number, which others may hold too.
func (n ratio) rat() *big.Rat {
	last := &lately[uint64(n.num+37*n.den)%uint64(len(lately))]
	if v := last.Load(); v != nil && v.ratio == n {
		return v.value
	}
	v := &valued{n, big.NewRat(n.num, n.den)}
	last.Store(v)
	return v.value
}

// compare is x.Cmp(y), without the memory that it takes for fractions.
func compare(x, y *big.Rat) int {
	switch {
	case x == y:
		return 0
	case x.IsInt() && y.IsInt():
		return x.Num().Cmp(y.Num())
	}
	return x.Cmp(y)
}

// leadingDigits gives the digits at the start of s.
func leadingDigits(s string) string {
	i := 0
	for i < len(s) && isDigit(s[i]) {
		i++
	}
	return s[:i]
}

// wholeOf gives the value of at most maxDigits digits, 0 for none.
func wholeOf(digits string) int64 {
	var n int64
	for i := range len(digits) {
		n = n*10 + int64(digits[i]-'0')
	}
	return n
}

// digitsIn counts the digits of n, none for 0.
func digitsIn(n int64) int {
	count := 0
	for ; n > 0; n /= 10 {
		count++
	}
	return count
}

func isDigit(b byte) bool { return '0' <= b && b <= '9' }

// isDash reports whether r is a hyphen or one of the longer dashes that
// word processors put in its place.
func isDash(r rune) bool { return r == '-' || '‐' <= r && r <= '—' }
