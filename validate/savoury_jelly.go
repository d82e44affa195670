package validate

import "stillroom/content"

// savouryJelly reports a jelly or jam of peppers, herbs or flowers under the
// process of a fruit.
var savouryJelly = &Rule{
	ID:       "savoury-jelly",
	Severity: Error,
	Summary:  "a jelly of peppers, herbs, flowers or vegetables under the process of fruit",
	Doc: `Peppers, herbs, flowers and tea bring no acid, and there is no general process for
savoury jellies: each published one has its own measure of vinegar. Cite that
process, or keep the jelly in the refrigerator. A few leaves in an apple jelly are
another matter: there the fruit brings the acid.`,
	Source: Source{
		Title:   "Savoury jam videos and food safety, University of Maine thesis, 2020",
		Address: "https://digitalcommons.library.umaine.edu/etd/3262/",
	},
	CheckKeeping: checkSavouryJelly,
}

func checkSavouryJelly(r *content.Recipe, m *Match) []Finding {
	if m.Process == nil || m.Process.Acidity != Acid || !isSpread(r.Kind.V) || hasAcidFruit(m) {
		return nil
	}
	for _, p := range r.Produce {
		if food, ok := LookUpProduce(p.V); ok && food.role() != RoleFruit {
			return []Finding{{
				Pos:     p.Pos,
				Message: p.V + ": no acid of its own, and " + m.Process.ID + " was tested with fruit",
				Advice:  "Cite a process with tested vinegar, such as golden-pepper-jelly, or keep it in the refrigerator.",
				Notes:   []Note{{Pos: m.Keeping.Process.Pos, Message: "cited here"}},
			}}
		}
	}
	return nil
}

func hasAcidFruit(m *Match) bool {
	for _, in := range m.Items {
		if in.Class.Kind == ItemFruit && in.Class.Produce.Acidity == Acid {
			return true
		}
	}
	return false
}
