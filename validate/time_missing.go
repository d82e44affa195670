package validate

import "stillroom/content"

// timeMissing reports a pressure process without its minutes.
var timeMissing = &Rule{
	ID:       "time-missing",
	Severity: Error,
	Summary:  "a pressure process without its time, or a band without a figure",
	Doc: `A process is a time at a temperature. An end that is an event ("until the lids
pop") proves nothing about the heating. Write "time:" for a pressure process, and
a figure for each band of a table.`,
	Source:       guide,
	CheckKeeping: checkTimeMissing,
}

func checkTimeMissing(_ *content.Recipe, m *Match) []Finding {
	if !m.Keeping.Way.V.Canned() {
		return nil
	}
	var fs []Finding
	for _, j := range m.Jars {
		if m.Keeping.Way.V == content.PressureCanner && !j.Entry.Time.Set() {
			fs = append(fs, Finding{
				Pos:     j.place("time"),
				Message: "no time",
				Advice:  "Write time: with the minutes of the process.",
			})
		}
		for _, t := range j.tables() {
			fs = append(fs, emptyBands(t)...)
		}
	}
	return fs
}

func emptyBands(t bandTable) []Finding {
	var fs []Finding
	for _, b := range t.bands {
		if b.value == nil {
			fs = append(fs, Finding{
				Pos:     b.pos,
				Message: "no figure for " + b.text,
				Advice:  "Write the figure that the process has for this band.",
			})
		}
	}
	return fs
}
