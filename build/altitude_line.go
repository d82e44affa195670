package build

import (
	"math/big"
	"slices"
	"strings"

	"stillroom/content"
)

// An altitudeLine is the bands of some jars that ask for the same.
type altitudeLine struct {
	name  string
	bands []altitudeBand
}

type altitudeBand struct {
	from, to *big.Rat // feet; to is nil if there is no upper end
	edge     string   // the upper end as it was written: 1,000
	unit     content.Unit
	value    float64
	figure   Figure
}

// linesOf gives a line for the jars that ask for the same at every altitude.
func linesOf[T any](rows []content.Processing, of func(content.Processing) []content.Band[T], value func(T) (*big.Rat, Figure)) []altitudeLine {
	var lines []altitudeLine
next:
	for _, p := range rows {
		l := altitudeLine{name: jarName(p.Jar.V)}
		for _, b := range of(p) {
			v, f := value(b.Value.V)
			if v == nil {
				continue next
			}
			l.bands = append(l.bands, bandOf(b, v, f))
		}
		if len(l.bands) == 0 {
			continue
		}
		if i := slices.IndexFunc(lines, l.same); i >= 0 {
			lines[i].name += " and " + strings.ToLower(l.name)
			continue
		}
		lines = append(lines, l)
	}
	return lines
}

func bandOf[T any](b content.Band[T], value *big.Rat, f Figure) altitudeBand {
	v, _ := value.Float64()
	band := altitudeBand{from: b.From.Feet(), unit: b.From.Unit, value: v, figure: f}
	if !b.To.IsZero() {
		band.to, band.unit = b.To.Feet(), b.To.Unit
		n, _ := down(b.To.Quantity, b.To.Unit)
		band.edge = thousands(n)
	}
	return band
}

func (l altitudeLine) same(o altitudeLine) bool {
	return slices.EqualFunc(l.bands, o.bands, func(a, b altitudeBand) bool {
		return a.value == b.value && a.edge == b.edge && a.unit == b.unit
	})
}

// at gives the value at the upper end of a band of another line; the last
// value beyond all ends.
func (l altitudeLine) at(feet *big.Rat) float64 {
	for _, b := range l.bands {
		if b.to == nil || feet != nil && feet.Cmp(b.to) <= 0 {
			return b.value
		}
	}
	return l.bands[len(l.bands)-1].value
}

// over reports whether a line lies above another at every altitude, and both
// end at the same one.
func (l altitudeLine) over(o altitudeLine) bool {
	for _, b := range slices.Concat(l.bands, o.bands) {
		if l.at(b.to) <= o.at(b.to) {
			return false
		}
	}
	return l.last().edge == o.last().edge
}

func (l altitudeLine) last() altitudeBand { return l.bands[len(l.bands)-1] }

// most gives the highest value.
func (l altitudeLine) most() float64 {
	most := 0.0
	for _, b := range l.bands {
		most = max(most, b.value)
	}
	return most
}

func minuteValue(d content.Duration) (*big.Rat, Figure) { return d.Minutes(), minutes(d) }
func pressureValue(p content.Pressure) (*big.Rat, Figure) {
	return p.PSI(), pressure(p)
}
