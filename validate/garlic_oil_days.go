package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// garlicOilDays reports garlic or herbs in oil that are kept cold for too
// long.
var garlicOilDays = &Rule{
	ID:       "garlic-oil-days",
	Severity: Error,
	Summary:  "garlic, herbs or vegetables in oil kept over a week in the refrigerator",
	Doc: `Cold only slows what garlic, herbs and vegetables in oil may grow. The longest that
is published for the refrigerator is a week or so, the strictest 2 to 4 days: over 7
days is an error, over 4 a warning. Frozen it keeps for months. Garlic and a few
herbs that were soaked in citric acid as tested are another matter.`,
	Source:    Source{Title: "Health Canada, home-made garlic in oil; Pacific Northwest Extension PNW 664"},
	CheckText: checkGarlicOilDays,
}

func checkGarlicOilDays(t *Text) []Finding {
	if t.Recipe != nil && t.canned() {
		return nil
	}
	var fs []Finding
	for _, s := range t.counting() {
		if !s.has(famFridge) || s.has(famFreezer) || s.anyOf("citric acidified") || !s.oilWithHerbs(t) {
			continue
		}
		for _, f := range s.figures() {
			if f.measures != content.TimeDim || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			if weight := garlicOilWeight(f); weight != 0 {
				fs = append(fs, Finding{
					Pos:      s.pos(f.from),
					Severity: weight,
					Message:  fmt.Sprintf("%s is too long for garlic, herbs or vegetables in oil", s.words(f.from, f.to)),
					Advice:   "Say up to 4 days in the refrigerator, or freeze it.",
				})
			}
		}
	}
	return fs
}

// oilWithHerbs reports whether the sentence, or the one before it, or the whole
// recipe is about something fresh in oil.
func (s *sentence) oilWithHerbs(t *Text) bool {
	if s.has(famOil) && s.has(famHerb) || t.hasHerbsInOil() {
		return true
	}
	b := s.before()
	return b != nil && b.has(famOil) && b.has(famHerb)
}

func garlicOilWeight(f mention) Severity {
	days := mention{low: f.high, high: f.high, unit: f.unit}.in(content.Day)
	switch {
	case days.Cmp(LimitRat("garlic-oil-days-7")) > 0:
		return Error
	case days.Cmp(LimitRat("garlic-oil-days-4")) > 0 && days.Cmp(big.NewRat(1, 1)) > 0:
		return Warning
	}
	return 0
}
