package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// acidListed reports a list with less acid than all jars take.
var acidListed = &Rule{
	ID:       "acid-listed",
	Severity: Error,
	Summary:  "less acid in the list than the jars take",
	Doc: `With 2 tablespoons of lemon juice in each of 7 quarts the list needs 14. A reader who
shops and measures by a list with 7 runs out at the fourth jar, or gives each jar half.
List what all the jars take, or leave the juice out of the list and in the acid of the
way of keeping, or write "per jar" beside its amount.`,
	Source:       Source{Title: "arithmetic: the dose of a jar, times the jars"},
	CheckKeeping: checkAcidListed,
}

func checkAcidListed(r *content.Recipe, m *Match) []Finding {
	dose, ok := m.added()
	if !ok || !acidKinds[dose.Class.Kind] {
		return nil
	}
	each, ok := dose.volumeIn(content.Tablespoon)
	jar, all := m.Keeping.Acid.V.Per.Millilitres(), leastVolume(r.Yield.V)
	if !ok || jar == nil || all == nil {
		return nil
	}
	need := new(big.Rat).Mul(each, all)
	need.Quo(need, jar)
	listed, first := new(big.Rat), Item{}
	for _, in := range m.Items {
		if in.Class.Kind != dose.Class.Kind {
			continue
		}
		most, ok := in.in(content.Tablespoon)
		if !ok || content.IsPerJar(in.Item+" "+in.Note) {
			return nil
		}
		if first.Ingredient == nil {
			first = in
		}
		listed.Add(listed, most.High)
	}
	if first.Ingredient == nil || listed.Cmp(need) >= 0 {
		return nil
	}
	return []Finding{{
		Pos:     first.Pos,
		Message: fmt.Sprintf("%s: %s of what the jars take", first.Item, share(listed, need)),
		Advice:  "List what all the jars take together, at the dose that is given for each.",
		Notes:   []Note{{Pos: m.Keeping.Acid.Pos, Message: "the dose of a jar"}},
		Source:  m.Process.Source(),
	}}
}
