package validate

import "stillroom/content"

// dryUntil gives advice on drying that is told by the hour alone.
var dryUntil = &Rule{
	ID:       "dry-until",
	Severity: Advice,
	Summary:  "drying told by hours only, without a test of dryness",
	Doc: `How long food takes to dry depends on the day, the dryer and the slices. Say how it is
when it is done: leathery, brittle, bending without sticking, no beads of moisture when
it is torn.`,
	Source: Source{
		Title:   "Illinois Extension, drying FAQ",
		Address: "https://extension.illinois.edu/food-preservation/drying-faq",
	},
	CheckText: checkDryUntil,
}

func checkDryUntil(t *Text) []Finding {
	if t.Recipe == nil || len(t.Recipe.Body.Method) == 0 || !t.hasWay(content.Drying) {
		return nil
	}
	for s := range t.sentences(placeStep, placeNotes, placeHead) {
		if s.anyOf("leathery leather brittle crisp crisply bend bends bending snap snaps crack cracks crumble crumbles rattle sticky stick tacky beads moisture pliable shatter shatters hard papery rustle") {
			return nil
		}
	}
	return []Finding{{
		Pos:     t.Recipe.Body.Method[0].Pos,
		Message: "no step says how it looks or feels when it is dry",
		Advice:  "Say: leathery, brittle, or no beads of moisture when torn.",
	}}
}
