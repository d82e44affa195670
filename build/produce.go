package build

import (
	"slices"
	"strings"

	"stillroom/content"
)

// lookUp finds produce in a table that names it in the plural, as cooks write
// it, or in the singular.
func lookUp[T any](table map[string]T, produce string) (T, bool) {
	name := strings.ToLower(strings.TrimSpace(produce))
	if v, ok := table[name]; ok {
		return v, true
	}
	for _, end := range [...]string{"s", "es"} {
		if v, ok := table[name+end]; ok {
			return v, true
		}
	}
	stem, ok := strings.CutSuffix(name, "y")
	v, known := table[stem+"ies"]
	if !ok || !known {
		var none T
		return none, false
	}
	return v, true
}

// A harvest is a kind of produce and the recipes that use it.
type harvest struct {
	name    string // as the first recipe writes it
	address string
	recipes []*content.Recipe
}

// harvestsOf gives all produce in order of name. Names that would share an
// address are one: jalapeño peppers and jalapeno peppers.
func harvestsOf(recipes []*content.Recipe) []harvest {
	var all []harvest
	at, named := make(map[string]int), make(map[string]int) // by address, and by name
	for _, r := range recipes {
		for _, p := range r.Produce {
			i, known := named[p.V]
			if !known {
				address := produceAddress(p.V)
				if i, known = at[address]; !known {
					i = len(all)
					all = append(all, harvest{name: p.V, address: address})
				}
				at[address], named[p.V] = i, i
			}
			if n := len(all[i].recipes); n == 0 || all[i].recipes[n-1] != r {
				all[i].recipes = append(all[i].recipes, r)
			}
		}
	}
	slices.SortFunc(all, func(a, b harvest) int { return strings.Compare(a.address, b.address) })
	return all
}

// harvest finds produce by its address.
func (e *edition) harvest(address string) harvest {
	i, _ := slices.BinarySearchFunc(e.harvests, address, func(h harvest, a string) int { return strings.Compare(h.address, a) })
	return e.harvests[i]
}
