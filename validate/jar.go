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

// JarOunces gives what a named size of jar holds, in US fluid ounces; nil if
// there is no such size. Nobody may change it.
func JarOunces(name string) *big.Rat { return jarSizes()[name] }

// jarOunces gives what a jar holds in US fluid ounces: the upper end, where a
// range was written.
func jarOunces(j content.Jar) (*big.Rat, bool) {
	if size := JarOunces(j.Name); size != nil {
		return size, true
	}
	q, ok := j.Volume.In(content.FluidOunce)
	return q.High, ok && q.High != nil
}
