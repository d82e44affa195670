package validate

import "stillroom/content"

// soupBeans reports dried beans or peas that go into a soup unsoaked.
var soupBeans = &Rule{
	ID:       "soup-beans",
	Severity: Error,
	Summary:  "dried beans or peas in a canned soup that are not soaked first",
	Doc: `Dried beans swell in the jar, drink up the liquid that carries the heat, and leave
a solid middle. They are soaked and boiled before they go in; let a step say so.`,
	Source: Source{
		Title:   "Canning soups, Clemson Cooperative Extension",
		Address: "https://clemson.edu/extension/food/canning/canning-tips/05canning-soups.html",
	},
	CheckKeeping: checkSoupBeans,
}

// dryLegumes are the foods that are dry unless something else is said.
var dryLegumes = map[string]bool{"dried bean": true, "dried pea": true, "lentil": true, "chickpea": true, "soybean": true, "black-eyed pea": true}

func checkSoupBeans(r *content.Recipe, m *Match) []Finding {
	if !m.isSoup() {
		return nil
	}
	var fs []Finding
	for _, in := range m.inJar() {
		if !dryLegumes[in.Class.Produce.Name] || stepsSay(r, "soak", "soaked", "soaking", "rehydrate", "rehydrated", "cooked beans", "canned beans") {
			continue
		}
		fs = append(fs, Finding{
			Pos:     in.Pos,
			Message: in.Item + ": no step soaks and boils them first",
			Advice:  "Say in a step that they are soaked 12 to 18 hours and boiled 30 minutes.",
		})
	}
	return fs
}
