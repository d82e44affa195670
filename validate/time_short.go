package validate

import (
	"fmt"

	"stillroom/content"
)

// timeShort reports a jar processed for less than the tested time.
var timeShort = &Rule{
	ID:       "time-short",
	Severity: Error,
	Summary:  "a processing time under the tested one, at any altitude",
	Doc: `A process is a time at a temperature, measured in a laboratory at the coldest
spot of the jar. Each food, pack, size of jar and stretch of altitude has its
own. A shorter time leaves what it was meant to kill alive; nobody can see,
smell or taste the difference.

Write at least the tested minutes in every band. A band of yours that reaches
into two tested ones needs the longer of their times. A longer time than the
tested one is never refused. "stillroom processes ID" shows the whole table.`,
	Source:       guide,
	CheckKeeping: checkTimeShort,
}

func checkTimeShort(_ *content.Recipe, m *Match) []Finding {
	var fs []Finding
	for _, j := range m.Jars {
		if j.Tested == nil {
			continue
		}
		if m.Keeping.Way.V == content.PressureCanner {
			fs = append(fs, pressureTimeShort(m, j)...)
			continue
		}
		for _, b := range j.Entry.Altitude {
			fs = append(fs, bandTimeShort(m, j, b)...)
		}
	}
	return fs
}

// bandTimeShort compares one band with every tested band that it touches and
// speaks of the first that asks for more.
func bandTimeShort(m *Match, j JarMatch, b content.Band[content.Duration]) []Finding {
	if !b.Value.Set() {
		return nil
	}
	s := spanOf(b)
	for _, t := range j.Tested.Schedules[0].Bands {
		if t.touches(s) && shorter(b.Value.V, t.Minutes) {
			return []Finding{{
				Pos: b.Value.Pos,
				Message: fmt.Sprintf("%s is under the tested %d min %s for %s",
					b.Value.V.Text, t.Minutes, t.at(), j.jars()),
				Advice: fmt.Sprintf("Write %d min or more for %s.", t.Minutes, b.Text),
				Source: m.Process.Source(),
			}}
		}
	}
	return nil
}

// pressureTimeShort compares the one time of a pressure entry with the schedule
// that each of its gauges is judged by, and speaks of the longest. Without any
// gauge the shortest schedule of all is taken.
func pressureTimeShort(m *Match, j JarMatch) []Finding {
	if !j.Entry.Time.Set() {
		return nil
	}
	need := 0
	for _, gauge := range gauges {
		if s := j.schedule(gauge); s != nil && len(j.gaugeBands(gauge)) > 0 {
			need = max(need, s.minutes())
		}
	}
	if need == 0 {
		need = j.Tested.leastMinutes()
	}
	if !shorter(j.Entry.Time.V, need) {
		return nil
	}
	return []Finding{{
		Pos:     j.Entry.Time.Pos,
		Message: fmt.Sprintf("%s is under the tested %d min for %s", j.Entry.Time.V.Text, need, j.jars()),
		Advice:  fmt.Sprintf("Write %d min or more, at the pressure that is published for it.", need),
		Source:  m.Process.Source(),
	}}
}

// leastMinutes is the shortest time of all schedules.
func (t *JarProcess) leastMinutes() int {
	least := 0
	for _, s := range t.Schedules {
		if m := s.minutes(); least == 0 || m < least {
			least = m
		}
	}
	return least
}

// minutes is the longest time of the schedule's bands; under pressure they are
// all the same.
func (s Schedule) minutes() int {
	most := 0
	for _, b := range s.Bands {
		most = max(most, b.Minutes)
	}
	return most
}

// shorter reports whether the duration, or the low end of a range, is under
// that many minutes.
func shorter(d content.Duration, minutes int) bool {
	return compareWhole(d.Minutes(), minutes) < 0
}

// jars names the jar in a finding: "pint jars", or "500 ml jars, judged as
// quart jars".
func (j JarMatch) jars() string {
	own := j.Entry.Jar.V.String() + " jars"
	if j.Exact || j.Tested == nil {
		return own
	}
	return own + ", judged as " + j.Tested.Jar + " jars"
}
