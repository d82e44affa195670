package validate

import (
	"slices"

	"stillroom/content"
)

// sets reports whether the food is one that its sugar makes set.
func (a *asking) sets() bool {
	return a.isKind(content.Jam, content.Jelly, content.Marmalade, content.Conserve)
}

func (a *asking) ferments() bool {
	return a.Keeping.Way.V == content.Fermenting || a.canned() && a.need().Origin == AcidFromFermenting
}

func lessSugar(a *asking) picked {
	switch {
	case !a.holds(ItemSugar) || a.ferments():
	case a.sets() && a.lowSugarPectin():
		return pick("low-sugar-pectin")
	case a.sets():
		return pick("set")
	case !a.canned():
	case a.isKind(content.Fruit, content.Juice) && a.Process.Acidity == Acid:
		return pick("fruit")
	case a.isKind(content.Pickle, content.Relish):
		return pick("pickle")
	case a.need().Origin == AcidInEachJar && a.isKind(content.Tomato):
		return pick("tomato")
	default:
		return pick("other")
	}
	return picked{}
}

func (a *asking) lowSugarPectin() bool {
	return slices.ContainsFunc(a.Items, func(in Item) bool { return in.Class.Kind == ItemPectin && in.Class.Variety == "low-sugar" })
}

func moreSugar(a *asking) picked {
	switch {
	case len(a.relied()) > 0 && !a.sets():
		return pick("sharp")
	case a.sets() && a.holds(ItemSugar):
		return pick("set")
	}
	return picked{}
}

func sweetenerForSugar(a *asking) picked {
	switch {
	case !a.canned() && !a.sets(), a.ferments():
	case a.canned() && slices.Contains(a.Process.Lists, ItemSweetener):
		return pick("listed")
	case !a.holds(ItemSugar):
	case a.sets():
		return pick("set")
	default:
		return pick("other")
	}
	return picked{}
}

func lessSalt(a *asking) picked {
	switch {
	case a.ferments():
		return pick("ferment")
	case !a.canned() || !a.holds(ItemSalt):
	case slices.Contains(a.Process.Produce, "smoked fish"):
		return pick("cured")
	default:
		return pick("taste")
	}
	return picked{}
}

func otherPectin(a *asking) picked {
	if a.holds(ItemPectin) && a.sets() {
		return pick("any")
	}
	return picked{}
}
