package amount

import (
	"fmt"
	"math/big"
	"strconv"
)

// A Plan is a number of batches of a Making, worked out.
type Plan struct {
	Batches *big.Rat // within what is offered
	Full    int64    // whole batches that are cooked one by one; 0 if all is one pot
	Rest    *big.Rat // the size of the last, smaller batch; zero if there is none
	making  Making
	jar     int
	minutes int64 // of one canner load; the longest if the altitude is not known
	outside bool  // more or less was asked for
}

// Plan works out a number of batches, filled into the jar of that place in the
// list. Minutes is the processing time of one load, if it is known, else 0.
func (m Making) Plan(batches *big.Rat, jar int, minutes int64) Plan {
	p := Plan{Batches: batches, Rest: new(big.Rat), making: m, jar: jar, minutes: minutes}
	switch {
	case batches.Cmp(m.Smallest) < 0:
		p.Batches, p.outside = m.Smallest, true
	case batches.Cmp(m.Largest) > 0:
		p.Batches, p.outside = m.Largest, true
	}
	if minutes == 0 && jar < len(m.Jars) {
		p.minutes = m.Jars[jar].Minutes
	}
	if m.Apart && p.Batches.Cmp(one) > 0 {
		p.Full = floor(p.Batches)
		p.Rest.Sub(p.Batches, big.NewRat(p.Full, 1))
	}
	return p
}

// ForJars gives the batches that fill no more than n jars.
func (m Making) ForJars(n *big.Rat, jar int) *big.Rat {
	return new(big.Rat).Quo(n, m.Jars[jar].High)
}

// Total is what the ingredients are multiplied by for all batches.
func (p Plan) Total() *big.Rat { return new(big.Rat).Mul(p.Batches, p.making.Factor) }

// Pot is what they are multiplied by for what is cooked at one time: a full
// batch, or the smaller part of one.
func (p Plan) Pot() *big.Rat {
	if p.Full > 0 {
		return p.making.Factor
	}
	return p.Total()
}

// Last is what they are multiplied by for the last, smaller batch; zero if
// there is none.
func (p Plan) Last() *big.Rat { return new(big.Rat).Mul(p.Rest, p.making.Factor) }

// Makes says what comes of it: 14 quart jars, about 3 1/2 pints.
func (p Plan) Makes() string {
	m := p.making
	if m.Yield != nil {
		return about(m.About) + m.Yield.In(p.Total(), Written)
	}
	if len(m.Jars) == 0 {
		return ""
	}
	j := m.Jars[p.jar]
	low, rounded := halves(new(big.Rat).Mul(j.Low, p.Batches))
	high, rounded2 := halves(new(big.Rat).Mul(j.High, p.Batches))
	words := j.Many
	if high == "1" || high == "1/2" {
		words = j.One
	}
	return about(m.About || rounded || rounded2) + span(measure{number: low, unit: words}, measure{number: high, unit: words})
}

func about(yes bool) string {
	if yes {
		return "about "
	}
	return ""
}

// halves writes a number of jars in halves, and reports whether it is rounded.
func halves(n *big.Rat) (s string, inexact bool) {
	x := new(big.Rat).Mul(n, two)
	return mixed(rounded(x, []step{{size: 1}}, Nearest), 2), !x.IsInt()
}

// Says tells in sentences what the amounts are now for, and what that means
// for the work.
func (p Plan) Says() []string {
	what := p.size()
	if makes := p.Makes(); makes != "" {
		what = makes + ": " + what
	}
	says := []string{"Amounts now for " + what + "."}
	if p.outside {
		says = append(says, fmt.Sprintf("This recipe is offered for %s to %s.", fraction(p.making.Smallest), batches(p.making.Largest)))
	}
	if p.making.Canned && p.partJar() {
		says = append(says, "What does not fill a jar goes in the refrigerator.")
	}
	if l := p.loads(); l != "" {
		says = append(says, l)
	}
	if t := p.time(); t != "" {
		says = append(says, "About "+t+" in the kitchen.")
	}
	return says
}

