package validate

import (
	"math/big"
	"slices"

	"stillroom/content"
)

// A height is a stretch of altitude that a text names, and where.
type height struct {
	span span
	top  bool // "above that": the highest stretch, without a figure
	at   int  // the token at which its figure begins
}

// heights gives the altitudes that a sentence names: up to 1,000 feet, from
// 1,001 to 3,000 feet, above 6,000, at sea level. They are read once.
func (s *sentence) heights() []height {
	if !s.raised {
		s.raised = true
		s.peaks = s.readHeights()
	}
	return s.peaks
}

func (s *sentence) readHeights() []height {
	var hs []height
	unit := content.Unit("")
	for _, f := range s.figures() {
		if f.measures == content.AltitudeDim && f.low.num > 90*f.low.den {
			unit = f.unit
		}
	}
	if s.anyOf("sea above higher beyond over") {
		hs = s.namedHeights()
	}
	if unit == "" {
		return hs
	}
	for _, f := range s.figures() {
		if h, ok := s.heightOf(f, unit); ok {
			hs = append(hs, h)
		}
	}
	slices.SortFunc(hs, func(a, b height) int { return a.at - b.at })
	return hs
}

var higherWords = fewOf("above higher beyond over")

// namedHeights gives those without a figure: at sea level, and "above that".
func (s *sentence) namedHeights() (hs []height) {
	for i := range s.len() {
		if s.isAny(i, "sea") && s.isAny(i+1, "level") {
			hs = append(hs, height{span: span{from: new(big.Rat), to: new(big.Rat)}, at: i})
		}
		if s.isOne(i, &higherWords) && (s.isAny(i+1, "that") || i+1 == s.len() || s.at(i).after != 0) && !s.isAny(i-1, "or and as") {
			hs = append(hs, height{top: true, at: i})
		}
	}
	return hs
}

// heightOf makes a height of a figure in feet or metres, or of a bare number
// that stands behind "up to" or "above" in a sentence about altitude.
func (s *sentence) heightOf(f mention, unit content.Unit) (height, bool) {
	const least = 90 // below this a number is none of altitude
	switch {
	case f.measures == content.AltitudeDim:
	case f.unit == "" && f.low.num >= least*f.low.den && s.isAny(f.from-1, "to above over below at than until from under beyond"):
		f.unit = unit
	default:
		return height{}, false
	}
	low := f.in(content.Foot)
	high := low
	if f.low != f.high {
		high = mention{low: f.high, high: f.high, unit: f.unit}.in(content.Foot)
	}
	if low == nil || compareWhole(low, least) < 0 && f.low == f.high {
		return height{}, false
	}
	h := height{at: f.from}
	switch {
	case f.low != f.high:
		h.span = span{from: low, to: high}
	case s.isAny(f.from-1, "above over beyond exceeding") || s.isAny(f.from-1, "than") && s.isAny(f.from-2, "higher more greater"):
		h.span = span{from: low, over: true}
	case s.isAny(f.to, "or and") && s.isAny(f.to+1, "above higher more over up beyond"), s.isAny(f.to, "+"):
		h.span = span{from: low}
	case s.isAny(f.from-1, "to below under until") || s.isAny(f.from-1, "than") && s.isAny(f.from-2, "less lower"), s.isAny(f.to, "or and") && s.isAny(f.to+1, "below less under lower"):
		h.span = span{from: new(big.Rat), to: high}
	default:
		h.span = span{from: low, to: high}
	}
	return h, true
}
