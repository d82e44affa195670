package validate

import (
	"slices"

	"stillroom/content"
)

// oilKeptWarm reports garlic, herbs or vegetables in oil that are kept at
// room temperature.
var oilKeptWarm = &Rule{
	ID:       "oil-kept-warm",
	Severity: Error,
	Summary:  "garlic, fresh herbs or vegetables in oil at room temperature",
	Doc: `Under oil there is no air, garlic and herbs have no acid, and spores from the soil
sit on both: there are outbreaks on record. Keep garlic,
pesto and vegetables in oil in the refrigerator for a few days, or freeze them.

One university has published a way to make garlic, basil, oregano and rosemary
sour enough for oil, with citric acid measured by weight, and for nothing else:
lemon juice and vinegar do not do it. With citric acid and only those four this is
a warning to follow that publication to the letter.`,
	Source: Source{
		Title:   "Preserving foods in oil, Penn State Extension",
		Address: "http://extension.psu.edu/food/preservation/issues/preserving-foods-in-oil",
	},
	CheckKeeping: checkOilKeptWarm,
}

// acidifiable are the foods for which acidifying before oil is published.
var acidifiable = []string{"garlic", "basil", "oregano", "rosemary"}

func checkOilKeptWarm(_ *content.Recipe, m *Match) []Finding {
	if m.Keeping.Way.V != content.CoolStore {
		return nil
	}
	fresh := m.freshUnderOil()
	sour := len(m.ofKind(ItemCitricAcid)) > 0 && !slices.ContainsFunc(fresh, func(in Item) bool {
		return !slices.Contains(acidifiable, in.Class.Produce.Name)
	})
	var fs []Finding
	for _, in := range fresh {
		f := Finding{
			Pos:     in.Pos,
			Message: in.Item + ": in oil at room temperature",
			Advice:  "Keep it in the refrigerator for a few days, or freeze it.",
			Notes:   []Note{{Pos: m.Keeping.Way.Pos, Message: "kept here"}},
		}
		if sour {
			f.Severity, f.Source = Warning, infusedOils
			f.Advice = "Follow the university's publication to the letter: weights, citric acid, hours; or freeze it."
		}
		fs = append(fs, f)
	}
	return fs
}

var infusedOils = Source{
	Title:   "Safely infusing oils at home, Oklahoma State University Extension, after the University of Idaho",
	Address: "https://extension.okstate.edu/programs/oklahoma-gardening/recipes/safely-infusing-oils-at-home.html",
}
