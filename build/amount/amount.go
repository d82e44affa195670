package amount

import (
	"math/big"
	"strings"

	"stillroom/content"
	"stillroom/validate"
)

// A System is a choice of measures.
type System string

// The systems.
const (
	Written System = "written" // as the recipe has it
	US      System = "us"
	Metric  System = "metric"
	Weight  System = "weight" // grams for all whose weight is known, else metric
)

// Systems are all of them, in the order in which they are offered.
var Systems = []System{Written, US, Metric, Weight}

// A Rounding says to which side an amount is rounded.
type Rounding int

// The roundings.
const (
	Nearest Rounding = iota
	Up               // acid, tomatoes, and the salt of a ferment
	Down             // what is low in acid, or thins it
)

// An Amount is how much of one thing a recipe asks for.
type Amount struct {
	Ways   []content.Quantity // the same amount in one or more units, the one that is written first in front; never empty
	Grams  *big.Rat           // what a US cup of it weighs; nil if that is not known
	Source validate.Source    // of Grams; zero if the recipe itself says it
	Round  Rounding
	Pours  bool // is a liquid, which is measured in quarts from a quart on
	Spoons bool // is measured with cups and spoons where those are used, as sugar and salt are
}

// In writes the amount for a batch that is factor times the recipe: 4 1/2
// cups, 2 tbsp + 2 tsp, 6-8 heads. What the recipe has in the same words is
// left in them.
func (a Amount) In(factor *big.Rat, s System) string {
	q := a.way(s)
	if first := a.Ways[0]; q == first && factor.Cmp(one) == 0 && s.has(q.Unit) {
		return first.Text
	}
	return a.write(q, factor, s)
}

// Also writes the amount in other measures than the recipe's first, as they
// stand in brackets behind it; empty if there are none, or if it is measured
// with spoons, which are the same everywhere but for a few drops.
func (a Amount) Also(factor *big.Rat) string {
	if len(a.Ways) > 1 {
		var all []string
		for _, q := range a.Ways[1:] {
			all = append(all, a.write(q, factor, Written))
		}
		return strings.Join(all, ", ")
	}
	first := a.Ways[0]
	switch {
	case first.Unit == content.Teaspoon, first.Unit == content.Tablespoon:
		return ""
	case isMetric(first.Unit):
		return a.write(first, factor, US)
	case isUS(first.Unit):
		return a.write(first, factor, Metric)
	}
	return ""
}

// way chooses the written way that needs the least conversion.
func (a Amount) way(s System) content.Quantity {
	for _, want := range wanted[s] {
		for _, q := range a.Ways {
			if want(q.Unit) {
				return q
			}
		}
	}
	return a.Ways[0]
}

var wanted = map[System][]func(content.Unit) bool{
	US:     {isUS},
	Metric: {isMetric, isWeight},
	Weight: {func(u content.Unit) bool { return isMetric(u) && isWeight(u) }, isWeight},
}

// has reports whether a unit needs no conversion in the system.
func (s System) has(u content.Unit) bool {
	switch s {
	case US:
		return !isMetric(u)
	case Metric:
		return !isUS(u)
	case Weight:
		return !isUS(u) && u.Dimension() != content.VolumeDim
	}
	return true
}

// metric reports whether US measures are converted in the system.
func (s System) metric() bool { return s == Metric || s == Weight }

func isUS(u content.Unit) bool     { return systemOf(u) == US }
func isMetric(u content.Unit) bool { return systemOf(u) == Metric }
func isWeight(u content.Unit) bool { return u.Dimension() == content.WeightDim }

// systemOf gives US or Metric for weights and volumes, and Written for what is
// the same everywhere.
func systemOf(u content.Unit) System {
	switch u {
	case content.Milligram, content.Gram, content.Kilogram,
		content.Millilitre, content.Centilitre, content.Decilitre, content.Litre:
		return Metric
	}
	if d := u.Dimension(); d == content.WeightDim || d == content.VolumeDim {
		return US
	}
	return Written
}

// write writes one of the ways in a system, rounded.
func (a Amount) write(q content.Quantity, factor *big.Rat, s System) string {
	low := a.shown(q.Low, q.Unit, factor, s)
	if !q.IsRange() {
		return low.String()
	}
	return span(low, a.shown(q.High, q.Unit, factor, s))
}

// shown turns a number of a unit into what is measured.
func (a Amount) shown(n *big.Rat, u content.Unit, factor *big.Rat, s System) measure {
	n = new(big.Rat).Mul(n, factor)
	switch u.Dimension() {
	case content.VolumeDim:
		return a.volume(n, u, s)
	case content.WeightDim:
		return a.weight(n, u, s)
	}
	return counted(n, u, a.Round)
}

func (a Amount) volume(n *big.Rat, u content.Unit, s System) measure {
	switch {
	case a.weighs(u, s):
		return grams(new(big.Rat).Mul(in(n, u, content.Cup), a.Grams), false, a.Round)
	case isMetric(u) && s != US, isUS(u) && s.metric():
		return millilitres(in(n, u, content.Millilitre), isMetric(u), a.Round)
	case u == content.Peck, u == content.Bushel:
		return counted(n, u, a.Round)
	}
	return cups(n, u, a)
}

// weighs reports whether a volume is shown as a weight. A metric cook weighs
// what is not poured, but for spoonfuls.
func (a Amount) weighs(u content.Unit, s System) bool {
	spoon := u == content.Teaspoon || u == content.Tablespoon
	return a.Grams != nil && (s == Weight || s == Metric && isUS(u) && !spoon && !a.Pours)
}

func (a Amount) weight(n *big.Rat, u content.Unit, s System) measure {
	switch {
	case isMetric(u) && s == US && a.Spoons && a.Grams != nil:
		return cups(new(big.Rat).Quo(in(n, u, content.Gram), a.Grams), content.Cup, a)
	case isMetric(u) && s != US, isUS(u) && s.metric():
		return grams(in(n, u, content.Gram), isMetric(u), a.Round)
	}
	return ounces(in(n, u, content.Ounce), a.Round)
}

// in gives a number of one unit in another of the same dimension.
func in(n *big.Rat, from, to content.Unit) *big.Rat {
	q, ok := content.Quantity{Low: n, High: n, Unit: from}.In(to)
	if !ok {
		panic("amount: " + string(from) + " in " + string(to))
	}
	return new(big.Rat).Set(q.Low)
}

var one = big.NewRat(1, 1)
