package validate

import "stillroom/content"

// freezerContainer reports a freezer container that is too large.
var freezerContainer = &Rule{
	ID:       "freezer-container",
	Severity: Warning,
	Summary:  "a freezer container of over half a gallon",
	Doc: `Food in a large container freezes so slowly that its middle spoils in looks and taste
before it is hard. Half a gallon is the most. A bag that is laid flat is no such
container.`,
	Source: Source{
		Title:   "Containers for freezing, National Center for Home Food Preservation",
		Address: "http://nchfp.uga.edu/how/freeze/containers.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		k := m.Keeping
		most := LimitOf("freeze-container-largest")
		if k.Way.V != content.Freezer || isBag(k.Container.V) || !overHalfGallon(k.Container.V, most.High) {
			return nil
		}
		return []Finding{{
			Pos:     k.Container.Pos,
			Message: k.Container.V + ": more than half a gallon freezes too slowly",
			Advice:  "Use containers of half a gallon at most.",
			Source:  most.Source,
		}}
	},
}
