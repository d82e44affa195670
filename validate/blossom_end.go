package validate

import "stillroom/content"

// blossomEnd gives advice on cucumber pickles whose steps leave the blossom end
// on.
var blossomEnd = &Rule{
	ID:       "blossom-end",
	Severity: Advice,
	Summary:  "cucumber pickles without a word on the blossom end",
	Doc: `An enzyme in the blossom end of a cucumber softens the whole pickle. Cut a sixteenth
of an inch off that end, the one away from the stem.`,
	Source:    Source{Title: "USDA Complete Guide to Home Canning, AIB 539 (2015), Guide 6 (memory)"},
	CheckText: checkBlossomEnd,
}

func checkBlossomEnd(t *Text) []Finding {
	if t.Recipe == nil || len(t.Recipe.Body.Method) == 0 || !t.ofProduce("cucumber") {
		return nil
	}
	switch t.Recipe.Kind.V {
	case content.Pickle, content.Ferment, content.Relish:
	default:
		return nil
	}
	for s := range t.sentences(placeStep, placeHead, placeNotes) {
		if s.anyOf("blossom") || s.anyOf("ends end") && s.anyOf("trim cut slice off remove both") {
			return nil
		}
	}
	return []Finding{{
		Pos:     t.Recipe.Body.Method[0].Pos,
		Message: "nothing is said of the blossom end of the cucumbers",
		Advice:  "Say in a step: cut a sixteenth of an inch off the blossom end.",
	}}
}
