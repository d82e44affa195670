package validate

import (
	"math/big"
	"strings"

	"stillroom/content"
)

// A freezerBox is what the words of a container say of it. What they leave
// open may be either.
type freezerBox struct {
	tops  []string // wide, narrow
	sizes []string // pint, quart
}

// boxOf reads the container of a freezer way.
func boxOf(container string) freezerBox {
	words := strings.ToLower(container)
	said := func(list ...string) bool { return saysAny(words, list) }
	var b freezerBox
	switch {
	case said("wide", "wide-mouth", "straight", "straight-sided", "box", "boxes", "tub", "tubs"):
		b.tops = []string{"wide"}
	case said("narrow", "regular", "regular-mouth", "shoulder", "shouldered", "bottle", "bottles", "canning jars", "canning jar", "mason jars", "glass jars", "glass jar"):
		b.tops = []string{"narrow"}
	default:
		b.tops = []string{"wide", "narrow"}
	}
	switch {
	case said("quart", "quarts", "litre", "litres", "liter", "liters", "1 l", "half-gallon", "gallon"):
		b.sizes = append(b.sizes, "quart")
	case said("pint", "pints", "half-pint", "half-pints", "cup", "cups", "500 ml", "250 ml"):
		b.sizes = append(b.sizes, "pint")
	default:
		b.sizes = []string{"pint", "quart"}
	}
	return b
}

// headspaces gives the least and the most headspace that the table has for
// what the box may be, and the limit of the most.
func (b freezerBox) headspaces(pack string) (least, most Limit) {
	for _, top := range b.tops {
		for _, size := range b.sizes {
			l := LimitOf("freeze-headspace-" + pack + "-" + top + "-" + size)
			if least.Low == nil || l.Low.Cmp(least.Low) < 0 {
				least = l
			}
			if most.Low == nil || l.Low.Cmp(most.Low) > 0 {
				most = l
			}
		}
	}
	return least, most
}

// freezerPack says how a food is packed for the freezer: juice, in liquid, or
// dry.
func freezerPack(r *content.Recipe, m *Match) string {
	switch r.Kind.V {
	case content.Juice, content.Cordial:
		return "juice"
	case content.Vegetable, content.Legume, content.Meat, content.Poultry, content.Fish:
		return "dry"
	case content.Fruit:
		if len(m.ofKind(ItemWater)) == 0 {
			return "dry"
		}
	}
	return "liquid"
}

// overHalfGallon reports whether a container is said to hold more than the
// limit.
func overHalfGallon(container string, most *big.Rat) bool {
	words := strings.Fields(strings.ToLower(strings.ReplaceAll(container, "-", " ")))
	for i, w := range words {
		if (w == "gallon" || w == "gallons") && (i == 0 || words[i-1] != "half") {
			return true
		}
	}
	for i := 1; i < len(words); i++ {
		v, err := content.ParseVolume(words[i-1] + " " + words[i])
		if g, ok := v.In(content.Gallon); err == nil && ok && g.High.Cmp(most) > 0 {
			return true
		}
	}
	return false
}
