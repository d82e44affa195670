package validate

import (
	"slices"

	"stillroom/content"
)

func rawPack(a *asking) picked { return a.otherPack(content.Hot, content.Raw) }

func hotPack(a *asking) picked { return a.otherPack(content.Raw, content.Hot) }

// otherPack looks for a process of the same food with the other pack.
func (a *asking) otherPack(own, other content.Pack) picked {
	if !a.canned() || a.Process.Pack != own || !a.inPieces() {
		return picked{}
	}
	for _, id := range sameFood(a.Process.Food, a.Process.Method, other) {
		return a.tested("other", id, a.Process.Method)
	}
	return pick("none")
}

// tested picks the answer that there is another process, and names its source.
func (a *asking) tested(which, id string, way content.Way) picked {
	p := pick(which)
	if other, _ := FindProcess(id, way, ""); other != nil {
		p.source = other.Source()
	}
	return p
}

// inPieces reports whether the food is put into the jar in pieces, which can
// be hot or raw.
func (a *asking) inPieces() bool {
	return !saysAny(plain(a.Process.Food), unpieced) &&
		a.isKind(content.Fruit, content.Pickle, content.Relish, content.Salsa, content.Tomato, content.Vegetable,
			content.Legume, content.Meat, content.Poultry, content.Fish, content.PieFilling)
}

// unpieced are the words by which published foods say that they have no pieces.
var unpieced = []string{"sauce", "applesauce", "juice", "puree", "purees", "butter", "stock", "curd"}

// formWords are the words by which published foods name their pieces.
var formWords = []string{
	"whole", "halved", "halves", "sliced", "slices", "pieces", "cubed", "cut", "strips", "spears", "kernel", "chunks",
	"rings", "sections", "shelled", "whole-kernel", "crushed",
}

// sized reports whether one can ask how large the pieces are: of a pickle, and
// of a food whose process names its form.
func (a *asking) sized() bool {
	return a.canned() && a.inPieces() && (a.acidifiedByRecipe() || saysAny(plain(a.Process.Food), formWords))
}

func smallerPieces(a *asking) picked {
	switch {
	case !a.sized() || a.isKind(content.Salsa):
	case a.acidifiedByRecipe():
		return pick("pickle")
	default:
		return pick("other")
	}
	return picked{}
}

func largerPieces(a *asking) picked {
	if a.sized() {
		return pick("any")
	}
	return picked{}
}

// thinned reports whether the food is one that cooks like to thicken.
func (a *asking) thinned() bool {
	return a.canned() && a.isKind(content.Salsa, content.Sauce, content.Ketchup, content.Chutney, content.Relish, content.Soup,
		content.Tomato, content.PieFilling, content.Meat, content.Poultry, content.Legume, content.Vegetable)
}

func thicken(a *asking) picked {
	switch {
	case !a.thinned():
	case slices.Contains(a.Process.Lists, ItemStarch) || slices.Contains(a.Process.Lists, ItemModStarch):
		return pick("listed")
	default:
		return pick("none")
	}
	return picked{}
}

func thickerSalsa(a *asking) picked {
	if a.canned() && a.isKind(content.Salsa) && len(a.ofRole(RoleTomato)) > 0 {
		return pick("any")
	}
	return picked{}
}

func addOil(a *asking) picked {
	switch {
	case !a.thinned() && !(a.canned() && a.isKind(content.Pickle, content.Fish)):
	case slices.Contains(a.Process.Lists, ItemFat):
		return pick("listed")
	default:
		return pick("none")
	}
	return picked{}
}

func whenOpened(a *asking) picked {
	if a.thinned() && !a.isKind(content.PieFilling, content.Relish, content.Chutney, content.Ketchup) {
		return pick("any")
	}
	return picked{}
}
