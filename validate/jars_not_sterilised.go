package validate

import (
	"fmt"

	"stillroom/content"
)

// sterilisingMinutes is the time from which a process needs no sterilised
// jars.
var sterilisingMinutes = func() int { return LimitInt("jar-sterilise-when") }

// jarsNotSterilised reports a process under 10 minutes in jars that were not
// sterilised.
var jarsNotSterilised = &Rule{
	ID:       "jars-not-sterilised",
	Severity: Error,
	Summary:  "a process under 10 minutes in jars that were not sterilised",
	Doc: `A process of 10 minutes or more also sterilises the empty part of the jar. A
shorter one does not: the empty jars are boiled for 10 minutes first, and a
minute longer for every further 1,000 ft.

Either sterilise the jars, say so in the steps and write "jars_sterilised:
true"; or leave it out and raise every band by what the lowest tested one is
short of 10 min, so that 5, 10 and 15 min become 10, 15 and 20.`,
	Source: Source{
		Title:   "Sterilizing empty jars, Michigan State University Extension, after AIB 539",
		Address: "https://cdn.preterhuman.net/texts/survival/survival_library/pfs/01600946.htm",
	},
	CheckKeeping: checkJarsNotSterilised,
}

func checkJarsNotSterilised(_ *content.Recipe, m *Match) []Finding {
	k := m.Keeping
	if k.Way.V == content.PressureCanner || k.JarsSterilised.V {
		return nil
	}
	var fs []Finding
	for _, j := range m.Jars {
		if j.Tested == nil {
			continue
		}
		tested := j.Tested.Schedules[0].Bands
		raise := sterilisingMinutes() - tested[0].Minutes
		if raise <= 0 {
			continue
		}
		for _, b := range j.Entry.Altitude {
			fs = append(fs, unsterilised(j, b, tested, raise)...)
		}
	}
	return fs
}

// unsterilised speaks of the first tested band that the raised time is short
// of. A time that is under the tested one as it stands is left to time-short.
func unsterilised(j JarMatch, b content.Band[content.Duration], tested []TestedBand, raise int) []Finding {
	if !b.Value.Set() {
		return nil
	}
	s := spanOf(b)
	for _, t := range tested {
		if !t.touches(s) {
			continue
		}
		if shorter(b.Value.V, t.Minutes) {
			return nil
		}
		if shorter(b.Value.V, t.Minutes+raise) {
			return []Finding{{
				Pos: b.Value.Pos,
				Message: fmt.Sprintf("%s %s is tested only for sterilised jars; others need %d min",
					b.Value.V.Text, t.at(), t.Minutes+raise),
				Advice: fmt.Sprintf("Sterilise the jars and write jars_sterilised: true, or write %d min for %s (%s).",
					t.Minutes+raise, b.Text, j.jars()),
			}}
		}
	}
	return nil
}
