package validate

import "stillroom/content"

// dryingTemperature gives advice on fruit and vegetables that are dried too
// cool or too hot.
var dryingTemperature = &Rule{
	ID:       "drying-temperature",
	Severity: Advice,
	Summary:  "fruit or vegetables dried cooler or hotter than published",
	Doc: `Fruit and vegetables are dried at 135 to 140 F. Cooler, they sour before they are dry;
hotter, a crust shuts the moisture in and they mould in the jar. Herbs and nuts are
dried cooler and are left alone; meat has a rule of its own.`,
	Source: Source{
		Title:   "Canning, Freezing, Storing Garden Produce, USDA AIB 410 (1977), drying",
		Address: "https://bitlit.ru/chapter/en/united-states-department-of-agriculture/canning-freezing-storing-garden-produce/drying-68",
	},
	CheckKeeping: func(r *content.Recipe, m *Match) []Finding {
		t := m.Keeping.Temperature
		if m.Keeping.Way.V != content.Drying || !t.Set() || !driesHot(r) {
			return nil
		}
		limit := LimitOf("dry-temp")
		f, ok := t.V.In(content.Fahrenheit)
		switch {
		case !ok:
			return nil
		case f.Low.Cmp(limit.Low) < 0:
			return []Finding{temperatureOff(t, "under the published", limit)}
		case f.High.Cmp(limit.High) > 0:
			return []Finding{temperatureOff(t, "over the published", limit)}
		}
		return nil
	},
}

// driesHot reports whether all that is dried is fruit or vegetables.
func driesHot(r *content.Recipe) bool {
	for _, p := range r.Produce {
		switch food, _ := LookUpProduce(p.V); food.Group {
		case "", Herbs, Nuts, Meats, Poultries, Fishes, Shellfish, Eggs, Dairies:
			return false
		}
	}
	return len(r.Produce) > 0
}
