package validate

import (
	"math/big"

	"stillroom/content"
)

// A bandTable is one table by altitude of an entry of processing: of times,
// of dial-gauge pressures or of weighted-gauge pressures.
type bandTable struct {
	key    string // altitude, dial, weighted
	pos    content.Pos
	bands  []band
	tested []TestedBand // of the schedule that it is judged by; nil if none
}

// A band is a content.Band with its value as a bare number: minutes or psi.
type band struct {
	pos   content.Pos
	text  string
	span  span
	unit  content.Unit // in which its edges were written
	value *big.Rat     // nil if none was written
	said  string       // the value as written
	at    content.Pos  // where the value stands
}

// tables gives the tables by altitude of the entry, those that were written.
func (j JarMatch) tables() []bandTable {
	if j.made != nil {
		return j.made
	}
	var ts []bandTable
	add := func(key string, bands []band, tested []TestedBand) {
		if len(bands) > 0 {
			ts = append(ts, bandTable{key, j.place(key), bands, tested})
		}
	}
	add("altitude", timeBands(j.Entry.Altitude), j.testedTimes())
	add("dial", pressureBands(j.Entry.Dial), j.scheduleBands(DialGauge))
	add("weighted", pressureBands(j.Entry.Weighted), j.scheduleBands(WeightedGauge))
	return ts
}

func (j JarMatch) testedTimes() []TestedBand {
	if j.Tested == nil || j.Tested.Schedules[0].Gauge != "" {
		return nil
	}
	return j.Tested.Schedules[0].Bands
}

func (j JarMatch) scheduleBands(gauge string) []TestedBand {
	s := j.schedule(gauge)
	if s == nil {
		return nil
	}
	return s.Bands
}

func timeBands(bs []content.Band[content.Duration]) []band {
	out := make([]band, 0, len(bs))
	for _, b := range bs {
		n := bandOf(b)
		if b.Value.Set() {
			n.value, n.said = b.Value.V.Minutes(), b.Value.V.Text
		}
		out = append(out, n)
	}
	return out
}

func pressureBands(bs []content.Band[content.Pressure]) []band {
	out := make([]band, 0, len(bs))
	for _, b := range bs {
		n := bandOf(b)
		if b.Value.Set() {
			n.value, n.said = b.Value.V.PSI(), b.Value.V.Text
		}
		out = append(out, n)
	}
	return out
}

func bandOf[T any](b content.Band[T]) band {
	return band{pos: b.Pos, text: b.Text, span: spanOf(b), unit: b.From.Unit, at: b.Value.Pos}
}

// one is one foot or one metre, in feet: the least step between the written
// edges of two bands.
func (b band) one() *big.Rat {
	if b.unit == content.Foot {
		return oneFoot
	}
	return oneMetre
}

var (
	oneFoot  = big.NewRat(1, 1)
	oneMetre = content.Altitude{Quantity: content.Quantity{Low: oneFoot, High: oneFoot, Unit: content.Metre}}.Feet()
)

// checkTables runs a check on every table by altitude of a way of keeping.
func checkTables(m *Match, check func(bandTable) []Finding) []Finding {
	if !m.Keeping.Way.V.Canned() {
		return nil
	}
	var fs []Finding
	for _, j := range m.Jars {
		for _, t := range j.tables() {
			fs = append(fs, check(t)...)
		}
	}
	return fs
}
