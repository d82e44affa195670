package validate

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"stillroom/content"
)

// steamTakes counts the bands, from the lowest, in which the minutes are no
// more than is accepted in steam.
func steamTakes(times []bandFigure) int {
	most := LimitInt("steam-canner-max-time")
	for i, f := range times {
		if f.n > most {
			return i
		}
	}
	return len(times)
}

// steamInstead tells how high up each jar of the recipe may go into a steam
// canner.
func steamInstead(a *asking) picked {
	if a.Keeping.Way.V != content.BoilingWater || a.Process.Acidity == LowAcid {
		return picked{}
	}
	most := minutesText(LimitInt("steam-canner-max-time"))
	var reach []string
	whole, some := true, false
	for _, j := range a.Jars {
		if j.Tested == nil {
			continue
		}
		times := a.times(j.Tested)
		n := steamTakes(times)
		some = some || n > 0
		whole = whole && n == len(times)
		switch n {
		case 0:
			reach = append(reach, fmt.Sprintf("no %s jars", j.Entry.Jar.V))
		case len(times):
			reach = append(reach, fmt.Sprintf("%s jars at every altitude", j.Entry.Jar.V))
		default:
			reach = append(reach, fmt.Sprintf("%s jars up to %s ft", j.Entry.Jar.V, thousands(times[n-1].To)))
		}
	}
	switch {
	case len(reach) == 0:
		return picked{}
	case !some:
		return pick("none", "most", most)
	case whole:
		return pick("all", "most", most)
	}
	return pick("some", "most", most, "reach", strings.Join(reach, ", "))
}

func boilingInstead(a *asking) picked {
	switch {
	case a.Keeping.Way.V == content.AtmosphericSteam:
		return pick("steam")
	case a.Keeping.Way.V != content.PressureCanner:
		return picked{}
	case a.Process.Acidity == LowAcid:
		return pick("low-acid")
	}
	if id := a.byMethod(content.BoilingWater); id != "" {
		return a.tested("tested", id, content.BoilingWater)
	}
	return picked{} // every food with acid has one, as the tables stand
}

func pressureInstead(a *asking) picked {
	if !a.canned() || a.Keeping.Way.V == content.PressureCanner {
		return picked{}
	}
	if id := a.byMethod(content.PressureCanner); id != "" {
		return a.tested("tested", id, content.PressureCanner)
	}
	return pick("none")
}

// byMethod gives the id of a process of the same food and pack by another
// method; the cited id if it has that method too.
func (a *asking) byMethod(way content.Way) string {
	if p, _ := FindProcess(a.Process.ID, way, a.Process.Pack); p != nil {
		return p.ID
	}
	ids := append(sameFood(a.Process.Food, way, a.Process.Pack), "")
	return cmp.Or(ids...)
}

func ovenInstead(a *asking) picked {
	if a.canned() {
		return pick("any")
	}
	return picked{}
}

func multiCookerInstead(a *asking) picked { return ovenInstead(a) }

func freezeInstead(a *asking) picked {
	if a.canned() && !slices.ContainsFunc(a.recipe.Keeping, func(k content.Keeping) bool { return k.Way.V == content.Freezer }) {
		return pick("any", "room", inches(LimitRat("unsealed-freeze-headspace")))
	}
	return picked{}
}

// shelfInstead is asked of what is not dry, and has no canned way beside it.
func shelfInstead(a *asking) picked {
	switch {
	case a.Keeping.Way.V == content.Drying || a.Keeping.Way.V == content.CoolStore || isCanned(a.recipe):
	case a.Keeping.Way.V == content.Refrigerator && a.isKind(content.Pickle):
		return pick("fridge-pickle")
	default:
		return pick("none")
	}
	return picked{}
}

func noBlanching(a *asking) picked {
	if a.Keeping.Way.V == content.Freezer && a.Keeping.Blanch.Set() {
		return pick("any")
	}
	return picked{}
}

func largerBox(a *asking) picked {
	if a.Keeping.Way.V != content.Freezer {
		return picked{}
	}
	return pick("any", "size", content.Quantity{Low: LimitRat("freeze-container-largest"), High: LimitRat("freeze-container-largest"), Unit: content.Gallon}.String())
}
