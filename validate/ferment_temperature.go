package validate

import (
	"fmt"

	"stillroom/content"
)

// fermentTemperature reports a ferment that is kept too cold or too warm.
var fermentTemperature = &Rule{
	ID:       "ferment-temperature",
	Severity: Warning,
	Summary:  "a ferment kept colder or warmer than published",
	Doc: `Between 70 and 75 F kraut and dill pickles are done in 3 to 4 weeks, between 60 and 65
in 5 to 6. Under 60 F kraut may never begin; over 75 it softens. Dill pickles take 55
to 80 F. Other vegetables are judged by the wider of the two.`,
	Source: Source{
		Title:   "Sauerkraut, University of Florida IFAS Extension HE 287, after AIB 539",
		Address: "https://edis.ifas.ufl.edu/he287",
	},
	CheckKeeping: checkFermentTemperature,
}

func checkFermentTemperature(r *content.Recipe, m *Match) []Finding {
	t := m.Keeping.Temperature
	if m.Keeping.Way.V != content.Fermenting || !t.Set() {
		return nil
	}
	low, high := LimitOf("ferment-temp-cool-dill"), LimitOf("ferment-temp-max-dill")
	if inProduce(r, Produce{Name: "cabbage"}) {
		low, high = LimitOf("ferment-temp-min-kraut"), LimitOf("ferment-temp-max-kraut")
	}
	f, _ := t.V.In(content.Fahrenheit)
	switch {
	case f.Low == nil:
		return nil
	case f.Low.Cmp(low.Low) < 0:
		return []Finding{temperatureOff(t, "under the published", low)}
	case f.High.Cmp(high.High) > 0:
		return []Finding{temperatureOff(t, "over the published", high)}
	}
	return nil
}

// temperatureOff speaks of a temperature beyond a limit.
func temperatureOff(t content.Field[content.Temperature], how string, l Limit) Finding {
	figure := l.High
	if how == "under the published" {
		figure = l.Low
	}
	return Finding{
		Pos:     t.Pos,
		Message: fmt.Sprintf("%s is %s %s °F", t.V.Text, how, figure.RatString()),
		Advice:  l.Statement + ".",
		Source:  l.Source,
	}
}
