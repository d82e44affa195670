package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// saidKeeping reports a time of keeping in the text that is longer than the
// one of the front matter.
var saidKeeping = &Rule{
	ID:       "said-keeping",
	Severity: Warning,
	Summary:  "a keeping time in the text that is longer than the recipe's own",
	Doc: `Labels and pages show how long each way keeps. A sentence that promises longer
leaves the reader to choose; over a year on the shelf is longer than the quality
lasts in any case. Times after opening are not compared.`,
	Source: Source{
		Title: "UC ANR, canning: best within 12 months", Address: "https://ucanr.edu/sites/MFPOC/food-preservation/Canning",
	},
	CheckText: checkSaidKeeping,
}

func checkSaidKeeping(t *Text) []Finding {
	if t.Recipe == nil {
		return nil
	}
	var fs []Finding
	for _, s := range t.counting() {
		for _, f := range s.figures() {
			if f.measures != content.TimeDim || f.high.num == 0 || !s.keepsFor(f) {
				continue
			}
			k := t.keepingFor(s)
			if k == nil || !longer(f, k.Keeps.V) || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: fmt.Sprintf("%s here, where the front matter has %s for %s", s.words(f.from, f.to), k.Keeps.V.Text, k.Way.V),
				Advice:  "Write the same in both places.",
				Notes:   []Note{{Pos: k.Keeps.Pos, Message: "given here"}},
			})
		}
	}
	return fs
}

var (
	keepWords  = fewOf(keeping)
	untilWords = fewOf(keeping + " good fine safe within to") // all that keepsFor looks for before a time
	notKeeping = fewOf("wait ripen mellow mellows cure cures flavor flavour flavors best improve improves ferment fermenting before every old ago sits turning condition bubbling takes least blog diary journal records bees hens garden")
)

const keeping = "keep keeps kept store stored stores last lasts lasting stays"

// keepsFor reports whether a time of days or more is how long something keeps.
func (s *sentence) keepsFor(f mention) bool {
	switch f.unit {
	case content.Day, content.Week, content.Month, content.Year:
	default:
		return false
	}
	if s.has(famOpened) || s.holds(&notKeeping) {
		return false
	}
	if s.isAny(f.from-1, "after") && s.anyIn("still", 0, f.from) && s.anyIn("good fine lovely perfect delicious great fresh sound", 0, f.from) {
		return true // "still good after five years"
	}
	if s.isAny(f.from-1, "after every each in") {
		return false
	}
	for k := f.from - 1; k >= max(0, f.from-9); k-- {
		if parts(s.at(k).after) {
			return false
		}
		if !s.isOne(k, &untilWords) {
			continue
		}
		if s.isOne(k, &keepWords) || s.isAny(k, "good fine safe") && s.anyIn("for up", k, f.from) {
			return true
		}
		if s.isAny(k, "within") || s.isAny(k, "to") && s.isAny(k-1, "up") && s.anyOf("keep keeps store refrigerator fridge freezer shelf pantry refrigerate") {
			return true
		}
	}
	return s.isAny(f.to, "shelf") && s.isAny(f.to+1, "life")
}

// keepingFor gives the way of keeping that a sentence speaks of: by its words,
// or the only one; nil if it is not certain.
func (t *Text) keepingFor(s *sentence) *content.Keeping {
	var found []*content.Keeping
	named := s.waysNamed()
	for i := range t.Recipe.Keeping {
		k := &t.Recipe.Keeping[i]
		if !k.Keeps.Set() {
			continue
		}
		if len(named) == 0 || named[k.Way.V] {
			found = append(found, k)
		}
	}
	if len(found) == 1 && (len(named) > 0 || len(t.Recipe.Keeping) == 1) {
		return found[0]
	}
	return nil
}

// waysNamed gives the ways that the words of a sentence point to; none if they
// point nowhere.
func (s *sentence) waysNamed() map[content.Way]bool {
	ways := map[content.Way]bool{}
	if s.has(famFridge) {
		ways[content.Refrigerator], ways[content.Fermenting] = true, true
	}
	if s.has(famFreezer) {
		ways[content.Freezer] = true
	}
	if len(ways) > 0 {
		return ways
	}
	if s.has(famCupboard) || s.anyOf("dark sealed processed canned") {
		for _, w := range []content.Way{content.BoilingWater, content.AtmosphericSteam, content.PressureCanner, content.Drying, content.CoolStore} {
			ways[w] = true
		}
	}
	return ways
}

// longer reports whether a time is over that of the front matter by more than
// twelve months and a year differ.
func longer(f mention, keeps content.Duration) bool {
	said := mention{low: f.high, high: f.high, unit: f.unit}.in(content.Minute)
	most, _ := keeps.In(content.Minute)
	if said == nil || most.High == nil {
		return false
	}
	return said.Cmp(new(big.Rat).Mul(most.High, big.NewRat(102, 100))) > 0
}
