package content

import (
	"errors"
	"math/big"
	"strings"
)

// Words that stand before an altitude, or after it.
var (
	aboveWords = []string{"above", "over", "more than", "higher than", "greater than"}
	belowWords = []string{"below", "under", "less than", "lower than"}
	upToWords  = []string{"up to", "to", "at or below", "at most", "no more than"}
	andUpWords = []string{"and above", "and over", "and up", "and higher", "and more", "or above", "or over", "or higher", "or more"}
)

// What can be wrong with a band.
var (
	errNoBand    = errors.New("a band is written as in 0-1,000 ft, 1,001-6,000 ft or above 6,000 ft")
	errBandBelow = errors.New("write up to 1,000 ft if the band holds its upper end, and 0-999 ft if not")
	errBandUnit  = errors.New("a band ends with its unit, ft or m, as in 0-1,000 ft")
	errBandUnits = errors.New("one end is in feet and one in metres; write both in one of them, as in 0-1,000 ft or 0-305 m")
	errBandFalls = errors.New("a band rises from its lower to its upper end, as in 0-1,000 ft")
)

// ParseBand reads a stretch of altitude: 0-1,000 ft, 1,001-6,000 ft, up to
// 305 m, above 6,000 ft, 6,001 ft and above. Over reports that the band begins
// just above from, not at it. To is zero if the band has no upper end.
func ParseBand(s string) (from Altitude, over bool, to Altitude, err error) {
	text := trimSpace(s)
	b, err := parseStretch(text)
	if err != nil {
		return Altitude{}, false, Altitude{}, misread(text, err)
	}
	return Altitude{b.from}, b.over, Altitude{b.to}, nil
}

// A stretch is what a band's key says.
type stretch struct {
	from Quantity
	over bool
	to   Quantity
}

func parseStretch(s string) (stretch, error) {
	if word, rest := cutAnyWord(s, aboveWords); word != "" {
		from, err := wholeHeight(rest)
		return stretch{from: from, over: true}, err
	}
	if word, _ := cutAnyWord(s, belowWords); word != "" {
		return stretch{}, errBandBelow
	}
	if word, rest := cutAnyWord(s, upToWords); word != "" {
		to, err := wholeHeight(rest)
		return upTo(to), err
	}
	if rest, ok := cutWords(s, "sea level"); ok {
		s = "0 " + rest
	}
	return twoEnds(s)
}

// twoEnds reads a band whose lower end comes first.
func twoEnds(s string) (stretch, error) {
	from, rest, err := cutHeight(s)
	if err != nil {
		return stretch{}, err
	}
	if from, ok := andUp(from, rest); ok {
		return stretch{from: from}, nil
	}
	rest, ok := cutTo(rest, false)
	if !ok {
		return stretch{}, errNoBand
	}
	to, err := wholeHeight(rest)
	if err != nil {
		return stretch{}, err
	}
	if from.Unit == "" {
		from.Unit = to.Unit
	}
	switch {
	case from.Unit != to.Unit:
		return stretch{}, errBandUnits
	case compare(from.Low, to.Low) >= 0:
		return stretch{}, errBandFalls
	}
	return stretch{from: from, to: to}, nil
}

// upTo gives the band from the sea to an altitude.
func upTo(to Quantity) stretch {
	sea := new(big.Rat)
	return stretch{from: Quantity{Low: sea, High: sea, Unit: to.Unit}, to: to}
}

// andUp completes the lower end of a band that has no upper one: 6,001 ft and
// above, 6,001+ ft.
func andUp(from Quantity, rest string) (Quantity, bool) {
	if from.Unit == "" {
		unit, ok := strings.CutPrefix(rest, "+")
		m, after, _ := cutUnit(unit, dimsOf(AltitudeDim))
		if !ok || m == nil || trimSpace(after) != "" {
			return from, false
		}
		from.Unit = m.unit
		return from, true
	}
	word, after := cutAnyWord(rest, andUpWords)
	return from, rest == "+" || word != "" && after == ""
}

// wholeHeight reads all of s as one altitude.
func wholeHeight(s string) (Quantity, error) {
	q, rest, err := cutHeight(s)
	switch {
	case err != nil:
		return Quantity{}, err
	case rest != "" && (q.Unit != "" || !isLetter(rest[0])):
		return Quantity{}, errNoBand
	case q.Unit == "":
		return Quantity{}, errBandUnit
	}
	return q, nil
}

// cutHeight reads the altitude at the start of s, with or without its unit.
func cutHeight(s string) (q Quantity, rest string, err error) {
	n, rest, err := cutNumber(s)
	if err != nil {
		return Quantity{}, s, err
	}
	v := n.rat()
	q = Quantity{Low: v, High: v}
	if m, after, _ := cutUnit(rest, dimsOf(AltitudeDim)); m != nil {
		q.Unit, rest = m.unit, after
	}
	q.Text = trimSpace(s[:len(s)-len(rest)])
	return q, skipSpace(rest), nil
}
