package validate

import (
	"fmt"

	"stillroom/content"
)

// acidNatural reports food called acid by nature for which that is not borne
// out.
var acidNatural = &Rule{
	ID:       "acid-natural",
	Severity: Error,
	Summary:  `"acid: natural" for food whose process adds acid, or that is not acid by nature`,
	Doc: `"acid: natural" says that the food needs none added. The cited process must bear
that out, or the published pH of all that is in the produce list: its highest
figure is 4.6 or lower. Tomatoes, figs and Asian pears lie on both sides of the
line, and every vegetable lies above it.`,
	Source: Source{
		Title:   "21 CFR 114.3; FDA/CFSAN, Approximate pH of Foods and Food Products (2007)",
		Address: "https://lawserver.com/law/country/us/cfr/21_cfr_114-3",
	},
	CheckKeeping: checkAcidNatural,
}

func checkAcidNatural(r *content.Recipe, m *Match) []Finding {
	k := m.Keeping
	if k.Acid.V.Source != content.AcidNatural || !k.Way.V.Canned() {
		return nil
	}
	if m.reliesOnAcid() {
		return []Finding{{
			Pos:     k.Acid.Pos,
			Message: fmt.Sprintf("%s was tested with acid added", k.Process.V),
			Advice:  m.acidAdvice(),
			Source:  m.Process.Source(),
		}}
	}
	if m.acidByItself() {
		return nil
	}
	for _, p := range r.Produce {
		food, known := LookUpProduce(p.V)
		if known && food.Acidity == Acid {
			continue
		}
		f := Finding{
			Pos:     k.Acid.Pos,
			Message: fmt.Sprintf("no published pH shows that %s is acid by nature", p.V),
			Advice:  "Cite a process that bears it out, or keep the food in the refrigerator or the freezer.",
			Notes:   []Note{{Pos: p.Pos, Message: "named here"}},
		}
		if food.High != nil {
			f.Message = fmt.Sprintf("the pH of %s goes up to %s, over 4.6", p.V, food.High.FloatString(2))
		}
		return []Finding{f}
	}
	return nil
}

// acidByItself reports whether the cited process bears out that no acid has to
// be added: the food has its own, or makes it by fermenting.
func (m *Match) acidByItself() bool {
	if m.Process == nil {
		return false
	}
	return m.Process.Acidity == Acid || m.need().Origin == AcidFromFermenting
}
