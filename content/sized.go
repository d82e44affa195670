package content

import "strings"

// cutTimes cuts the sign between a count and a size: 2 x 400 g.
func cutTimes(s string) (rest string, ok bool) {
	s = skipSpace(s)
	for _, sign := range [...]string{"x", "X", "×", "*"} {
		rest, ok := strings.CutPrefix(s, sign)
		if after := skipSpace(rest); ok && startsNumber(after) == nil {
			return after, true
		}
	}
	return s, false
}

// cutEach reads the size of each piece, and the piece: 400 g tins. Sure tells
// that nothing but a size can stand here; otherwise a hyphen must tie it
// together, or a piece follow.
func (l *line) cutEach(s string, sure bool) bool {
	size, rest, err := kitchen.cut(s)
	if err != nil || size.unit == nil || size.unit.dim == Count || size.High.Sign() == 0 {
		return false
	}
	rest = skipSameSize(rest)
	m, after, joined := cutUnit(rest, dimsOf(Count))
	switch {
	case m != nil && !joined:
		l.in.Amount.Unit, rest = m.unit, after
	case !sure && !size.joined:
		return false
	}
	l.in.Each, l.rest = size.Quantity, rest
	l.cutSame()
	return true
}

// skipSameSize skips the same size in other units: 400g/14oz, 14 oz (400 g).
func skipSameSize(s string) string {
	for {
		rest := skipSize(skipSpace(s))
		if len(rest) >= len(skipSpace(s)) {
			return s
		}
		s = rest
	}
}

// skipSize skips one size behind a stroke or in brackets.
func skipSize(s string) string {
	if inside, rest, ok := cutBracket(s); ok {
		if _, _, ok := sameIn(inside); ok {
			return rest
		}
	}
	if after, ok := strings.CutPrefix(s, "/"); ok {
		if _, rest, err := kitchen.cut(skipSpace(after)); err == nil {
			return rest
		}
	}
	return s
}

// cutBracketSize reads the size in brackets behind a count: 2 (14-oz) cans. It
// does not if the bracket may as well hold the weight of them all.
func (l *line) cutBracketSize(s string) bool {
	inside, rest, ok := cutBracket(s)
	if !ok {
		return false
	}
	same, each, ok := sameIn(inside)
	if !ok || len(same) == 0 || same[0].Unit == "" || same[0].Unit.Dimension() == Count {
		return false
	}
	m, after, _ := cutUnit(rest, dimsOf(Count))
	if m == nil && !each && l.in.Amount.High.Cmp(one) > 0 {
		return false
	}
	if m != nil {
		l.in.Amount.Unit, rest = m.unit, after
	}
	l.in.Each, l.rest = same[0], rest
	return true
}

// takeSized takes the one piece or container that follows its size: a 14-oz
// can, 2-inch piece.
func (l *line) takeSized(r reading, rest, whole string) bool {
	m, after, joined := cutUnit(rest, dimsOf(Count))
	if m == nil || joined || r.unit.dim == Count {
		return false
	}
	plural := lower(lastByte(leadingLetters(skipSpace(rest)))) == 's'
	switch {
	case plural && (takesSize(m, r) || r.joined && strings.Contains(r.Text, " ")),
		m.form == container && r.IsRange():
		l.cutUnread(whole) // 2 1/4-oz packages: two of 1/4 oz, or some of 2 1/4 oz? 1 - 6 oz can: one of 6 oz?
		return true
	case !takesSize(m, r):
		return false
	}
	l.in.Amount = Quantity{Low: one, High: one, Unit: m.unit}
	l.in.Each, l.rest = r.Quantity, after
	l.cutSame()
	return true
}

// takesSize reports whether a size that stands before a piece is the size of
// it, unlike that of 1 cup head lettuce.
func takesSize(m *knownUnit, size reading) bool {
	if m.form == piece {
		return size.joined || size.unit.dim != VolumeDim
	}
	return m.form == container
}
