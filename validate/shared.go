package validate

import (
	"math/big"
	"slices"
)

// A shared is what foods that may take each other's place come to in a
// published recipe.
type shared struct {
	foods  []string // as swap names them
	tested []Item
}

// covers reports whether a food counts as one of the share.
func (s shared) covers(food Produce) bool { return slices.Contains(s.foods, food.swap()) }

// sharesOf gathers the low-acid portions of a published recipe.
func sharesOf(portions []Portion) []shared {
	var all []shared
	for _, p := range portions {
		if p.Role != RoleLowAcid {
			continue
		}
		foods := p.Foods
		if len(foods) == 0 {
			foods = []string{p.Class.Produce.swap()}
		}
		one := shared{foods, []Item{p.Item}}
		all = slices.DeleteFunc(all, func(s shared) bool {
			if !slices.ContainsFunc(s.foods, func(f string) bool { return slices.Contains(one.foods, f) }) {
				return false
			}
			one.foods = append(slices.Clip(one.foods), s.foods...)
			one.tested = append(one.tested, s.tested...)
			return true
		})
		all = append(all, one)
	}
	return all
}

// sharing gives the ingredients that count together with the foods of a share.
func (c *comparison) sharing(s shared) []Item {
	var have []Item
	for _, in := range c.items {
		if in.role() == RoleLowAcid && s.covers(in.Class.Produce) && !in.isOnePepper() {
			have = append(have, in)
		}
	}
	return have
}

// timesShared compares foods that count together. Where the published recipe
// has some of them by number and some by measure, each part is compared with
// its own, and the larger counts.
func timesShared(have, tested []Item) *big.Rat {
	if x := timesTested(have, tested, highEnd); x != nil {
		return x
	}
	haveMeasured, haveCounted := byMeasure(have)
	measured, counted := byMeasure(tested)
	most := new(big.Rat)
	for _, pair := range [...][2][]Item{{haveMeasured, measured}, {haveCounted, counted}} {
		if len(pair[0]) == 0 {
			continue
		}
		x := timesTested(pair[0], pair[1], highEnd)
		if x == nil {
			return nil
		}
		if x.Cmp(most) > 0 {
			most = x
		}
	}
	return most
}

// byMeasure parts what is weighed or measured from what is counted.
func byMeasure(items []Item) (measured, counted []Item) {
	for _, in := range items {
		if in.isMeasured() {
			measured = append(measured, in)
		} else {
			counted = append(counted, in)
		}
	}
	return measured, counted
}
