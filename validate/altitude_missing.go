package validate

import "stillroom/content"

// altitudeMissing reports boiling-water and steam processing without a table
// of times by altitude.
var altitudeMissing = &Rule{
	ID:       "altitude-missing",
	Severity: Error,
	Summary:  "no table of times, or of pressures, by altitude",
	Doc: `Water boils at a lower temperature the higher the kitchen lies. At 1,000 ft
and above, a time that was tested at the sea is not enough. "Adjust for
altitude" without figures leaves the reader to guess: in a study of salsas on
food blogs, 8 posts of 56 gave any adjustment.

Write "altitude:" with a time for each band of the process.`,
	Source:       blogStudy,
	CheckKeeping: checkAltitudeMissing,
}

func checkAltitudeMissing(_ *content.Recipe, m *Match) []Finding {
	if w := m.Keeping.Way.V; w != content.BoilingWater && w != content.AtmosphericSteam {
		return nil
	}
	var fs []Finding
	for _, j := range m.Jars {
		if len(j.Entry.Altitude) > 0 {
			continue
		}
		fs = append(fs, Finding{
			Pos:     j.place("altitude"),
			Message: "no times by altitude",
			Advice:  "Write altitude: with a time for each band, as the process has them.",
		})
	}
	return fs
}

// place is where a finding belongs about a key of the entry that may not have
// been written.
func (j JarMatch) place(key string) content.Pos {
	if p, ok := j.Entry.Keys[key]; ok {
		return p
	}
	return j.Entry.Pos
}
