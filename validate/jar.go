package validate

import (
	"math/big"
	"sync"

	"stillroom/content"
)

// jarSizes gives what each named size of jar holds, in US fluid ounces.
var jarSizes = sync.OnceValue(func() map[string]*big.Rat {
	m := map[string]*big.Rat{}
	for _, r := range readTable("jars.tsv") {
		m[r.text("jar")] = r.rat("fl_oz")
	}
	return m
})

// jarSize gives what a jar holds in US fluid ounces: the upper end, where a
// range was written.
func jarSize(j content.Jar) (*big.Rat, bool) {
	if j.Name != "" {
		size, ok := jarSizes()[j.Name]
		return size, ok
	}
	return fluidOunces(j.Volume.High, j.Volume.Unit)
}

// fluidOunces turns a volume into US fluid ounces, exactly.
func fluidOunces(amount *big.Rat, unit content.Unit) (*big.Rat, bool) {
	one, ok := volumeUnits()[unit]
	if !ok || amount == nil {
		return nil, false
	}
	return new(big.Rat).Mul(amount, one), true
}

// volumeUnits gives one of each unit of volume in US fluid ounces.
var volumeUnits = sync.OnceValue(func() map[content.Unit]*big.Rat {
	m := map[content.Unit]*big.Rat{}
	for _, r := range readTable("volumes.tsv") {
		m[content.Unit(r.text("unit"))] = r.rat("fl_oz")
	}
	return m
})
