package validate

import "stillroom/content"

// WhyHeadspace tells what the headspace of a way of keeping is for. It reports
// false for a way that has none.
func WhyHeadspace(k *content.Keeping) (Remark, bool) {
	switch {
	case !k.Headspace.Set():
		return Remark{}, false
	case k.Way.V == content.PressureCanner:
		return remark("headspace-pressure"), true
	case k.Way.V.Canned():
		return remark("headspace-jar"), true
	case k.Way.V == content.Freezer:
		return remark("headspace-freezer"), true
	}
	return Remark{}, false
}

// WhyAcid tells where the acid of a canned way comes from and what it is for.
// It reports false where no known process says so.
func WhyAcid(r *content.Recipe, k *content.Keeping) (Remark, bool) {
	m := match(k, nil)
	if !k.Way.V.Canned() || m.Process == nil {
		return Remark{}, false
	}
	limit := percent(LimitRat("acid-limit-ph"))
	switch m.need().Origin {
	case AcidInEachJar:
		return remark("acid-each-jar", "limit", limit, "food", capital(mainFood(r))), true
	case AcidFromRecipe:
		return remark("acid-recipe", "limit", limit), true
	case AcidForTaste:
		return remark("acid-taste"), true
	case AcidFromFermenting:
		return remark("acid-fermenting", "limit", limit), true
	case AcidNotNeeded:
		return remark("acid-pressure", "limit", limit, "heat", limitText("pressure-temp-low", "°F")), true
	case AcidFromFood:
		return remark("acid-natural", "limit", limit), true
	}
	return Remark{}, false
}

// mainFood names the first produce of a recipe, in the plural.
func mainFood(r *content.Recipe) string {
	if len(r.Produce) == 0 {
		return "these foods"
	}
	if p, ok := LookUpProduce(r.Produce[0].V); ok {
		return p.Plural
	}
	return r.Produce[0].V
}
