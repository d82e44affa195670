package validate

import (
	"strings"

	"stillroom/content"
)

// dryingSteps gives advice on dried fruit that is not conditioned and dried
// vegetables that are not blanched.
var dryingSteps = &Rule{
	ID:       "drying-steps",
	Severity: Advice,
	Summary:  "dried fruit that is not conditioned, dried vegetables that are not blanched",
	Doc: `Pieces of fruit dry unevenly. Left together in a jar for a week and shaken daily, the
moist ones share with the dry ones, and a wet jar shows itself in time. Vegetables are
blanched before they are dried: they keep their color and dry faster. Onions, peppers,
garlic, tomatoes, mushrooms and herbs need no blanching; a leather no conditioning.`,
	Source: Source{
		Title:   "Drying: questions and answers, University of Illinois Extension",
		Address: "https://extension.illinois.edu/food-preservation/drying-faq",
	},
	CheckKeeping: checkDryingSteps,
}

func checkDryingSteps(r *content.Recipe, m *Match) []Finding {
	if m.Keeping.Way.V != content.Drying || len(r.Produce) == 0 {
		return nil
	}
	food, _ := LookUpProduce(r.Produce[0].V)
	switch {
	case food.Group.Fruit() && !saysAny(strings.ToLower(r.Name.V), []string{"leather", "leathers"}) &&
		!stepsSay(r, "condition", "conditioned", "conditioning", "shake", "shaken", "shaking"):
		return []Finding{{
			Pos:     m.Keeping.Pos,
			Message: "no step conditions the dried fruit",
			Advice:  "Let it stand in a jar, two-thirds full, for about a week, and shake it daily.",
			Source:  LimitOf("dry-conditioning").Source,
		}}
	case len(food.Blanch) > 0 && food.Group == Vegetables && food.swap() != "onion" &&
		!m.Keeping.Blanch.Set() && !stepsSay(r, "blanch", "blanched", "blanching", "steam", "steamed", "cook", "cooked", "boil", "boiled", "parboil"):
		return []Finding{{
			Pos:     m.Keeping.Pos,
			Message: "no step blanches the vegetables before they are dried",
			Advice:  "Blanch them, " + blanchWords(food) + ", or say why not.",
		}}
	}
	return nil
}
