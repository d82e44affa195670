package validate

import (
	"fmt"

	"stillroom/content"
)

// pressureHigh reports a pressure over the highest that is recommended.
var pressureHigh = &Rule{
	ID:       "pressure-high",
	Severity: Warning,
	Summary:  "a pressure over 15 psi",
	Doc: `Pressures over 15 psi are not recommended for home canning: no times were tested
for them, and most canners cannot hold them. More pressure does not buy a shorter
time.`,
	Source:    Source{Title: "USDA Complete Guide to Home Canning, AIB 539 (2015) (memory)"},
	CheckText: checkPressureHigh,
}

func checkPressureHigh(t *Text) []Finding {
	if t.Recipe != nil && !t.hasWay(content.PressureCanner) {
		return nil
	}
	var fs []Finding
	for _, s := range t.counting() {
		for _, f := range s.pressures() {
			if p := f.in(content.PSI); p == nil || p.Cmp(LimitRat("gauge-psi-most")) <= 0 || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: fmt.Sprintf("%s is more than is recommended", s.words(f.from, f.to)),
				Advice:  "Take the pressure and the time that the process lists.",
			})
		}
	}
	return fs
}
