package validate

import (
	"math/big"

	"stillroom/content"
)

// freshUnderOil gives the garlic, fresh herbs and vegetables of a recipe that
// lie under oil: the oil is more than all that is sour or watery. It gives
// none where there is no oil.
func (m *Match) freshUnderOil() []Item {
	oils := ofRole(m.Items, RoleOil)
	if len(oils) == 0 || !covers(oils, m.ofKind(ItemVinegar, ItemCitrusJuice, ItemWater, ItemStock)) {
		return nil
	}
	var fresh []Item
	for _, in := range m.Items {
		switch in.role() {
		case RoleHerb, RoleLowAcid:
			if !isDried(in) {
				fresh = append(fresh, in)
			}
		}
	}
	return fresh
}

func isDried(in Item) bool {
	return saysAny(plain(in.Item), []string{"dried", "dry", "dehydrated"}) || saysAny(plain(in.Note), []string{"dried", "dehydrated"})
}

// covers reports whether there is more oil than of the other liquids. An
// amount that is not said, as in "oil to cover", covers.
func covers(oils, others []Item) bool {
	oil, ok := cupsOf(oils)
	if !ok {
		return true
	}
	rest, _ := cupsOf(others)
	return oil.Cmp(rest) > 0
}

// cupsOf adds up volumes in cups. It reports false if one is not known, and
// gives the sum of the others.
func cupsOf(items []Item) (*big.Rat, bool) {
	sum, all := new(big.Rat), true
	for _, in := range items {
		q, ok := in.in(content.Cup)
		if !ok {
			all = false
			continue
		}
		sum.Add(sum, q.Low)
	}
	return sum, all
}
