package validate

import (
	"fmt"
	"slices"

	"stillroom/content"
)

// acid writes where the acid comes from, where nothing is said of it and the
// process leaves no choice but that of the acid: then the first that is
// published is taken.
func (w *filler) acid(t content.Place, m *Match, jars []*JarProcess) {
	if !t.Empty("acid") || m.Keeping.Way.V == content.PressureCanner && !m.reliesOnAcid() {
		return
	}
	need := m.need()
	value := ""
	switch {
	case need.Origin == AcidInEachJar:
		value = dosePerJar(need, jars)
	case m.acidByItself():
		value = "natural"
	case need.Origin == AcidFromRecipe && anyAccepted(need, m.supplies(w.recipe.Yield.V)):
		value = "in-recipe"
	}
	if value != "" {
		w.set(t, string(m.Keeping.Way.V), "acid", value, "")
	}
}

// dosePerJar writes the first published dose for the largest of some jars.
func dosePerJar(need AcidNeed, jars []*JarProcess) string {
	largest := slices.MaxFunc(jars, func(a, b *JarProcess) int { return JarOunces(a.Jar).Cmp(JarOunces(b.Jar)) })
	doses := need.ForJar(largest.Jar)
	if len(doses) == 0 || doses[0].Doses[0].Amount == nil {
		return ""
	}
	d := doses[0].Doses[0]
	return fmt.Sprintf("%s %s per %s", quantityText(d), doseWords[d.Kind], doses[0].Jar)
}

// quantityText writes the amount of a dose: 2 tbsp.
func quantityText(d AcidDose) string {
	return content.Quantity{Low: d.Amount, High: d.Amount, Unit: d.Unit}.String()
}

// doseWords name the acids of doses as a recipe has to name them.
var doseWords = map[ItemKind]string{
	ItemCitrusJuice: "bottled lemon juice", ItemCitricAcid: "citric acid", ItemVinegar: "white vinegar (5%)",
}
