package validate

import (
	"math/big"

	"stillroom/content"
)

// jerkyHeat reports jerky that is never said to get hot enough.
var jerkyHeat = &Rule{
	ID:       "jerky-heat",
	Severity: Error,
	Summary:  "jerky without a step that heats it to 160 F, poultry to 165 F",
	Doc: `A dryer warms meat so gently that bacteria get used to it and live. Strips are heated
to 160 F, poultry to 165 F, in their marinade before they are dried or in the oven
after. Let a step say so in figures, or dry at such a temperature.`,
	Source: Source{
		Title:   "Drying: questions and answers, University of Illinois Extension",
		Address: "https://extension.illinois.edu/food-preservation/drying-faq",
	},
	CheckKeeping: checkJerkyHeat,
}

func checkJerkyHeat(r *content.Recipe, m *Match) []Finding {
	if m.Keeping.Way.V != content.Drying {
		return nil
	}
	for _, p := range r.Produce {
		food, _ := LookUpProduce(p.V)
		limit, said := LimitOf("dry-jerky-temp"), []string{"160", "165", "71 °c", "74 °c", "71 c", "74 c"}
		switch food.Group {
		case Meats, Fishes:
		case Poultries:
			limit, said = LimitOf("dry-jerky-poultry"), []string{"165", "74 °c", "74 c"}
		default:
			continue
		}
		if stepsSay(r, said...) || hotterThan(m.Keeping.Temperature.V, limit.Low) {
			continue
		}
		return []Finding{{
			Pos:     p.Pos,
			Message: "no step heats " + p.V + " to " + limit.Value + " °F",
			Advice:  "Heat the strips in their marinade before drying, or in the oven after, and give the temperature.",
			Source:  limit.Source,
		}}
	}
	return nil
}

// hotterThan reports whether a temperature reaches that many degrees
// Fahrenheit.
func hotterThan(t content.Temperature, least *big.Rat) bool {
	f, ok := t.In(content.Fahrenheit)
	return ok && f.High.Cmp(least) >= 0
}