// size says how many batches there are, and how they are cooked.
func (p Plan) size() string {
	if p.Full == 0 && p.Batches.Cmp(one) > 0 {
		return times(p.Total())
	}
	s := batches(p.Batches)
	switch {
	case p.Rest.Sign() > 0 && p.Full == 1:
		s = "1 full batch and a smaller one"
	case p.Rest.Sign() > 0:
		s = strconv.FormatInt(p.Full, 10) + " full batches and a smaller one"
	}
	if p.making.Factor.Cmp(one) != 0 {
		s += " of " + times(p.making.Factor)
	}
	switch {
	case p.Full > 0 && p.making.Canned:
		s += ", each cooked and canned on its own"
	case p.Full > 0:
		s += ", each cooked on its own"
	}
	return s
}

// batches writes a number of batches that is whole, or below one.
func batches(n *big.Rat) string {
	switch {
	case n.Cmp(one) > 0:
		return fraction(n) + " batches"
	case odd(n):
		return "a smaller batch"
	}
	return fraction(n) + " batch"
}

// times writes how many times the recipe something is.
func times(n *big.Rat) string {
	s := fraction(n)
	if odd(n) {
		x := new(big.Rat).Mul(n, big.NewRat(4, 1))
		s = "about " + mixed(rounded(x, []step{{size: 1}}, Nearest), 4)
	}
	return s + " times the recipe"
}

// odd reports whether a number is none that people say.
func odd(n *big.Rat) bool { return n.Denom().Cmp(big.NewInt(8)) > 0 }

// fraction writes a number exactly: 3, 1 1/2.
func fraction(n *big.Rat) string { return mixed(n.Num().Int64(), n.Denom().Int64()) }

// partJar reports whether some batch leaves a jar that is not full.
func (p Plan) partJar() bool {
	if len(p.making.Jars) == 0 {
		return false
	}
	j := p.making.Jars[p.jar]
	for _, b := range p.pots() {
		if j.Low.Cmp(j.High) == 0 && !new(big.Rat).Mul(j.High, b).IsInt() {
			return true
		}
	}
	return false
}

// pots are the sizes of batch that are cooked, in batches: a full one stands
// for all full ones.
func (p Plan) pots() []*big.Rat {
	switch {
	case p.Full == 0:
		return []*big.Rat{p.Batches}
	case p.Rest.Sign() == 0:
		return []*big.Rat{one}
	}
	return []*big.Rat{one, p.Rest}
}

// loads says how often the canner is filled.
func (p Plan) loads() string {
	n, _ := p.countLoads()
	if n == 0 {
		return ""
	}
	j := p.making.Jars[p.jar]
	s := strconv.FormatInt(n, 10) + " canner load"
	if n > 1 {
		s += "s"
	}
	return s + " of up to " + strconv.FormatInt(j.Load, 10) + " " + j.Many + "."
}

// countLoads counts the loads, each batch having its own, and how many of them
// wait for another of the same batch.
func (p Plan) countLoads() (n, waiting int64) {
	if len(p.making.Jars) == 0 || p.making.Jars[p.jar].Load == 0 {
		return 0, 0
	}
	j := p.making.Jars[p.jar]
	for i, b := range p.pots() {
		full := ceil(new(big.Rat).Quo(new(big.Rat).Mul(j.High, b), big.NewRat(j.Load, 1)))
		times := int64(1)
		if i == 0 && p.Full > 0 {
			times = p.Full
		}
		n += times * full
		waiting += times * (full - 1)
	}
	return n, waiting
}

// time says how long the work takes, waiting left out: each batch as long as
// one of the recipe, and the processing of further loads.
func (p Plan) time() string {
	if p.making.Minutes == 0 || p.Full == 0 && p.Batches.Cmp(one) > 0 {
		return ""
	}
	n := max(p.Full, 1)
	if p.Rest.Sign() > 0 {
		n++
	}
	_, waiting := p.countLoads()
	return hours(n*p.making.Minutes + waiting*p.minutes)
}

// hours writes minutes: 50 min, 3 h, 7 h 30 min.
func hours(m int64) string {
	h, rest := strconv.FormatInt(m/60, 10)+" h", strconv.FormatInt(m%60, 10)+" min"
	switch {
	case m < 60:
		return rest
	case m%60 == 0:
		return h
	}
	return h + " " + rest
}
