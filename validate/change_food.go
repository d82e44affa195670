package validate

import (
	"slices"

	"stillroom/content"
)

// acidifiedByRecipe reports whether the acid of the recipe has to be enough for
// its vegetables.
func (a *asking) acidifiedByRecipe() bool {
	return a.canned() && a.Process.Acidity == Acidified && a.need().Origin == AcidFromRecipe
}

// ofRole gives the recipe's ingredients of a role.
func (a *asking) ofRole(r Role) []Item { return ofRole(a.Items, r) }

func (a *asking) holds(kinds ...ItemKind) bool {
	return slices.ContainsFunc(a.Items, func(in Item) bool { return slices.Contains(kinds, in.Class.Kind) })
}

func (a *asking) isKind(kinds ...content.Kind) bool { return slices.Contains(kinds, a.recipe.Kind.V) }

func fewerVegetables(a *asking) picked {
	if a.acidifiedByRecipe() && len(a.sideVegetables()) > 0 {
		return pick("acidified")
	}
	return picked{}
}

// sideVegetables are the low-acid ingredients beside the main produce, which
// the recipe is not without.
func (a *asking) sideVegetables() []Item {
	main := Produce{}
	if len(a.recipe.Produce) > 0 {
		main, _ = LookUpProduce(a.recipe.Produce[0].V)
	}
	return slices.DeleteFunc(a.ofRole(RoleLowAcid), func(in Item) bool { return in.Class.Produce.Name == main.Name })
}

func moreVegetables(a *asking) picked {
	switch {
	case !a.canned():
	case a.acidifiedByRecipe() && len(a.ofRole(RoleLowAcid)) > 0:
		return pick("acidified")
	case a.need().Origin == AcidInEachJar && a.isKind(content.Tomato, content.Sauce, content.Juice, content.Vegetable):
		return pick("tomatoes")
	case a.Process.Acidity == LowAcid && slices.ContainsFunc(CompositionsOf(a.Process.ID), func(c Composition) bool { return len(c.shares) > 1 }):
		return pick("mixed")
	}
	return picked{}
}

func otherVegetables(a *asking) picked {
	switch {
	case a.acidifiedByRecipe():
		return pick("acidified")
	case a.canned() && a.Process.Acidity == LowAcid && a.isKind(content.Vegetable, content.Legume) && len(a.Process.Others) == 0:
		return pick("plain", "food", a.Process.Food)
	}
	return picked{}
}

// pepperKinds comes into question where peppers are weighed against acid, or
// are all there is.
func pepperKinds(a *asking) picked {
	peppers := slices.ContainsFunc(a.Items, func(in Item) bool { return in.Class.Produce.Group == Peppers })
	if peppers && (a.acidifiedByRecipe() || a.canned() && a.Process.ID == "peppers") {
		return pick("any")
	}
	return picked{}
}

// otherFoodInstead is not asked of mixtures, of which every part is named.
func otherFoodInstead(a *asking) picked {
	switch {
	case !a.canned() || len(a.Process.Produce) == 0 || a.acidifiedByRecipe():
	case slices.Contains(a.Process.Produce, "any"):
	case a.Process.General:
		return pick("general", "foods", andList(pluralFoods(a.Process.Produce)))
	default:
		return pick("one", "food", a.Process.Food)
	}
	return picked{}
}

// pluralFoods names foods in the plural; what only names their sort is left
// out.
func pluralFoods(names []string) []string {
	var all []string
	for _, n := range names {
		if p, ok := LookUpProduce(n); ok && n != "berry" {
			all = append(all, p.Plural)
		}
	}
	return all
}

func driedSpices(a *asking) picked {
	if !a.canned() || !a.holds(ItemSpice) {
		return picked{}
	}
	share := percent(LimitRat("spices-raise-most"))
	if share == "50" {
		share = "half"
	} else {
		share += "%"
	}
	return pick("any", "share", share)
}

func freshHerbs(a *asking) picked {
	switch {
	case a.acidifiedByRecipe():
		return pick("acidified")
	case a.canned() && a.Process.Acidity == LowAcid:
		return pick("low-acid")
	}
	return picked{}
}
