package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// saidPressure reports a pressure in the text that the recipe's tables do not
// have.
var saidPressure = &Rule{
	ID:       "said-pressure",
	Severity: Error,
	Summary:  "a pressure in the text that the tables do not have",
	Doc: `A pressure in a step, a note or a caution must be one of the table's, for the
gauge and the altitude that are named beside it. 10 psi on a weight is not 10 psi
on a dial, and neither serves every kitchen.`,
	Source: Source{
		Title:   "Pacific Northwest Extension PNW 421, with the values of AIB 539",
		Address: "https://manuzoid.com/manuals/x1p7b-Pacific%20Northwest%20PNW%20421%20User%20guide",
	},
	CheckText: checkSaidPressure,
}

func checkSaidPressure(t *Text) []Finding {
	if !t.hasWay(content.PressureCanner) {
		return nil
	}
	var fs []Finding
	for _, s := range t.counting() {
		for _, f := range s.pressures() {
			right := t.pressuresFor(s, f)
			if hasPressure(right, f) || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: fmt.Sprintf("%s here, where the tables have %s psi", s.words(f.from, f.to), pressureList(right)),
				Advice:  "Write the pressure of the table, with its gauge and altitude.",
			})
		}
	}
	return fs
}

// pressures gives the gauge pressures of a sentence: in psi or kPa, or in
// pounds beside a gauge.
func (s *sentence) pressures() (found []mention) {
	for _, f := range s.figures() {
		switch {
		case f.measures == content.PressureDim:
			found = append(found, f)
		case f.unit == content.Pound && s.ofPressure(f):
			f.unit = content.PSI
			found = append(found, f)
		}
	}
	return found
}

// ofPressure reports whether pounds are those of a gauge: "at 10 pounds", "the
// weight says 15 pounds".
func (s *sentence) ofPressure(f mention) bool {
	if s.isAny(f.to, "of") || s.anyOf("sticks stuck broken") || f.low.num > 25*f.low.den {
		return false
	}
	if s.isAny(f.from-1, "at") && s.anyOf("hold keep process run") && !s.is(f.to, famLowAcid) {
		return true
	}
	if s.isAny(f.from-1, "to at") && s.find(famCanner, 0, f.from) >= 0 {
		return true
	}
	if s.isAny(f.to, "on in by") && s.anyIn("gauge dial weight", f.to, f.to+5) {
		return true
	}
	return s.anyOf("pressure psi gauge dial") && s.anyIn("at to of reaches reads says hold holds on", f.from-2, f.from) || s.isAny(f.from-1, "says reads at") && s.anyOf("weight gauge dial")
}

// pressuresFor gives the pressures of the tables for the gauge that a sentence
// names, and for the altitude beside the figure.
func (t *Text) pressuresFor(s *sentence, f mention) (right []*big.Rat) {
	from, to := s.segment(f.from)
	dial, weighted := s.gaugeIn(from, to)
	if !dial && !weighted {
		dial, weighted = s.gaugeIn(0, s.len())
	}
	hs := s.heights()
	h := between(hs, from, to)
	for _, m := range t.Matches {
		for _, j := range m.Jars {
			if !weighted || dial {
				right = append(right, pressuresAt(j.Entry.Dial, h)...)
			}
			if !dial || weighted {
				right = append(right, pressuresAt(j.Entry.Weighted, h)...)
			}
		}
	}
	return right
}

// gaugeIn tells which gauges are named in a stretch. A weight that is set on
// the vent closes canners of either kind.
func (s *sentence) gaugeIn(from, to int) (dial, weighted bool) {
	for i := max(from, 0); i < min(to, s.len()); i++ {
		if s.isAny(i, "weight weighted rocker jiggler") && !s.anyIn("set put place drop", i-3, i) {
			weighted = true
		}
	}
	return s.anyIn("dial needle", from, to), weighted
}

func pressuresAt(bands []content.Band[content.Pressure], h *height) (right []*big.Rat) {
	for _, b := range pressureBands(bands) {
		if b.value == nil || h != nil && (h.top && b.span.to != nil || !h.top && !b.span.overlaps(h.span)) {
			continue
		}
		right = append(right, b.value)
	}
	return right
}

func hasPressure(right []*big.Rat, f mention) bool {
	for _, n := range []ratio{f.low, f.high} {
		said := mention{low: n, high: n, unit: f.unit}.in(content.PSI)
		found := len(right) == 0
		for _, r := range right {
			found = found || r.Cmp(said) == 0 || f.unit == content.Kilopascal && nearly(r, said)
		}
		if !found {
			return false
		}
	}
	return true
}

// nearly reports whether two pressures differ by less than half a psi, as
// rounded kilopascals do.
func nearly(a, b *big.Rat) bool {
	d := new(big.Rat).Sub(a, b)
	return d.Abs(d).Cmp(big.NewRat(1, 2)) < 0
}

func pressureList(right []*big.Rat) string {
	var texts []string
	seen := map[string]bool{}
	for _, r := range right {
		if s := percent(r); !seen[s] {
			seen[s] = true
			texts = append(texts, s)
		}
	}
	return orList(texts)
}
