package validate

import (
	"math/big"
	"slices"

	"stillroom/content"
)

// need is the acid that the cited process was tested with; zero without a
// process.
func (m *Match) need() AcidNeed {
	if m.Process == nil {
		return AcidNeed{}
	}
	return AcidFor(m.Process)
}

// reliesOnAcid reports whether the cited process was tested with acid added,
// so that what the recipe says of acid carries its safety.
func (m *Match) reliesOnAcid() bool {
	from := m.need().Origin
	return from == AcidInEachJar || from == AcidFromRecipe
}

// withAdded gives the recipe's ingredients, and what goes into each jar beside
// them.
func (m *Match) withAdded() []Item {
	added, ok := m.added()
	if !ok {
		return m.Items
	}
	return append(m.Items[:len(m.Items):len(m.Items)], added)
}

// added is what goes into each jar.
func (m *Match) added() (Item, bool) {
	if m.dosed == nil {
		return Item{}, false
	}
	return *m.dosed, true
}

func dosed(k *content.Keeping) *Item {
	if k.Acid.V.Source != content.AcidPerJar {
		return nil
	}
	in := k.Acid.V.Added
	in.Pos = k.Acid.Pos
	return &Item{Ingredient: &in, Class: ClassifyItem(in.Item, in.Note)}
}

// A supply is the acid that a recipe brings: of one kind, in tablespoons to a
// pint of what it fills.
type supply struct {
	kind    ItemKind
	perPint *big.Rat // nil if it cannot be worked out
	item    Item
}

// supplies gives the acid that goes into the jars.
func (m *Match) supplies(y content.Yield) []supply {
	if in, ok := m.added(); ok {
		return []supply{{in.Class.Kind, perPint(in, m.Keeping.Acid.V.Per.Millilitres()), in}}
	}
	var all []supply
	volume := mostVolume(y)
	for _, in := range m.Items {
		if acidKinds[in.Class.Kind] {
			all = append(all, supply{in.Class.Kind, perPint(in, volume), in})
		}
	}
	return all
}

// acidKinds are the kinds of item that are called acid by somebody.
var acidKinds = map[ItemKind]bool{
	ItemVinegar: true, ItemCitrusJuice: true, ItemCitricAcid: true,
	ItemAscorbicAcid: true, ItemAcidTablet: true, ItemAcidOther: true,
}

var pintMillilitres = content.Volume{Quantity: content.Quantity{Low: oneFoot, High: oneFoot, Unit: content.Pint}}.Millilitres()

// perPint spreads the low end of an amount over a volume in millilitres.
func perPint(in Item, ml *big.Rat) *big.Rat {
	amount, ok := in.volumeIn(content.Tablespoon)
	if !ok || ml == nil || ml.Sign() == 0 {
		return nil
	}
	x := new(big.Rat).Mul(amount, pintMillilitres)
	return x.Quo(x, ml)
}

// volumeIn gives the low end of an ingredient's amount as a volume, from any
// of the amounts that its line gives.
func (in Item) volumeIn(u content.Unit) (*big.Rat, bool) {
	for i := -1; i < len(in.Same); i++ {
		q := in.Amount
		if i >= 0 {
			q = in.Same[i]
		}
		if q.Low == nil || q.Unit.Dimension() != content.VolumeDim {
			continue
		}
		if c, ok := q.In(u); ok {
			return c.Low, true
		}
	}
	return nil, false
}

// mostVolume is the volume in millilitres of the largest yield, over which an
// amount is spread the thinnest; nil if the yield is no volume.
func mostVolume(y content.Yield) *big.Rat {
	switch {
	case y.High == nil:
		return nil
	case !y.Jar.IsZero():
		return new(big.Rat).Mul(y.High, y.Jar.Millilitres())
	case y.Unit.Dimension() == content.VolumeDim:
		q, _ := y.Quantity.In(content.Millilitre)
		return q.High
	}
	return nil
}

// accepts reports whether a process was tested with that kind of acid, or
// takes it in place of the one that it was tested with.
func (n AcidNeed) accepts(kind ItemKind) bool {
	if kind == ItemCitrusJuice && n.LemonForVinegar {
		return true
	}
	return slices.ContainsFunc(n.Choices, func(c AcidChoice) bool {
		return slices.ContainsFunc(c.Doses, func(d AcidDose) bool { return d.Kind == kind })
	})
}

// percent writes a strength without needless zeros.
func percent(n *big.Rat) string {
	if n.IsInt() {
		return n.Num().String()
	}
	return n.FloatString(1)
}
