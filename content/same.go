package content

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// cutSame reads what may follow an amount: words of manner, the same amount in
// other units, "each", "of".
func (l *line) cutSame() {
	for {
		l.cutManner(packedWords)
		if !l.cutAlternative() && !l.cutAmountBracket() {
			break
		}
	}
	if rest, ok := cutWord(l.rest, "each"); ok {
		l.each, l.rest = true, strings.TrimLeft(rest, ": ")
	}
	if rest, ok := cutWord(l.rest, "of"); ok {
		l.rest = rest
	}
}

// cutAlternative reads / 450 g, = 450 g or "or 450 g".
func (l *line) cutAlternative() bool {
	after, ok := cutSign(l.rest)
	if !ok {
		after, ok = cutWord(l.rest, "or")
	}
	if !ok {
		return false
	}
	r, rest, err := kitchen.cut(after)
	if err != nil || r.unit == nil || r.joined || r.unit.dim == Count || r.High.Sign() == 0 {
		return false
	}
	l.in.Same = append(l.in.Same, r.Quantity)
	l.rest = rest
	return true
}

// cutSign cuts a sign between two ways of giving an amount.
func cutSign(s string) (rest string, ok bool) {
	if rest, ok = cutStroke(s); !ok {
		rest, ok = strings.CutPrefix(s, "=")
	}
	return skipSpace(rest), ok
}

// cutAmountBracket reads a bracket behind an amount, if it says more of it.
func (l *line) cutAmountBracket() bool {
	inside, rest, ok := cutBracket(l.rest)
	if ok && l.takeBracket(inside) {
		l.rest = rest
		return true
	}
	return false
}

// cutBracket cuts a bracket, with those inside it. It reports false if there
// is none at the start of s, or if it is never closed.
func cutBracket(s string) (inside, rest string, ok bool) {
	if s == "" || s[0] != '(' && s[0] != '[' {
		return "", s, false
	}
	depth := 0
	for i := range len(s) {
		switch s[i] {
		case '(', '[':
			depth++
		case ')', ']':
			depth--
		}
		if depth == 0 {
			return trimSpace(s[1:i]), s[i+1:], true
		}
	}
	return "", s, false
}

// takeBracket takes what a bracket says of the amount or of the line. It
// reports false if that is nothing but a remark.
func (l *line) takeBracket(inside string) bool {
	switch {
	case strings.EqualFold(inside, "optional"):
		l.in.Optional = true
		return true
	case l.unmeasured() && isToTaste(inside):
		l.in.ToTaste = true
		return true
	}
	if word, rest := cutAnyWord(inside, packedWords); word != "" && rest == "" {
		l.manner(word)
		return true
	}
	same, each, ok := sameIn(inside)
	switch {
	case !ok || l.in.Unread != "":
		return false
	case l.in.Amount.IsZero() && l.in.Each.IsZero() && !l.in.ToTaste:
		l.in.Amount, l.in.Same = same[0], same[1:]
	case l.in.Each.IsZero() && (each || l.holds() || same[0].Unit.Dimension() == LengthDim):
		l.in.Each = same[0]
	default:
		l.in.Same = append(l.in.Same, same...)
	}
	return true
}

// holds reports whether the amount is one of containers, so that a size in
// brackets is that of each.
func (l *line) holds() bool {
	m := unitTable[l.in.Amount.Unit]
	return m != nil && m.form == container
}

// maxSame is the most ways in which a bracket gives one amount.
const maxSame = 4

// sameIn reads the whole of a bracket as one amount in one or more units: about
// 3 lb; 225 g, 8 oz; 14 oz each. A number alone may be a footnote, so it needs
// a word beside it: about 3, 3 large.
func sameIn(inside string) (same []Quantity, each, ok bool) {
	for rest := inside; len(same) < maxSame; {
		about, s := cutAbout(rest)
		r, s, err := kitchen.cut(s)
		if err != nil || r.High.Sign() == 0 {
			return nil, false, false
		}
		size, s := cutAnyWord(skipSpace(s), sizeWords)
		if r.unit == nil && about == "" && size == "" {
			return nil, false, false
		}
		same = append(same, r.Quantity)
		if after, ok := cutWord(s, "each"); ok {
			each, s = true, after
		}
		_, s = cutAnyWord(s, []string{"in total", "total"})
		if rest, ok = cutBetween(s); !ok {
			return same, each, s == ""
		}
	}
	return nil, false, false
}

// cutAbout cuts a word that says that an amount is not quite exact.
func cutAbout(s string) (word, rest string) {
	s = skipSpace(s)
	if r, size := utf8.DecodeRuneInString(s); r == '~' || r == '≈' {
		return "about", skipSpace(s[size:])
	}
	return cutAnyWord(s, aboutWords)
}

// cutBetween cuts what stands between two amounts in a bracket.
func cutBetween(s string) (rest string, ok bool) {
	if rest, ok = cutSign(s); ok {
		return rest, true
	}
	if s != "" && slices.Contains([]byte(",;|"), s[0]) {
		return s[1:], true
	}
	return cutWord(s, "or")
}
