package validate

import (
	"fmt"

	"stillroom/content"
)

// pressureShort reports a gauge pressure under the one that was tested with
// the time beside it.
var pressureShort = &Rule{
	ID:       "pressure-short",
	Severity: Error,
	Summary:  "a pressure under the one that was tested with that time",
	Doc: `Under pressure the minutes stay the same at every altitude and the pressure
rises. Pressure and minutes belong together: where a publication offers a lower
pressure for a longer time, the two must be taken as a pair.

A dial gauge and a weighted gauge have bands of their own. For low-acid food the
dial starts at 11 psi and rises at 2,000, 4,000 and 6,000 ft; the weight goes from
10 to 15 above 1,000 ft. Food with acid has lower rows: the cited process decides.`,
	Source: Source{
		Title:   "Pacific Northwest Extension PNW 421, with the values of AIB 539",
		Address: "https://manuzoid.com/manuals/x1p7b-Pacific%20Northwest%20PNW%20421%20User%20guide",
	},
	CheckKeeping: checkPressureShort,
}

func checkPressureShort(_ *content.Recipe, m *Match) []Finding {
	if m.Keeping.Way.V != content.PressureCanner {
		return nil
	}
	var fs []Finding
	for _, j := range m.Jars {
		for _, gauge := range gauges {
			fs = append(fs, gaugeShort(m, j, gauge)...)
		}
	}
	return fs
}

func gaugeShort(m *Match, j JarMatch, gauge string) []Finding {
	s := j.schedule(gauge)
	if s == nil {
		return gaugeUntested(j, gauge)
	}
	var fs []Finding
	for _, b := range pressureBands(j.gaugeBands(gauge)) {
		t, short := pressureUnder(b, s)
		if !short {
			continue
		}
		fs = append(fs, Finding{
			Pos: b.at,
			Message: fmt.Sprintf("%s on a %s gauge is under the tested %d psi with %d min %s for %s",
				b.said, gauge, t.PSI, t.Minutes, t.at(), j.jars()),
			Advice: fmt.Sprintf("Write %d psi or more for %s, or take another pair of time and pressure that the process lists.", t.PSI, b.text),
			Source: m.Process.Source(),
		})
	}
	return fs
}

// gaugeUntested reports pressures for a gauge that the process has none for.
func gaugeUntested(j JarMatch, gauge string) []Finding {
	if j.Tested == nil || len(j.gaugeBands(gauge)) == 0 {
		return nil
	}
	return []Finding{{
		Pos:     j.place(gauge),
		Message: fmt.Sprintf("nothing is published for a %s gauge", gauge),
		Advice:  "Leave this gauge out.",
	}}
}
