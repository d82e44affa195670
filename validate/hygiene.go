package validate

import (
	"fmt"
	"strings"

	"stillroom/content"
)

// hygiene asks for the steps that keep germs out of the jar.
var hygiene = &Rule{
	ID:       "hygiene",
	Severity: Warning,
	Summary:  "steps that say nothing of clean hands, rinsed produce and clean jars",
	Doc: `Cooks who find "wash your hands" and "rinse the berries" among the steps do it more
often than those who find it in a list of warnings. Say in the steps: wash your hands,
rinse or scrub the produce, wash the jars. Where none of it is said this is a warning;
where one of the three is missing, advice.

When the clock starts, how deep the water stands, bubbles, rims, venting, cooling and
the test of the seal are on every page of a canned recipe; the steps may say them, and
nobody asks for them here.`,
	Source: Source{
		Title:   "Of guideline items, contamination was one of four scored kinds: " + blogStudy.Title + "; Journal of Food Protection, 2016",
		Address: "https://saferecipeguide.org/facts",
	},
	CheckText: checkHygiene,
}

func checkHygiene(t *Text) []Finding {
	if t.Recipe == nil || len(t.Recipe.Body.Method) == 0 {
		return nil
	}
	hands, produce, jars := false, false, false
	for s := range t.sentences(placeStep) {
		washes := s.holds(&washing)
		hands = hands || washes && s.holds(&handWords)
		produce = produce || washes || s.holds(&cleaning)
		jars = jars || s.has(famJar) && (washes || s.has(famSterilise) || s.holds(&cleanJars))
	}
	var missing []string
	if !hands {
		missing = append(missing, "clean hands")
	}
	if !produce && t.hasRawProduce() {
		missing = append(missing, "rinsed produce")
	}
	if !jars && t.hasWay(content.BoilingWater, content.AtmosphericSteam, content.PressureCanner) {
		missing = append(missing, "clean jars")
	}
	if len(missing) == 0 {
		return nil
	}
	f := Finding{
		Pos:     t.Recipe.Body.Method[0].Pos,
		Message: fmt.Sprintf("the steps say nothing of %s", strings.Join(missing, " or ")),
		Advice:  "Say it in a step: wash your hands, rinse the produce, wash the jars.",
	}
	if hands || produce || jars {
		f.Severity = Advice
	}
	return []Finding{f}
}

// The words of a sentence that washes something, and of what is washed.
var (
	washing   = fewOf("wash washed washing rinse rinsed rinsing scrub soapy soap")
	handWords = fewOf("hand hands gloves")
	cleaning  = fewOf("scrub scrubbed peel peeled husk wipe scalded pick sort")
	cleanJars = fewOf("clean scald boil boiled")
)

// hasRawProduce reports whether the recipe is of food that is rinsed before it
// is cut: fruit, vegetables, herbs.
func (t *Text) hasRawProduce() bool {
	for _, p := range t.Recipe.Produce {
		food, ok := LookUpProduce(p.V)
		if !ok {
			continue
		}
		switch food.Group {
		case Meats, Poultries, Fishes, Shellfish, Eggs, Dairies, Nuts, Legumes:
		default:
			return true
		}
	}
	return false
}
