package amount

import (
	"math/big"
	"slices"

	"stillroom/content"
)

// A Making is what one batch takes and gives, for one way of keeping it.
type Making struct {
	Factor            *big.Rat // how many times the ingredients a batch has
	Smallest, Largest *big.Rat // how many batches are offered
	Apart             bool     // several batches are cooked one after the other, never in one pot
	Canned            bool
	Yield             *Amount // what one batch makes, where that is not counted in jars; nil if it is
	About             bool    // the yield is not quite certain
	Jars              []Jar   // the sizes that can be filled; empty if the yield is no volume
	Minutes           int64   // at work and cooking; 0 if the recipe does not say
}

// A Jar is a size of jar, and how many of it one batch fills.
type Jar struct {
	One, Many string   // quart jar, quart jars
	Low, High *big.Rat // equal unless the yield is a range
	Load      int64    // how many a canner takes at a time; 0 if that is not known
	Minutes   int64    // the longest processing of it; 0 if it is not processed
}

// Batches that the author sets no bounds for. Common practice, no source.
var (
	usualSmallest = big.NewRat(1, 4)
	usualLargest  = big.NewRat(4, 1)
)

// Makings gives a Making for each way of keeping, in the recipe's order.
func Makings(r *content.Recipe) []Making {
	var all []Making
	for i := range r.Keeping {
		all = append(all, making(r, &r.Keeping[i]))
	}
	return all
}

func making(r *content.Recipe, k *content.Keeping) Making {
	canned := k.Way.V.Canned()
	m := Making{
		Factor:   one,
		Smallest: usualSmallest,
		Largest:  usualLargest,
		Canned:   canned,
		Apart:    canned || gels(r.Kind.V),
		About:    r.Yield.V.About,
		Minutes:  minutes(r.Times.HandsOn.V) + minutes(r.Times.Cooking.V),
	}
	if k.Factor.Set() {
		m.Factor = k.Factor.V.Low
	}
	if r.Scale.Smallest.Set() {
		m.Smallest = r.Scale.Smallest.V.Low
	}
	if r.Scale.Largest.Set() {
		m.Largest = r.Scale.Largest.V.High
	}
	m.Jars = jars(r.Yield.V, k, m.Factor)
	if len(m.Jars) == 0 && !r.Yield.V.IsZero() {
		m.Yield = &Amount{Ways: []content.Quantity{r.Yield.V.Quantity}}
	}
	return m
}

// gels reports whether a kind has to set: a larger pot boils too slowly to.
func gels(k content.Kind) bool {
	return slices.Contains([]content.Kind{"jam", "jelly", "marmalade", "conserve"}, k)
}

// minutes gives a duration, at its longest, in whole minutes.
func minutes(d content.Duration) int64 {
	q, ok := d.In(content.Minute)
	if !ok {
		return 0
	}
	return ceil(q.High)
}

func ceil(x *big.Rat) int64 {
	n := floor(x)
	if !x.IsInt() {
		n++
	}
	return n
}

// jars gives the sizes of jar that a way can fill: that of the yield first,
// then those that there is a process for.
func jars(y content.Yield, k *content.Keeping, factor *big.Rat) []Jar {
	low, high, ok := volume(y)
	if !ok {
		return nil
	}
	low, high = new(big.Rat).Mul(low, factor), new(big.Rat).Mul(high, factor)
	var sizes []content.Jar
	if !y.Jar.IsZero() && (!k.Way.V.Canned() || !process(k, y.Jar).Jar.V.IsZero()) {
		sizes = append(sizes, y.Jar)
	}
	for _, p := range k.Processing {
		if p.Jar.Set() && p.Jar.V.Millilitres().Cmp(millilitresOf(y.Jar)) != 0 {
			sizes = append(sizes, p.Jar.V)
		}
	}
	var all []Jar
	for _, size := range sizes {
		each := size.Millilitres()
		one, many := jarWords(y, size)
		all = append(all, Jar{
			One: one, Many: many,
			Low:     new(big.Rat).Quo(low, each),
			High:    new(big.Rat).Quo(high, each),
			Load:    load(k.Way.V, each),
			Minutes: longest(process(k, size)),
		})
	}
	return all
}

// volume gives the yield in millilitres.
func volume(y content.Yield) (low, high *big.Rat, ok bool) {
	if !y.Jar.IsZero() {
		each := y.Jar.Millilitres()
		return new(big.Rat).Mul(y.Low, each), new(big.Rat).Mul(y.High, each), true
	}
	q, ok := y.Quantity.In(content.Millilitre)
	return q.Low, q.High, ok
}

func millilitresOf(j content.Jar) *big.Rat {
	if j.IsZero() {
		return new(big.Rat)
	}
	return j.Millilitres()
}

// process gives what is written for a size of jar; zero if nothing is.
func process(k *content.Keeping, j content.Jar) content.Processing {
	for _, p := range k.Processing {
		if p.Jar.Set() && p.Jar.V.Millilitres().Cmp(j.Millilitres()) == 0 {
			return p
		}
	}
	return content.Processing{}
}

// longest gives the minutes of a processing at the altitude that takes the
// most.
func longest(p content.Processing) int64 {
	most := minutes(p.Time.V)
	for _, b := range p.Altitude {
		most = max(most, minutes(b.Value.V))
	}
	return most
}

// jarWords names a size: a yield of 3 pints that is not canned is in pints,
// whatever holds them.
func jarWords(y content.Yield, size content.Jar) (one, many string) {
	if y.Unit != "jar" && !y.Jar.IsZero() && y.Jar.Millilitres().Cmp(size.Millilitres()) == 0 {
		return string(y.Unit), content.Quantity{Low: two, High: two, Unit: y.Unit}.UnitName()
	}
	return size.String() + " jar", size.String() + " jars"
}

// loads are how many jars a canner takes at a time, by what a jar holds in
// millilitres. Publications reckon with canner loads of 7 quarts and of 9 pints
// (USDA Complete Guide to Home Canning, AIB 539 (2015), quantities in Guides 2
// to 6, from memory); the smaller jars are common practice, no source, and
// more of them may fit.
var loads = []struct{ most, jars int64 }{{475, 9}, {500, 8}, {1000, 7}}

func load(w content.Way, millilitres *big.Rat) int64 {
	if !w.Canned() {
		return 0
	}
	for _, l := range loads {
		if millilitres.Cmp(big.NewRat(l.most, 1)) <= 0 {
			return l.jars
		}
	}
	return 0
}
