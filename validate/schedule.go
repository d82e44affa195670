package validate

import "stillroom/content"

// gauges are the two kinds of gauge that a pressure canner has.
var gauges = []string{DialGauge, WeightedGauge}

// schedule picks the schedule of that gauge by which a pressure entry is
// judged. A publication may offer several, each with a pressure and a time of
// its own; the one that the entry agrees with whole is taken, else the longest
// whose time the entry reaches, else the shortest. Nil if there is none.
func (j JarMatch) schedule(gauge string) *Schedule {
	if j.Tested == nil {
		return nil
	}
	var best *Schedule
	for i := range j.Tested.Schedules {
		s := &j.Tested.Schedules[i]
		if s.Gauge != gauge {
			continue
		}
		if j.agrees(s) {
			return s
		}
		if best == nil || j.nearer(s, best) {
			best = s
		}
	}
	return best
}

// agrees reports whether the entry's time and every pressure reach those of
// the schedule.
func (j JarMatch) agrees(s *Schedule) bool {
	if !j.reachesTime(s) {
		return false
	}
	for _, b := range pressureBands(j.gaugeBands(s.Gauge)) {
		if _, short := pressureUnder(b, s); short {
			return false
		}
	}
	return true
}

// nearer reports whether s is a better measure of the entry than t.
func (j JarMatch) nearer(s, t *Schedule) bool {
	rs, rt := j.reachesTime(s), j.reachesTime(t)
	switch {
	case rs && rt:
		return s.minutes() > t.minutes()
	case rs != rt:
		return rs
	}
	return s.minutes() < t.minutes()
}

func (j JarMatch) reachesTime(s *Schedule) bool {
	return j.Entry.Time.Set() && !shorter(j.Entry.Time.V, s.minutes())
}

func (j JarMatch) gaugeBands(gauge string) []content.Band[content.Pressure] {
	if gauge == DialGauge {
		return j.Entry.Dial
	}
	return j.Entry.Weighted
}

// pressureUnder finds the first tested band that the written one touches and
// stays under.
func pressureUnder(b band, s *Schedule) (TestedBand, bool) {
	if b.value == nil {
		return TestedBand{}, false
	}
	for _, t := range s.Bands {
		if t.touches(b.span) && compareWhole(b.value, t.PSI) < 0 {
			return t, true
		}
	}
	return TestedBand{}, false
}
