package validate

import (
	"math/big"
	"slices"

	"stillroom/content"
)

// notTestedWith reports an ingredient of low acid that the cited process was
// not tested with.
var notTestedWith = &Rule{
	ID:       "not-tested-with",
	Severity: Error,
	Summary:  "a vegetable, a bean or meat that the cited process was not tested with",
	Doc: `Corn in a salsa, carrots in a jam, an onion in plain tomato sauce, bacon with the
beans: each brings less acid and another pace of heat than was tested. One kind of
pepper may take the place of another; no other vegetable may be added to a tested
recipe, and none to a plain food. Tomato sauce with vegetables or meat has processes
of its own, under pressure. Soups and mixed vegetables have processes for mixtures.

Dried herbs and spices are free; for garlic and fresh herbs in what the recipe's own
vinegar keeps see herbs-over. One small hot pepper or two cloves of garlic do no harm.`,
	Source: Source{
		Title:   "Preserve it: how to make safe personalized recipes, UC Master Food Preservers of the Central Sierra",
		Address: "https://www.ucanr.edu/site/uc-master-food-preservers-central-sierra/article/preserve-it-series-how-make-safe-personalized",
	},
	CheckKeeping: checkNotTestedWith,
}

func checkNotTestedWith(r *content.Recipe, m *Match) []Finding {
	if m.Process == nil || !m.Keeping.Way.V.Canned() {
		return nil
	}
	var fs []Finding
	for _, in := range m.inJar() {
		food := in.Class.Produce
		if in.role() != RoleLowAcid && !m.isGarlicOver(in) || m.testedWith(food) || in.isOnePepper() || inProduce(r, food) {
			continue
		}
		fs = append(fs, Finding{
			Pos:     in.Pos,
			Message: in.Item + ": " + m.Process.ID + " was not tested with it",
			Advice:  m.insteadOf(food),
			Notes:   []Note{{Pos: m.Keeping.Process.Pos, Message: "cited here"}},
			Source:  m.Process.Source(),
		})
	}
	return fs
}

// testedWith reports whether the process, or a published recipe of it, has
// the food, or another kind of pepper in its place.
func (m *Match) testedWith(food Produce) bool {
	if m.Process.names(food.Name) || slices.ContainsFunc(m.Tested, func(c comparison) bool { return c.tested.holds(food) }) {
		return true
	}
	return food.Group == Peppers && len(m.Tested) == 0 && slices.ContainsFunc(peppers, m.Process.names)
}

var peppers = []string{"pepper", "bell pepper", "hot pepper", "jalapeno", "banana pepper", "pimiento"}

// isOnePepper allows the one small hot pepper that may be added to a jar.
func (in Item) isOnePepper() bool {
	q, ok := in.counted()
	return ok && in.Class.Produce.Group == Peppers && in.Class.Produce.Name != "bell pepper" && q.High.Cmp(feet(1)) <= 0
}

// isGarlicOver reports whether an ingredient is more garlic than the two cloves
// that do no harm, in food that is kept by the acid of fruit or of a dose.
func (m *Match) isGarlicOver(in Item) bool {
	if in.Class.Kind != ItemGarlic || in.ToTaste || m.Keeping.Way.V == content.PressureCanner || m.need().Origin == AcidFromRecipe {
		return false
	}
	spoons, ok := in.in(content.Teaspoon)
	return !in.isTwoCloves() && (!ok || spoons.High.Cmp(big.NewRat(2, 1)) > 0)
}

// inProduce reports whether the produce list names the food, so that
// other-food judges it.
func inProduce(r *content.Recipe, food Produce) bool {
	return slices.ContainsFunc(r.Produce, func(f content.Field[string]) bool {
		p, _ := LookUpProduce(f.V)
		return p.Name == food.Name
	})
}

func (m *Match) insteadOf(food Produce) string {
	if m.need().Origin == AcidInEachJar && m.Process.names("tomato") {
		return "Leave it out, or can the sauce under pressure by the process of spaghetti sauce."
	}
	return "Leave it out, or look for a process that has it: \"stillroom processes " + food.Name + "\"."
}
