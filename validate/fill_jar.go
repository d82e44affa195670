package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// fillJar writes the figures of a jar into its entry.
func (w *filler) fillJar(t content.Place, m *Match, j JarMatch) {
	if j.Tested == nil {
		return // refused already
	}
	where := fmt.Sprintf("%s, %s", m.Keeping.Way.V, j.Entry.Jar.V)
	if m.Keeping.Way.V != content.PressureCanner {
		w.table(t, where, bandTable{"altitude", j.place("altitude"), timeBands(j.Entry.Altitude), j.testedTimes()}, m.times(j.Tested))
		return
	}
	o, ok := j.option()
	if !ok {
		w.refuse(severalOptions(m, j.Entry.Pos, j.Tested.options()))
		return
	}
	if time := j.Entry.Time; !time.Set() || shorter(time.V, o.minutes) {
		w.set(t, where, "time", minutesText(o.minutes), time.V.Text)
	}
	for _, gauge := range gauges {
		if s := o.schedule(gauge); s != nil {
			w.table(t, where, bandTable{gauge, j.place(gauge), pressureBands(j.gaugeBands(gauge)), s.Bands}, pressures(s))
		}
	}
}

// table puts a table by altitude right. Where only figures fall short, they
// alone are changed, so that bands of the cook's own stay; else the tested
// bands take the place of all.
func (w *filler) table(t content.Place, where string, have bandTable, want []bandFigure) {
	below, ok := t.Under(have.key)
	if !ok || below.Len() != len(have.bands) || len(have.bands) == 0 || len(gaps(have)) > 0 || len(reach(have)) > 0 {
		w.wholeTable(t, where, have, want)
		return
	}
	raised := have
	raised.bands = nil
	for _, b := range have.bands {
		if need := needed(b, want); need != nil && (b.value == nil || b.value.Cmp(need.rat()) < 0) {
			b.value = need.rat()
		}
		raised.bands = append(raised.bands, b)
	}
	if len(falls(raised)) > 0 {
		w.wholeTable(t, where, have, want)
		return
	}
	for i, b := range have.bands {
		if to := raised.bands[i].value; b.value == nil || b.value.Cmp(to) != 0 {
			need := needed(b, want)
			below.Set(b.text, content.Writing{Text: need.text()})
			w.tell(where, fmt.Sprintf("%s: %s: %s", have.key, b.text, need.text()), b.said)
		}
	}
}

func (w *filler) wholeTable(t content.Place, where string, have bandTable, want []bandFigure) {
	t.Set(have.key, writtenTable(want))
	was := ""
	if len(have.bands) > 0 {
		was = "another table"
	}
	w.tell(where, fmt.Sprintf("%s: %s to %s", have.key, want[0].text(), want[len(want)-1].text()), was)
}

// needed gives the highest figure of the tested bands that a written one
// touches; nil if it touches none.
func needed(b band, want []bandFigure) *bandFigure {
	var most *bandFigure
	for i, f := range want {
		if f.touches(b.span) && (most == nil || f.n > most.n) {
			most = &want[i]
		}
	}
	return most
}

// An option is one published way to process a jar under pressure: a time, and
// for each gauge the pressures that go with it.
type option struct {
	minutes        int
	dial, weighted *Schedule // nil where nothing is published for that gauge
}

func (o option) schedule(gauge string) *Schedule {
	if gauge == DialGauge {
		return o.dial
	}
	return o.weighted
}

// options gives the published ways to process the jar under pressure, in the
// order of their table.
func (t *JarProcess) options() []option {
	var all []option
	for i := range t.Schedules {
		s := &t.Schedules[i]
		at := -1
		for k := range all {
			if all[k].minutes == s.minutes() {
				at = k
			}
		}
		if at < 0 {
			all = append(all, option{minutes: s.minutes()})
			at = len(all) - 1
		}
		if s.Gauge == DialGauge {
			all[at].dial = s
		} else {
			all[at].weighted = s
		}
	}
	return all
}

// option picks the way that the entry means: by its time and its pressures, or
// by one of them where the other was not written or fits no way. It reports
// false if several are meant, or none.
func (j JarMatch) option() (option, bool) {
	all := j.Tested.options()
	byTime := func(o option) bool { return j.Entry.Time.Set() && j.Entry.Time.V.Minutes().Cmp(feet(o.minutes)) == 0 }
	byPressure := func(o option) bool {
		return begins(j.Entry.Dial, o.dial) || begins(j.Entry.Weighted, o.weighted)
	}
	for _, fits := range []func(option) bool{
		func(option) bool { return true },
		func(o option) bool { return byTime(o) && byPressure(o) },
		byTime,
		byPressure,
	} {
		if o, ok := only(all, fits); ok {
			return o, true
		}
	}
	return option{}, false
}

// begins reports whether a table begins with the lowest pressure of a
// schedule.
func begins(bands []content.Band[content.Pressure], s *Schedule) bool {
	if len(bands) == 0 || s == nil || !bands[0].Value.Set() {
		return false
	}
	return bands[0].Value.V.PSI().Cmp(new(big.Rat).SetInt64(int64(s.Bands[0].PSI))) == 0
}

// only gives the one option that fits, if there is just one.
func only(all []option, fits func(option) bool) (found option, ok bool) {
	for _, o := range all {
		if !fits(o) {
			continue
		}
		if ok {
			return option{}, false
		}
		found, ok = o, true
	}
	return found, ok
}

// severalOptions refuses to choose between pairs of time and pressure.
func severalOptions(m *Match, at content.Pos, all []option) Finding {
	var pairs []string
	for _, o := range all {
		pairs = append(pairs, o.String())
	}
	return Finding{
		Pos:      at,
		Rule:     timeMissing.ID,
		Severity: Error,
		Message:  fmt.Sprintf("%s is published with several times, and it is not said which is meant", m.Process.ID),
		Advice:   fmt.Sprintf("Write jar: and time: of one of them: %s.", orList(pairs)),
		Source:   m.Process.Source(),
	}
}

// String names the option: 20 min (6 psi on a dial gauge, 5 psi on a weighted).
func (o option) String() string {
	var at []string
	for _, gauge := range gauges {
		if s := o.schedule(gauge); s != nil {
			at = append(at, fmt.Sprintf("%d psi on a %s gauge", s.Bands[0].PSI, gauge))
		}
	}
	return fmt.Sprintf("%d min (%s)", o.minutes, orList(at))
}
