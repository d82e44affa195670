package validate

import "stillroom/content"

// alum gives advice on alum.
var alum = &Rule{
	ID:       "alum",
	Severity: Advice,
	Summary:  "alum, which pickles no longer need",
	Doc: `Alum is safe in small amounts and does nothing for a quick pickle; authorities took
it out of their recipes. Fresh cucumbers, a cold soak or calcium chloride make a
pickle crisp.`,
	Source: Source{
		Title:   "Firming agents, Michigan State University Extension",
		Address: "http://www.solareagle.com/PREP/PFS/01600957.HTM",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		var fs []Finding
		for _, in := range m.ofKind(ItemAlum) {
			fs = append(fs, Finding{Pos: in.Pos, Message: "alum is not needed", Advice: "Leave it out, or use calcium chloride."})
		}
		return fs
	},
}
