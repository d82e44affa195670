package validate

import (
	"math/big"
	"time"
)

// A Produce is a food that is preserved. Nobody may change what it points to.
type Produce struct {
	Name      string // singular: plum
	Plural    string // plums
	Group     Group
	Acidity   Acidity // by its pH, or as a notice or a publication rules
	Low, High *big.Rat
	PH        []PHRange    // the rows behind Low and High; empty if none is listed
	Basis     string       // of an Acidity that is not by pH
	Season    []time.Month // northern temperate zone, in order of the months
	Blanch    []Blanching  // before freezing; empty if it is not wanted, or not known
}

// A Blanching is how long a vegetable is blanched before it is frozen.
type Blanching struct {
	Form      string   // small, shredded; empty where one time holds for all
	Low, High *big.Rat // minutes; equal unless a range is published
	Source    Source
}

// LookUpProduce finds the food that a few words speak of: an entry of a
// recipe's produce, or the item of an ingredient. What is made of a food and
// is no longer that food (a seed, an oil, a paste) is not found.
func LookUpProduce(words string) (Produce, bool) {
	k := kitchen()
	var list [24]textWord
	m, _ := k.book.head(k.book.cut(words, list[:0]))
	if m.produce == 0 {
		return Produce{}, false
	}
	return k.produce[m.produce-1], true
}

// AllProduce gives every food of the table, in order of name. Nobody may
// change them.
func AllProduce() []Produce { return kitchen().produce }
