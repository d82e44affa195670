package validate

import (
	"fmt"

	"stillroom/content"
)

// saidStrength reports a vinegar in the text that is weaker than tested recipes
// take.
var saidStrength = &Rule{
	ID:       "said-strength",
	Severity: Error,
	Summary:  "a vinegar under 5 per cent in the text",
	Doc: `Tested recipes count on vinegar of at least 5 per cent acetic acid. A step or a note
that allows a weaker one undoes what the ingredients say. Pickles for the
refrigerator may use what the cook likes.`,
	Source: Source{
		Title: "USDA Complete Guide to Home Canning, AIB 539 (2015), Guide 6, vinegar (memory)",
	},
	CheckText: checkSaidStrength,
}

func checkSaidStrength(t *Text) []Finding {
	if t.Recipe != nil && !t.canned() {
		return nil
	}
	least := LimitRat("vinegar-acidity")
	var fs []Finding
	for _, s := range t.counting() {
		for _, f := range s.figures() {
			if f.unit != content.Percent || !s.anyOf("vinegar acidity acetic") || !whereVinegarCounts(t, s) {
				continue
			}
			said := f.in(content.Percent)
			if compare(said, least) >= 0 || compareWhole(said, 2) < 0 || s.anyIn("salt weight brine sugar", f.from-3, f.to+3) || s.isConditional(f.from) {
				continue
			}
			if s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: fmt.Sprintf("vinegar of %s is weaker than tested recipes take", s.words(f.from, f.to)),
				Advice:  "Ask for at least 5 per cent, as the label says.",
			})
		}
	}
	return fs
}

func whereVinegarCounts(t *Text, s *sentence) bool {
	if t.Recipe != nil {
		return !s.forCold()
	}
	return !s.forCold() && !s.anyOf("salad cucumbers eaten evening cupboard")
}

// isConditional reports whether a place is in an if-clause, or under "some".
func (s *sentence) isConditional(i int) bool {
	for k := i - 1; k >= 0; k-- {
		if s.isAny(k, "if when some") {
			return true
		}
		if parts(s.at(k).after) {
			break
		}
	}
	return false
}
