package validate

// clockResumed reports a process that goes on where it stopped after the boil or
// the pressure was lost.
var clockResumed = &Rule{
	ID:       "clock-resumed",
	Severity: Error,
	Summary:  "a process that goes on where it stopped",
	Doc: `If the water stops boiling, or the pressure falls below the one of the table, the
middle of the jars cools while the clock runs. Bring the canner back to the boil or to
the pressure, and time the process over, from the beginning. To add the lost minutes is
not enough.`,
	Source: Source{
		Title: "USDA Complete Guide to Home Canning, Guide 1, using pressure canners (from memory)",
	},
	Practice: &Practice{
		Phrases: `maybe add~|make_up|tack~ .. minutes|minute|time|lost|missed|difference
			maybe carry_on|go_on|keep_on|continue~|resume~|pick_up|pick_it_up ... time|timing|clock|timer|counting|count|where|left_off`,
		Where:   notTimedAnew,
		Message: "the time goes on where it stopped",
		Advice:  "Bring the canner back, and time the whole process again from the beginning.",
	},
}

// notTimedAnew leaves out what tells to begin again, and times that are added
// for something else.
func notTimedAnew(t *Text, s *sentence, _ hit) bool {
	return t.canned() &&
		s.anyOf("pressure boil boiling gauge needle canner heat") && s.anyOf("drop drops dropped fall falls fell sink sinks dip dips lose loses lost stop stops stopped fail fails falter falters") &&
		!s.anyOf("beginning start over anew afresh zero scratch again restart restarted altitude elevation feet metres meters higher")
}
