package validate

import (
	"math/big"
	"strings"
	"sync"

	"stillroom/content"
)

// JamVolume gives what a pot of fruit and sugar comes to when it has been
// boiled down, in millilitres: mass is all that went in and solids what of it
// is dissolved sugar and fruit, both in grams; finish is the share of solids
// in per cent at which it sets. A pot that is as strong as that from the
// start loses nothing.
//
// It explains a yield and checks one; it says nothing of keeping.
func JamVolume(mass, solids, finish *big.Rat) *big.Rat {
	grams := new(big.Rat).Mul(solids, big.NewRat(100, 1))
	grams.Quo(grams, finish)
	if compare(grams, mass) > 0 {
		grams = mass
	}
	return new(big.Rat).Quo(grams, LimitRat("jam-density"))
}

// A jamPot is what goes into a pot of jam, in grams.
type jamPot struct{ mass, solids *big.Rat }

// jamPotOf weighs the ingredients of a jam. It reports false where one that
// matters cannot be weighed, or nothing is known of its solids.
func jamPotOf(items []Item) (jamPot, bool) {
	p := jamPot{new(big.Rat), new(big.Rat)}
	fruit := false
	for _, in := range items {
		switch in.Class.Kind {
		case ItemPectin, ItemSpice, ItemButter, ItemPeel, ItemCitricAcid, ItemAscorbicAcid, ItemSalt:
			continue // too little to matter, or boiled away
		case ItemFruit:
			fruit = true
		case ItemSugar, ItemWater, ItemVinegar, ItemCitrusJuice:
		default:
			return jamPot{}, false
		}
		grams, ok := in.cookedGrams()
		share, known := solidsOf(in)
		if !ok || !known {
			return jamPot{}, false
		}
		p.mass.Add(p.mass, grams)
		p.solids.Add(p.solids, grams.Mul(grams, share.Quo(share, big.NewRat(100, 1))))
	}
	return p, fruit
}

// crushedWords tell of fruit that fills a cup without air.
var crushedWords = []string{"crushed", "mashed", "puree", "pureed", "pulp", "juice", "ground", "sieved", "finely chopped"}

// cookedGrams weighs an ingredient; crushed fruit and juice by the weight of a
// pureed cup, since the table has most fruit whole.
func (in Item) cookedGrams() (*big.Rat, bool) {
	if in.Class.Kind == ItemFruit && saysAny(plain(in.Text), crushedWords) {
		if cups, ok := in.in(content.Cup); ok {
			return new(big.Rat).Mul(middle(cups), LimitRat("crushed-fruit-cup")), true
		}
	}
	q, ok := in.grams()
	if !ok {
		return nil, false
	}
	return middle(q), true
}

// middle gives the middle of a range.
func middle(q content.Quantity) *big.Rat {
	if !q.IsRange() {
		return new(big.Rat).Set(q.Low)
	}
	x := new(big.Rat).Add(q.Low, q.High)
	return x.Mul(x, big.NewRat(1, 2))
}

// solidsOf gives the soluble solids of an ingredient in per cent, from the
// table of densities: those of the fresh fruit.
func solidsOf(in Item) (*big.Rat, bool) {
	switch in.Class.Kind {
	case ItemSugar:
		if in.Class.Variety == "white" || in.Class.Variety == "brown" || in.Class.Variety == "gelling" {
			return big.NewRat(100, 1), true
		}
	case ItemWater, ItemVinegar, ItemCitrusJuice:
		return new(big.Rat), true // of little juice
	}
	if x := freshSolids()[foodOfKind{in.Class.Kind, in.Class.Produce.Name}]; x != nil {
		return new(big.Rat).Set(x), true
	}
	return nil, false
}

// A foodOfKind is a food, as its fruit, its juice, its peel.
type foodOfKind struct {
	kind ItemKind
	food string
}

// freshSolids gives the soluble solids of the foods of the table of densities, in
// per cent: of each the first row that has them.
var freshSolids = sync.OnceValue(func() map[foodOfKind]*big.Rat {
	solids := map[foodOfKind]*big.Rat{}
	for _, d := range densities() {
		brix, ok := strings.CutPrefix(d.Solids, "brix:")
		if !ok || d.is.produce == 0 {
			continue
		}
		f := foodOfKind{d.is.kind, kitchen().produce[d.is.produce-1].Name}
		if x, ok := new(big.Rat).SetString(brix); ok && solids[f] == nil {
			solids[f] = x
		}
	}
	return solids
})
