package validate

import "stillroom/content"

// cannerWater reports a pressure-canned recipe whose steps put no measured
// water in the canner.
var cannerWater = &Rule{
	ID:       "canner-water",
	Severity: Warning,
	Summary:  "a pressure canner without a word on how much water goes in",
	Doc: `A pressure canner takes 2 to 3 inches of water, or the amount that the process asks
for: too little boils dry, too much takes long to vent. This is not on the page by
itself, so a step must say it.`,
	Source:    Source{Title: "USDA Complete Guide to Home Canning, AIB 539 (2015), pressure canning (memory)"},
	CheckText: checkCannerWater,
}

func checkCannerWater(t *Text) []Finding {
	if t.Recipe == nil || len(t.Recipe.Body.Method) == 0 || !t.hasWay(content.PressureCanner) {
		return nil
	}
	for s := range t.sentences(placeStep) {
		if !s.anyOf("water") || !s.has(famCanner) && !s.near("canner") {
			continue
		}
		for _, f := range s.figures() {
			if d := f.measures; d == content.LengthDim || d == content.VolumeDim {
				return nil
			}
		}
	}
	return []Finding{{
		Pos:     t.Recipe.Body.Method[0].Pos,
		Message: "no step says how much water goes into the pressure canner",
		Advice:  "Say 2 to 3 inches of hot water, or what the process asks for.",
	}}
}
