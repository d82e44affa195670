package amount

import (
	"fmt"
	"math/big"
	"strconv"
)

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
