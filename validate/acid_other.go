package validate

import (
	"fmt"

	"stillroom/content"
)

// acidOther reports an acid that the cited process was not tested with.
var acidOther = &Rule{
	ID:       "acid-other",
	Severity: Error,
	Summary:  "an acid that the cited process was not tested with",
	Doc: `Acids are not alike. Vinegar is weaker than lemon juice and may not take its place;
ascorbic acid (vitamin C) keeps colour and does not make food sour; tablets sold
for canning tomatoes were found to do nothing. Use the acid that the process
names. Bottled lemon or lime juice may take the place of vinegar where the
publication says so.`,
	Source: Source{
		Title:   "Lemon juice and citric acid for canning tomatoes, Penn State Extension",
		Address: "http://extension.psu.edu/food/preservation/faq/lemon-juice-citric-acid-for-canning-tomatoes",
	},
	CheckKeeping: checkAcidOther,
}

func checkAcidOther(r *content.Recipe, m *Match) []Finding {
	k := m.Keeping
	if !m.reliesOnAcid() || !k.Acid.Set() || k.Acid.V.Source == content.AcidNatural {
		return nil
	}
	n, have := m.need(), m.supplies(r.Yield.V)
	if len(n.Choices) == 0 || len(have) == 0 || anyAccepted(n, have) {
		return nil
	}
	return []Finding{{
		Pos:     have[0].item.Pos,
		Message: fmt.Sprintf("%s was not tested with %s", k.Process.V, have[0].item.Item),
		Advice:  m.acidAdvice(),
		Source:  m.Process.Source(),
	}}
}
