package validate

import (
	"fmt"

	"stillroom/content"
)

// gelNoAltitude reports a fixed temperature for the set of jam, without a word
// that it falls with altitude.
var gelNoAltitude = &Rule{
	ID:       "gel-no-altitude",
	Severity: Warning,
	Summary:  "a set at 220 °F, without a word on altitude",
	Doc: `Jam without added pectin sets at 8 °F above the temperature at which water boils:
at 220 °F by the sea, at 212 °F at about 4,000 ft. In a high kitchen 220 °F makes
toffee. Say "8 °F above boiling", or give the figure for sea level and say so.`,
	Source: Source{
		Title:   "University of Tennessee SP325-F",
		Address: "https://scribd.com/document/343592677/low-or-no-sugar-in-jams-jellies-and-preserves-pdf",
	},
	CheckText: checkGelNoAltitude,
}

func checkGelNoAltitude(t *Text) []Finding {
	if t.Recipe == nil {
		return nil
	}
	var first *Finding
	for s := range t.sentences(placeStep, placeHead, placeNotes, placeCaution, placeSummary) {
		if s.correctsGel() {
			return nil
		}
		for _, f := range s.figures() {
			if first == nil && s.isGelPoint(f) && s.stance(hit{from: f.from, to: f.to}) == told {
				first = &Finding{
					Pos:     s.pos(f.from),
					Message: fmt.Sprintf("%s is the set at sea level only", s.words(f.from, f.to)),
					Advice:  "Say 8 °F (4 °C) above the temperature at which water boils in the reader's kitchen.",
				}
			}
		}
	}
	if first == nil {
		return nil
	}
	return []Finding{*first}
}

// isGelPoint reports whether a temperature is the one at which jam sets.
func (s *sentence) isGelPoint(f mention) bool {
	if f.measures != content.TemperatureDim {
		return false
	}
	deg := f.in(content.Fahrenheit)
	if compareWhole(deg, 216) < 0 || compareWhole(deg, 223) > 0 {
		return false
	}
	return s.anyOf("gel gels gelling set sets setting jelly jam marmalade thermometer point stage sheet sheets temperature boil cook cooking reaches") && !s.anyOf("oven dehydrator preheat candy")
}

var (
	altitudeWords = fewOf("altitude elevation")
	seaWord       = fewOf("sea")
)

// correctsGel reports whether a sentence says how the set moves with altitude.
func (s *sentence) correctsGel() bool {
	if s.holds(&altitudeWords) || s.holds(&seaWord) && s.anyOf("level") {
		return true
	}
	for _, f := range s.figures() {
		if (f.is(8, content.Fahrenheit) || f.low == ratio{4, 1} && f.unit == content.Celsius || f.low == ratio{8, 1} && f.unit == content.Fahrenheit) && s.near("above over boiling higher") {
			return true
		}
	}
	return false
}
