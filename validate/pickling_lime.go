package validate

import "stillroom/content"

// picklingLime reports lime that is not said to be for food, and lime in a
// pickle whose process was not tested with it.
var picklingLime = &Rule{
	ID:       "pickling-lime",
	Severity: Error,
	Summary:  "lime that is not for food, or in a pickle that was not tested with it",
	Doc: `Lime makes pickles crisp and takes away their acid. It is used only where the
published recipe has it, and rinsed off as that recipe says: three soaks of an hour
in fresh water. Builders' and garden lime may hold what nobody should eat; write
"food-grade pickling lime". Calcium chloride firms as well and takes no acid away.`,
	Source: Source{
		Title:   "Firming agents, Michigan State University Extension",
		Address: "http://www.solareagle.com/PREP/PFS/01600957.HTM",
	},
	CheckKeeping: checkPicklingLime,
}

func checkPicklingLime(_ *content.Recipe, m *Match) []Finding {
	var fs []Finding
	for _, in := range m.ofKind(ItemPicklingLime) {
		if !saysAny(plain(in.Item+" "+in.Note), []string{"pickling", "food-grade", "food grade", "cal"}) {
			fs = append(fs, Finding{
				Pos:     in.Pos,
				Message: in.Item + ": not said to be for food",
				Advice:  `Write "food-grade pickling lime".`,
			})
		}
	}
	return append(fs, m.keepOut(m.unlisted(ItemPicklingLime), "lime takes acid away, and the process was not tested with it",
		"Leave it out; calcium chloride firms as well.")...)
}
