package content

import "strings"

// vagueAmounts are amounts that leave it to the cook.
var vagueAmounts = []string{
	"a few", "a little", "a couple of", "a couple", "a bit of", "a bit", "a lot of", "a touch of",
	"a small amount of", "a good amount of", "a large amount of",
	"some", "several", "enough", "plenty of", "lots of",
}

// cutVague reads an amount that leaves it to the cook: a few sprigs of thyme.
func (l *line) cutVague() bool {
	vague, rest := cutAnyWord(l.rest, vagueAmounts)
	if vague == "" || rest == "" {
		return false
	}
	said := l.rest[:len(l.rest)-len(rest)]
	if m, after, joined := cutUnit(rest, kitchenDim); m != nil && !joined && trimSpace(after) != "" {
		said, rest = l.rest[:len(l.rest)-len(after)], after
	}
	if after, ok := cutWord(skipSpace(rest), "of"); ok {
		rest = after
	}
	l.in.ToTaste = true
	l.notes = append(l.notes, strings.TrimSuffix(tidy(said), " of"))
	l.rest = skipSpace(rest)
	return true
}

// note takes a piece of the line that stands behind the item.
func (l *line) note(s string) {
	if l.unmeasured() && l.takeLate(s) || l.takeSame(s) {
		return
	}
	s = tidy(s)
	l.second(s)
	s = tidy(l.cutBrackets(s, true))
	switch {
	case s == "":
	case strings.EqualFold(s, "optional"):
		l.in.Optional = true
	case l.unmeasured() && isToTaste(s):
		l.in.ToTaste = true
	default:
		l.notes = append(l.notes, s)
	}
}

// unmeasured reports whether the line has had no amount so far.
func (l *line) unmeasured() bool {
	return l.in.Amount.IsZero() && l.in.Unread == "" && !l.in.ToTaste
}

// isToTaste reports whether a note means that the cook decides how much.
func isToTaste(s string) bool {
	word, rest := cutAnyWord(s, []string{"to taste", "as needed", "as required", "to cover", "to fill"})
	return word != "" && rest == ""
}

// takeLate takes an amount that stands behind its item: sugar, 2 cups.
func (l *line) takeLate(s string) bool {
	late := line{rest: skipSpace(s)}
	late.cutAmount()
	late.cutManner(sizeWords)
	in := late.in
	if in.Amount.IsZero() || trimSpace(late.rest) != "" || late.before != "" || in.Amount.Unit.Dimension() == LengthDim {
		return false
	}
	l.in.Amount, l.in.Manner, l.in.Each, l.in.Same = in.Amount, in.Manner, in.Each, in.Same
	return true
}

// takeSame takes the same amount by another measure: 8 cups onions, about 3 lb.
func (l *line) takeSame(s string) bool {
	same, each, ok := sameIn(trimSpace(s))
	if !ok || each || l.in.Amount.IsZero() || same[0].Unit.Dimension() == l.in.Amount.Unit.Dimension() {
		return false
	}
	dim := same[0].Unit.Dimension()
	if dim != WeightDim && dim != VolumeDim {
		return false
	}
	l.in.Same = append(l.in.Same, same...)
	return true
}

// second leaves in Unread an amount that would otherwise be lost: one that is
// added to the first, as in plus 2 tbsp, and one behind a heading, as in for
// the syrup: 2 cups sugar.
func (l *line) second(s string) {
	word, rest := cutAnyWord(s, []string{"plus", "and"})
	if after, ok := strings.CutPrefix(s, "+"); ok {
		word, rest = "plus", skipSpace(after)
	}
	if l.in.Unread != "" || word == "" && !l.unmeasured() {
		return
	}
	r, rest, err := kitchen.cut(rest)
	if err != nil || word == "" && (r.unit == nil || r.unit.dim == LengthDim) {
		return
	}
	l.in.Unread = trimSpace(s[:len(s)-len(rest)])
}
