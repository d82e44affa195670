package amount

import "math/big"

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
