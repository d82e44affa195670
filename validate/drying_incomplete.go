package validate

import "stillroom/content"

// dryingIncomplete reports a dried food without its temperature or time.
var dryingIncomplete = &Rule{
	ID:       "drying-incomplete",
	Severity: Error,
	Summary:  "a dried food without its temperature or its time",
	Doc: `Dried too cool, food spoils before it is dry; too hot, it hardens outside and
stays wet within. Say how hot the dryer or the oven is ("temperature: 135 F") and
how long it takes ("duration: 6-12 hours"), and in the steps how to tell that it
is done.`,
	Source: Source{
		Title:   "Canning, Freezing, Storing Garden Produce, USDA AIB 410 (1977), drying",
		Address: "https://bitlit.ru/chapter/en/united-states-department-of-agriculture/canning-freezing-storing-garden-produce/drying-68",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		k := m.Keeping
		if k.Way.V != content.Drying {
			return nil
		}
		return wanting(m, []want{
			{"temperature", k.Temperature.Set(), "how hot the dryer or the oven is, as in 135 F"},
			{"duration", k.Duration.Set(), "how long it takes, as in 6-12 hours"},
		})
	},
}
