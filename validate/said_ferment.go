package validate

import (
	"fmt"

	"stillroom/content"
)

// saidFerment reports a strength of salt or a temperature of fermenting in the
// text that is not the one of the front matter.
var saidFerment = &Rule{
	ID:       "said-ferment",
	Severity: Error,
	Summary:  "a salt or a temperature of fermenting in the text that is not the recipe's own",
	Doc: `Salt and warmth decide which germs win in a crock. The step that orders them must
give the figures of the front matter. What a step tells beside that, how long it
takes when it is cooler or what happens when it is too warm, is not compared. Less
salt is an error, the rest a warning.`,
	Source: Source{
		Title:   "MSU Extension, reduced-sodium pickles",
		Address: "http://www.solareagle.com/PREP/PFS/01600956.HTM",
	},
	CheckText: checkSaidFerment,
}

func checkSaidFerment(t *Text) []Finding {
	var fs []Finding
	for _, m := range t.Matches {
		k := m.Keeping
		if k.Way.V != content.Fermenting {
			continue
		}
		for _, s := range t.counting() {
			switch s.place {
			case placeStep, placeHead, placeNotes, placeCaution, placeSummary:
			default:
				continue
			}
			fs = append(fs, s.saltMisses(k)...)
			fs = append(fs, s.warmthMisses(k)...)
		}
	}
	return fs
}

func (s *sentence) saltMisses(k *content.Keeping) (fs []Finding) {
	if !k.Salt.Set() || !s.anyOf("salt brine") {
		return nil
	}
	for _, f := range s.figures() {
		if f.unit != content.Percent || s.anyOf("acidity vinegar") || s.isConditional(f.from) || s.stance(hit{from: f.from, to: f.to}) != told {
			continue
		}
		if overlap(f, k.Salt.V.Quantity) {
			continue
		}
		miss := Finding{
			Pos:     s.pos(f.from),
			Message: fmt.Sprintf("%s of salt here, where the front matter has %s", s.words(f.from, f.to), k.Salt.V.Text),
			Advice:  "Write the same in both places.",
			Notes:   []Note{{Pos: k.Salt.Pos, Message: "given here"}},
		}
		if f.in(content.Percent).Cmp(k.Salt.V.Percent()) > 0 {
			miss.Severity = Warning
		}
		fs = append(fs, miss)
	}
	return fs
}

func (s *sentence) warmthMisses(k *content.Keeping) []Finding {
	if !k.Temperature.Set() || !s.anyOf("ferment ferments keep leave crock stand place find temperature room it") || s.forCold() {
		return nil
	}
	if s.anyOf("if under over may might takes cooler warmer slower faster until below above boil oven wants") {
		return nil
	}
	var first *mention
	for _, f := range s.figures() {
		if f.measures != content.TemperatureDim {
			continue
		}
		if overlap(f, k.Temperature.V.Quantity) {
			return nil
		}
		if first == nil && s.stance(hit{from: f.from, to: f.to}) == told {
			first = &f
		}
	}
	if first == nil || compareWhole(first.in(content.Fahrenheit), 110) > 0 {
		return nil
	}
	return []Finding{{
		Pos:      s.pos(first.from),
		Severity: Warning,
		Message:  fmt.Sprintf("%s here, where the front matter has %s for fermenting", s.words(first.from, first.to), k.Temperature.V.Text),
		Advice:   "Write the same in both places.",
		Notes:    []Note{{Pos: k.Temperature.Pos, Message: "given here"}},
	}}
}

// overlap reports whether a figure and a quantity have a value in common.
func overlap(f mention, q content.Quantity) bool {
	said, ok := f.quantity().In(q.Unit)
	if !ok {
		return true
	}
	return said.Low.Cmp(q.High) <= 0 && said.High.Cmp(q.Low) >= 0
}
