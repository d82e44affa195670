package validate

import (
	"slices"

	"stillroom/content"
)

// outdoorDried reports food dried outdoors and stored as it is.
var outdoorDried = &Rule{
	ID:       "outdoor-dried",
	Severity: Warning,
	Summary:  "food dried outdoors and not heated or frozen before it is stored",
	Doc: `Insects lay eggs on what dries outdoors. Freeze it at 0 °F for 48 hours, or heat it in
an oven at 160 °F for 30 minutes, before it is put away.`,
	Source: Source{
		Title: "MSU Extension, pasteurising dried food (from a copy)",
	},
	CheckText: checkOutdoorDried,
}

var outOfDoors = fewOf("sun outdoors outside sunshine porch roof line")

func checkOutdoorDried(t *Text) []Finding {
	if t.Recipe == nil || !t.hasWay(content.Drying) {
		return nil
	}
	var outdoors *sentence
	at := 0
	for s := range t.sentences(placeStep, placeHead) {
		for i := range s.len() {
			if s.isOne(i, &outOfDoors) && outdoors == nil && s.near("dry dries drying dried lay spread hang set leave") && s.stance(hit{from: i, to: i + 1}) == told {
				outdoors, at = s, i
			}
		}
		if s.anyOf("freeze frozen freezer pasteurize pasteurise pasteurizing") || s.anyOf("oven") && slices.ContainsFunc(s.figures(), func(f mention) bool { return f.measures == content.TemperatureDim }) {
			return nil
		}
	}
	if outdoors == nil {
		return nil
	}
	return []Finding{{
		Pos:     outdoors.pos(at),
		Message: "dried outdoors, and not heated or frozen before it is stored",
		Advice:  "Add a step: 48 hours in the freezer, or 30 minutes in an oven at 160 °F.",
	}}
}
