package validate

import (
	"math/big"

	"stillroom/content"
)

// A Process is a published tested process of one food for one method and one
// pack.
type Process struct {
	ID          string // green-beans-raw
	Food        string // as published: "green beans (snap, wax, italian), pieces"
	Method      content.Way
	Pack        content.Pack // empty where the publication names none
	Jars        []JarProcess // smallest first
	Publication string
	Table       string
}

// A JarProcess is what a process asks of one size of jar.
type JarProcess struct {
	Jar       string   // half-pint, pint, quart, half-gallon
	Headspace *big.Rat // inches
	Schedules []Schedule
}

// A Schedule is one whole way to process a jar: one for boiling water; for
// pressure one for each gauge, and where the publication offers a choice of
// pressures one for each of them.
type Schedule struct {
	Name  string       // dial, weighted-10; empty for boiling water
	Gauge string       // dial, weighted; empty for boiling water
	Bands []TestedBand // lowest first, without gaps
}

// A TestedBand is one published figure.
type TestedBand struct {
	From, To int // feet; To is 0 where the band has no upper end
	Minutes  int
	PSI      int // 0 for boiling water
	Evidence string
}

// FromMemory reports whether the figure was not seen in a published copy.
func (b TestedBand) FromMemory() bool { return b.Evidence == "memory" }
