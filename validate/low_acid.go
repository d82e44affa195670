package validate

import (
	"fmt"

	"stillroom/content"
)

// lowAcid reports low-acid food canned without pressure.
var lowAcid = &Rule{
	ID:       "low-acid",
	Severity: Error,
	Summary:  "low-acid food in boiling water or steam",
	Doc: `Vegetables, meat, fish and a few fruits lie above pH 4.6, where botulinum spores
grow. Boiling does not kill the spores, however long: that takes 240 F (116 C),
which only a pressure canner reaches. Three people were paralysed in 2018 by peas
canned in boiling water.

A vegetable may go into boiling water only by a process that was tested with
enough acid: a pickle, a relish, a salsa. Cite that process, can the food under
pressure by its own, or freeze it.`,
	Source: Source{
		Title:   "Top questions on food preservation, University of New Hampshire Extension",
		Address: "https://extension.unh.edu/blog/2017/08/top-food-preservation-questions",
	},
	CheckKeeping: checkLowAcid,
}

func checkLowAcid(r *content.Recipe, m *Match) []Finding {
	w := m.Keeping.Way.V
	if w != content.BoilingWater && w != content.AtmosphericSteam {
		return nil
	}
	if m.Process != nil && m.Process.Acidity == Acidified || m.Keeping.TestedBy != nil {
		return nil
	}
	var fs []Finding
	for _, p := range r.Produce {
		food, ok := LookUpProduce(p.V)
		if !ok || food.Acidity != LowAcid || m.listed(food.Name) {
			continue
		}
		fs = append(fs, Finding{
			Pos:     p.Pos,
			Message: fmt.Sprintf("%s: low-acid food (pH %s), which cannot be canned in %s", p.V, phWords(food), plainWay(w)),
			Advice:  "Use a pressure process of its own, or a process that was tested with acid; or freeze it.",
			Notes:   []Note{{Pos: m.Keeping.Way.Pos, Message: "canned without pressure here"}},
		})
	}
	return fs
}

// listed reports whether the cited process names that food.
func (m *Match) listed(name string) bool {
	return m.Process != nil && m.Process.names(name)
}

// phWords gives the published range of a food's pH.
func phWords(p Produce) string {
	if p.High == nil {
		return "over 4.6"
	}
	if p.Low.Cmp(p.High) == 0 {
		return p.High.FloatString(1)
	}
	return p.Low.FloatString(1) + "-" + p.High.FloatString(1)
}

// plainWay says a way as a cook says it.
func plainWay(w content.Way) string {
	switch w {
	case content.BoilingWater:
		return "boiling water"
	case content.AtmosphericSteam:
		return "steam"
	case content.PressureCanner:
		return "a pressure canner"
	}
	return string(w)
}
