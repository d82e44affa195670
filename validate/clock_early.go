package validate

import "stillroom/content"

// clockEarly reports a process timed from before the boil or the pressure.
var clockEarly = &Rule{
	ID:       "clock-early",
	Severity: Error,
	Summary:  "a process timed from before the boil or the pressure",
	Doc: `The minutes of a boiling-water process run from the return to a full rolling
boil with the jars in it; those of a steam canner from a full, steady column of
steam; those of a pressure canner from the moment the gauge shows the pressure.
What comes before is free, and does not count.`,
	Source: Source{
		Title:   "Savoie and Perry 2019",
		Address: "https://www.nxtbook.com/nxtbooks/trilix/fpt_20190910/index.php?startid=383",
	},
	Practice: &Practice{
		Phrases: `start~|begin~|set~|starting|run~ .. clock|timer|timing|time|count|counting|minutes|countdown ... when|as_soon_as|once|after|the_moment|the_minute|from|right|immediately|straight ... @jar|@it|lid|they .. go|goes|went|in|are|is|into|lowered|submerged|under|loaded|hit
			count~|time~|timed .. from .. when|moment|time|minute .. @jar|@it .. go|goes|in|enter|lowered|put|loaded
			timing|time|clock|timer|count|minutes starts|start|begins|begin|runs|counts ... when|as_soon_as|once|from|the_moment .. @jar|@it|lid .. go|goes|in|are|into|lowered|on
			as_soon_as|once|when|after|the_moment .. @jar|@it|lid|last .. in|loaded|submerged|on|covered|under|inside ... start~|set~|begin~ .. clock|timer|timing|count|counting
			put~|drop~|lower~|set~ in .. @jar|@it ... start~|set~|begin~ .. clock|timer|timing|counting .. immediately|straight|right|at_once|now; lower~|put~|place~|load~|drop~ .. @jar|@it .. in|into ... and|then? start~|begin~ .. clock|timer|timing|counting .. immediately|straight|right|at_once|now
			maybe start~|begin~|set~|count~ .. clock|timer|timing|time|counting|minutes? ... when|as_soon_as|once|while|after|from .. steam|venting|vent|weight .. appears|comes|starts|escapes|begins|is|goes|on|put
			start~|begin~|set~ .. clock|timer|timing|time|count|counting|minutes ... when|once|as_soon_as|the_moment|after you|we|i .. put|place|close|lock|clamp|lower|load|shut|set .. @jar|@it|lid; start~|begin~|set~ .. clock|timer|timing ... and|then bring|heat .. water|canner|it|pot .. boil|pressure`,
		Where:   beforeBoil,
		Message: "the clock is started too early",
		Advice:  "Start it at a full rolling boil, or when the gauge shows the pressure.",
	},
}

// beforeBoil leaves out a sentence that waits for the boil or the pressure. In
// a steam canner the steam is what to wait for.
func beforeBoil(t *Text, s *sentence, h hit) bool {
	if h.maybe {
		return underPressure(t, s, h) && (t.Recipe != nil || s.near("pressure psi gauge weight petcock")) && !s.anyOf("psi pressure rocks jiggles rocking jiggling gauge pounds") && !t.hasWay(content.AtmosphericSteam)
	}
	if !t.canned() {
		return false
	}
	if s.anyIn("bring heat", h.from, h.to) {
		return true // the clock runs, and then the water is brought to the boil
	}
	return !s.anyOf("boil boils boiling rolling pressure psi steam steady") || s.anyOf("before wait waiting already even")
}
