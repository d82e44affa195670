package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// acidShort reports jars with less acid than their process was tested with.
var acidShort = &Rule{
	ID:       "acid-short",
	Severity: Error,
	Summary:  "less acid in a jar than its process was tested with",
	Doc: `The acid of each jar is worked out: from what goes into each jar, or from the
ingredients and the number of jars that they fill. It is compared with the tested
dose for that size of jar, or with the tested recipe at the largest yield that
was published for it.

For tomatoes 1 tablespoon of bottled lemon juice, 1/4 teaspoon of citric acid and
2 tablespoons of 5 per cent vinegar are the same. Bottled lemon or lime juice may
stand for vinegar in equal volume where the publication says so, never the other
way round. Offset sharpness with sugar, never by cutting acid.`,
	Source: Source{
		Title:   "Tomatoes, USDA Complete Guide to Home Canning, Guide 3, introduction",
		Address: "https://mail.recipesource.com/misc/canning/tomatoes-introduction1.html",
	},
	CheckKeeping: checkAcidShort,
}

func checkAcidShort(r *content.Recipe, m *Match) []Finding {
	k := m.Keeping
	if !m.reliesOnAcid() || !k.Acid.Set() || k.Acid.V.Source == content.AcidNatural {
		return nil
	}
	n, have := m.need(), m.supplies(r.Yield.V)
	if fs := acidUnknown(m, n, have); fs != nil {
		return fs
	}
	if n.Origin == AcidInEachJar {
		return eachJarShort(m, n, have)
	}
	return recipeShort(m, n, have)
}

// acidUnknown reports acid that is not there, or whose amount in a jar cannot
// be worked out. Acid that the process was not tested with is left to
// acid-other.
func acidUnknown(m *Match, n AcidNeed, have []supply) []Finding {
	if len(n.Choices) > 0 && len(have) > 0 && !anyAccepted(n, have) {
		return []Finding{}
	}
	if len(have) == 0 {
		return []Finding{{
			Pos:     m.Keeping.Acid.Pos,
			Message: "no acid is among the ingredients",
			Advice:  m.acidAdvice(),
			Source:  m.Process.Source(),
		}}
	}
	for _, s := range have {
		if s.perPint != nil || !n.accepts(s.kind) {
			continue
		}
		return []Finding{{
			Pos:     s.item.Pos,
			Message: fmt.Sprintf("how much %s goes into a jar cannot be worked out", s.item.Item),
			Advice:  "Give its amount by volume, and the yield as a number of jars of one size.",
		}}
	}
	return nil
}

func anyAccepted(n AcidNeed, have []supply) bool {
	for _, s := range have {
		if n.accepts(s.kind) {
			return true
		}
	}
	return false
}

// eachJarShort compares the sum of all accepted acids, in tablespoons of lemon
// juice, with the dose.
func eachJarShort(m *Match, n AcidNeed, have []supply) []Finding {
	sum := new(big.Rat)
	for _, s := range have {
		if juice, ok := LemonJuice(s.kind, s.perPint, content.Tablespoon); ok && n.accepts(s.kind) {
			sum.Add(sum, juice)
		}
	}
	least := new(big.Rat)
	for i, c := range n.Choices {
		if dose, _ := c.PerPint(); dose != nil && (i == 0 || compare(dose, least) < 0) {
			least = dose
		}
	}
	if compare(sum, least) >= 0 {
		return nil
	}
	return []Finding{{
		Pos:     m.Keeping.Acid.Pos,
		Message: fmt.Sprintf("each jar gets %s of the tested acid", share(sum, least)),
		Advice:  m.acidAdvice(),
		Source:  m.Process.Source(),
	}}
}

// recipeShort finds the published way to bring the acid that the recipe comes
// nearest to, and reports what it lacks of it.
func recipeShort(m *Match, n AcidNeed, have []supply) []Finding {
	var nearestMiss []Finding
	for _, c := range n.Choices {
		miss := choiceShort(m, n, c, have)
		if len(miss) == 0 {
			return nil
		}
		if nearestMiss == nil {
			nearestMiss = miss
		}
	}
	return nearestMiss
}

// choiceShort compares each dose of a choice with what there is of it. Juice
// that stands for vinegar counts in equal volume.
func choiceShort(m *Match, n AcidNeed, c AcidChoice, have []supply) []Finding {
	for _, d := range c.Doses {
		want := d.perPint
		if want == nil {
			continue
		}
		got := new(big.Rat)
		place := m.Keeping.Acid.Pos
		for _, s := range have {
			if s.kind == d.Kind || s.kind == ItemCitrusJuice && d.Kind == ItemVinegar && n.LemonForVinegar {
				got.Add(got, s.perPint)
				place = s.item.Pos
			}
		}
		if compare(got, want) < 0 {
			return []Finding{{
				Pos:     place,
				Message: fmt.Sprintf("each jar gets %s of the tested %s", share(got, want), plainAcid[d.Kind]),
				Advice:  m.acidAdvice() + " Count the jars of the yield as well.",
				Source:  m.Process.Source(),
			}}
		}
	}
	return nil
}

// plainAcid names the acids that doses are of.
var plainAcid = map[ItemKind]string{
	ItemVinegar: "vinegar", ItemCitrusJuice: "lemon or lime juice", ItemCitricAcid: "citric acid",
}

// share says how much of a dose there is: "none", "55%".
func share(got, want *big.Rat) string {
	if got.Sign() == 0 {
		return "none"
	}
	x := new(big.Rat).Quo(got, want)
	x.Mul(x, big.NewRat(100, 1))
	return new(big.Int).Div(x.Num(), x.Denom()).String() + "%"
}
