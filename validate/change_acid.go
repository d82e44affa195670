package validate

import (
	"fmt"
	"slices"
	"strings"
)

// relied lists the acids that the process was tested with and that the recipe
// brings.
func (a *asking) relied() []ItemKind {
	if !a.canned() || !a.reliesOnAcid() {
		return nil
	}
	var kinds []ItemKind
	for _, s := range a.supplies(a.recipe.Yield.V) {
		if a.need().accepts(s.kind) && !slices.Contains(kinds, s.kind) {
			kinds = append(kinds, s.kind)
		}
	}
	return kinds
}

func (a *asking) reliesOn(kind ItemKind) bool { return slices.Contains(a.relied(), kind) }

func freshForBottled(a *asking) picked {
	switch {
	case a.reliesOn(ItemCitrusJuice):
		return pick("relied")
	case a.canned() && a.holds(ItemCitrusJuice) && !a.reliesOnAcid():
		return pick("taste")
	}
	return picked{}
}

func lemonForVinegar(a *asking) picked {
	switch {
	case !a.reliesOn(ItemVinegar) || a.need().Origin != AcidFromRecipe:
	case a.need().LemonForVinegar:
		return pick("may")
	default:
		return pick("unsaid")
	}
	return picked{}
}

func vinegarForLemon(a *asking) picked {
	if !a.reliesOn(ItemCitrusJuice) {
		return picked{}
	}
	if doses := a.doses(ItemVinegar); doses != "" {
		return pick("dose", "doses", doses)
	}
	return pick("none")
}

func citricAcid(a *asking) picked {
	if !a.reliesOn(ItemCitrusJuice) {
		return picked{}
	}
	if doses := a.doses(ItemCitricAcid); doses != "" {
		return pick("dose", "doses", doses)
	}
	return pick("none")
}

// doses tells the published doses of an acid for each jar: 1/4 tsp to a pint,
// 1/2 tsp to a quart. It is empty if there are none.
func (a *asking) doses(kind ItemKind) string {
	if a.need().Origin != AcidInEachJar {
		return ""
	}
	var doses []string
	for _, c := range a.need().Choices {
		if d := c.Doses[0]; len(c.Doses) == 1 && d.Kind == kind && d.Amount != nil {
			doses = append(doses, fmt.Sprintf("%s to a %s", quantityText(d), c.Jar))
		}
	}
	return strings.Join(doses, ", ")
}

func lessAcid(a *asking) picked {
	switch {
	case len(a.relied()) == 0:
	case a.need().Origin == AcidInEachJar:
		return pick("jar")
	default:
		return pick("recipe")
	}
	return picked{}
}

func moreVinegar(a *asking) picked {
	if a.reliesOn(ItemVinegar) && a.need().Origin == AcidFromRecipe && a.holds(ItemWater) {
		return pick("any")
	}
	return picked{}
}

func otherVinegar(a *asking) picked {
	if a.reliesOn(ItemVinegar) {
		return pick("any", "strength", percent(LimitRat("vinegar-acidity")))
	}
	return picked{}
}
