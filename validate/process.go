package validate

import (
	"math/big"

	"stillroom/content"
)

// A Process is a published tested process of one food for one method and one
// pack. Nobody may change it.
type Process struct {
	ID          string // green-beans-raw
	Food        string // as published: "green beans (snap, wax, italian), pieces"
	Method      content.Way
	Pack        content.Pack // empty where the publication names none
	Jars        []JarProcess // smallest first
	Publication string
	Edition     string // of the publication; empty where each of its pages is revised by itself
	Since       string // the edition of these tables that first had the figures as they are
	Table       string // of its first schedule; the tables of dial and weighted gauges have names of their own
	Facts              // what holds for the food whatever the method
}

// Processes gives every process, in order of ID and method. Nobody may change
// them.
func Processes() []*Process { return processes() }

// A JarProcess is what a process asks of one size of jar.
type JarProcess struct {
	Jar       string   // half-pint, pint, quart, half-gallon; empty where none is published
	Headspace *big.Rat // inches; nil where none is published
	Schedules []Schedule
}

// A Schedule is one whole way to process a jar: one for boiling water; for
// pressure one for each gauge, and where the publication offers a choice of
// pressures one for each of them.
type Schedule struct {
	Name  string       // dial, weighted-10; empty for boiling water
	Gauge string       // dial, weighted; empty for boiling water
	Bands []TestedBand // lowest first, without gaps
	Table string       // where in the publication it stands
}

// A TestedBand is one published figure.
type TestedBand struct {
	From, To int    // feet; To is 0 where the band has no upper end
	Minutes  int    // 0 only for what is kept in the refrigerator and not heated
	PSI      int    // 0 for boiling water
	Evidence string // address of a published copy, or "memory"
}

// FromMemory reports whether the figure was not seen in a published copy.
func (b TestedBand) FromMemory() bool { return b.Evidence == memory }

// Gauge names of schedules.
const (
	DialGauge     = "dial"
	WeightedGauge = "weighted"
)

// FromMemory counts the figures of the process that were not seen in a
// published copy, and all of them.
func (p *Process) FromMemory() (unseen, all int) {
	for _, j := range p.Jars {
		for _, s := range j.Schedules {
			for _, b := range s.Bands {
				all++
				if b.FromMemory() {
					unseen++
				}
			}
		}
	}
	return unseen, all
}

// Source is where the process was published: with the address of a copy that
// was seen, if any was.
func (p *Process) Source() Source {
	title := p.Publication + ": " + p.Table
	for _, j := range p.Jars {
		for _, s := range j.Schedules {
			for _, b := range s.Bands {
				if !b.FromMemory() {
					return sourceOf(title, b.Evidence)
				}
			}
		}
	}
	return sourceOf(title, memory)
}

// Source is where the schedule stands in the publication of its process.
func (s Schedule) Source(p *Process) Source {
	return sourceOf(p.Publication+": "+s.Table, s.Bands[0].Evidence)
}

// Largest is the largest jar that was tested; empty where none is published.
func (p *Process) Largest() string { return p.Jars[len(p.Jars)-1].Jar }

// Jar gives what the process asks of a size of jar: that of the size itself,
// or of the next published size up, as for a size that was not tested. It is
// nil for a jar larger than any that was.
func (p *Process) Jar(j content.Jar) (tested *JarProcess, exact bool) {
	size, ok := jarOunces(j)
	if !ok {
		return nil, false
	}
	for i := range p.Jars {
		published := JarOunces(p.Jars[i].Jar)
		if published == nil {
			continue // kept in whatever jar there is
		}
		if c := compare(size, published); c <= 0 {
			return &p.Jars[i], c == 0
		}
	}
	return nil, false
}
