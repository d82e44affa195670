package validate

import "stillroom/content"

// freezerIncomplete reports a frozen food without its container or headspace.
var freezerIncomplete = &Rule{
	ID:       "freezer-incomplete",
	Severity: Error,
	Summary:  "a frozen food without its container, or without headspace in a rigid one",
	Doc: `Food swells as it freezes. Say what it is packed in ("container: pint freezer
boxes, wide top") and how much room is left ("headspace: 1/2 in"). A bag that is
pressed flat needs no headspace.`,
	Source: Source{
		Title:   "Headspace to allow between packed food and closure, National Center for Home Food Preservation",
		Address: "http://nchfp.uga.edu/how/freeze/headspace.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		k := m.Keeping
		if k.Way.V != content.Freezer {
			return nil
		}
		wants := []want{{"container", k.Container.Set(), "what it is packed in, as in pint freezer boxes"}}
		if !isBag(k.Container.V) {
			wants = append(wants, want{"headspace", k.Headspace.Set(), "the room left for swelling, as in 1/2 in"})
		}
		return wanting(m, wants)
	},
}
