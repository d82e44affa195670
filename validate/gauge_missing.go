package validate

import (
	"fmt"

	"stillroom/content"
)

// gaugeMissing reports a pressure process without pressures for both kinds of
// gauge.
var gaugeMissing = &Rule{
	ID:       "gauge-missing",
	Severity: Error,
	Summary:  "a pressure process without pressures, or for one kind of gauge only",
	Doc: `10 pounds on a weight is not 10 pounds on a dial: the two gauges have figures
and bands of their own, and which one a reader has is not known. Write both
"dial:" and "weighted:", each with its bands.

Without any pressure the recipe is refused. With one of the two it is warned of:
readers with the other gauge have no figure.`,
	Source: Source{
		Title:   "University of Missouri Extension, food safety question 163",
		Address: "http://missourifamilies.org/quick/foodsafetyqa/qafs163.htm",
	},
	CheckKeeping: checkGaugeMissing,
}

func checkGaugeMissing(_ *content.Recipe, m *Match) []Finding {
	if m.Keeping.Way.V != content.PressureCanner {
		return nil
	}
	var fs []Finding
	for _, j := range m.Jars {
		dial, weighted := len(j.Entry.Dial) > 0, len(j.Entry.Weighted) > 0
		switch {
		case !dial && !weighted:
			fs = append(fs, Finding{
				Pos:     j.Entry.Pos,
				Message: "no pressure for a dial gauge nor for a weighted one",
				Advice:  "Write dial: and weighted: with the pressure of each band.",
			})
		case !dial:
			fs = append(fs, oneGauge(j, "dial"))
		case !weighted:
			fs = append(fs, oneGauge(j, "weighted"))
		}
	}
	return fs
}

func oneGauge(j JarMatch, lacks string) Finding {
	return Finding{
		Pos:      j.Entry.Pos,
		Severity: Warning,
		Message:  fmt.Sprintf("no pressure for a %s gauge", lacks),
		Advice:   fmt.Sprintf("Write %s: with the pressure of each band, so that readers with either gauge are served.", lacks),
	}
}
