package validate

import (
	"math/big"
	"sync"
)

// A PHRange is the pH of a food as a list prints it.
type PHRange struct {
	Food      string // as printed: "plums, damson"
	Low, High *big.Rat
	Source    Source
	Evidence  string
}

// PHRanges gives every row of the pH lists, in their order. Nobody may change
// them.
func PHRanges() []PHRange { return phRanges() }

var phRanges = sync.OnceValue(func() []PHRange {
	var ps []PHRange
	for _, r := range readTable("food-ph.tsv") {
		ps = append(ps, PHRange{
			Food:     r.text("food"),
			Low:      r.rat("ph_low"),
			High:     r.rat("ph_high"),
			Source:   r.source("publication"),
			Evidence: evidence(r.text("evidence")),
		})
	}
	return ps
})

// phRows gives the rows of each food by its printed name: as many as there
// are lists that hold it.
var phRows = sync.OnceValue(func() map[string][]PHRange {
	m := map[string][]PHRange{}
	for _, p := range PHRanges() {
		m[p.Food] = append(m[p.Food], p)
	}
	return m
})

// acidityOf places a range of pH beside the line at 4.6.
func acidityOf(low, high *big.Rat) Acidity {
	limit := LimitRat("acid-limit-ph")
	switch {
	case high.Cmp(limit) <= 0:
		return Acid
	case low.Cmp(limit) > 0:
		return LowAcid
	}
	return Borderline
}
