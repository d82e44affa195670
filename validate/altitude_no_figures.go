package validate

import "stillroom/content"

// altitudeNoFigures reports "adjust for altitude" where no figure is given.
var altitudeNoFigures = &Rule{
	ID:       "altitude-no-figures",
	Severity: Error,
	Summary:  "the words \"adjust for altitude\" without a figure",
	Doc: `A reader cannot adjust by guess. The page prints the table by altitude that the
front matter gives; where there is none, "adjust for your altitude" is an order that
nobody can follow.`,
	Source: Source{Title: blogStudy.Title, Address: blogStudy.Address},
	Practice: &Practice{
		Phrases: `adjust~|adapt~|correct~|allow~|compensate~|account~ .. altitude|elevation|high_altitude; altitude|elevation adjust~|adjustment~; increase~|add~|extend~|lengthen~|change~ .. altitude|elevation
			check~|consult~|see|look~ .. altitude|elevation .. times|time|adjustment~|table|chart; depending on .. altitude|elevation; according to .. altitude|elevation; for|at higher|high altitudes|elevations|altitude|elevation ... longer|more|increase|add|adjust
			adjust~|adapt~|correct~|alter~|change~ ... altitude|elevation; hills|mountain~|mountains|up_high|highlands|higher_up|thin_air ... longer|more|extra|increase~|add~|raise~; live|lives|living|dwell~ .. high|up|above|altitude|elevation ... longer|more|extra|increase~|add~|raise~
			mountain~|mountains|hills|high_up|high_altitude|high_country|highlands ... longer|more|extra|increase~|add~|raise~|minutes; live|lives|living ... high_up|up_high|in_the_mountains|in_the_hills|at_altitude ... longer|more|extra|little`,
		Where:   whereNoTable,
		Message: "readers are told to adjust for altitude, and no figure is given",
		Advice:  "Give the times of every band in the way of keeping; the page prints them.",
	},
}

// whereNoTable holds in recipes whose text processes jars, and whose front
// matter has no table by altitude.
func whereNoTable(t *Text, s *sentence, _ hit) bool {
	if t.Recipe == nil || s.forCold() || s.anyOf("gel jell set thermometer blanch boiling") {
		return false
	}
	for _, m := range t.Matches {
		for _, j := range m.Jars {
			if len(j.Entry.Altitude)+len(j.Entry.Dial)+len(j.Entry.Weighted) > 0 {
				return false
			}
		}
	}
	for _, f := range s.figures() {
		if f.measures == content.AltitudeDim {
			return false
		}
	}
	return t.canned() || len(t.timesOfProcess()) > 0
}
