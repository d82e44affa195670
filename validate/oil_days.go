package validate

import "stillroom/content"

// oilDays reports garlic, herbs or vegetables in oil that are kept too long
// in the refrigerator.
var oilDays = &Rule{
	ID:       "oil-days",
	Severity: Error,
	Summary:  "garlic, herbs or vegetables in oil for over 7 days in the refrigerator",
	Doc: `A refrigerator slows the spores in garlic oil, pesto and vegetables under oil, and
does not stop them. The published limits run from 4 days to 10; over 7 is refused
here, over 4 is a warning. For longer, freeze it.

What has more vinegar or juice than oil is a pickle or a dressing, and none of this.`,
	Source: Source{
		Title:   "Garlic in oil, National Center for Home Food Preservation",
		Address: "http://nchfp.uga.edu/how/freeze/garlic_oil.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		most, strict := LimitOf("garlic-oil-days-7"), LimitOf("garlic-oil-days-4")
		k := m.Keeping
		switch {
		case k.Way.V != content.Refrigerator || !keepsOver(k, strict) || len(m.freshUnderOil()) == 0:
			return nil
		case keepsOver(k, most):
			return []Finding{tooLong(k, most, Error)}
		}
		return []Finding{tooLong(k, strict, Warning)}
	},
}
