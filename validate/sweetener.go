package validate

import "stillroom/content"

// sweetener reports a sweetener in place of sugar in a process that was not
// tested with one.
var sweetener = &Rule{
	ID:       "sweetener",
	Severity: Warning,
	Summary:  "a sweetener without sugar, in a process that was not tested with it",
	Doc: `In jam sugar sets and keeps; a sweetener does neither, and may turn bitter in the
heat. Use one only where the published recipe has it, or add it when the jar is
opened. Fruit is canned in plain water or juice without any harm.`,
	Source: Source{
		Title:   "Potential safety concerns with home canning, Health Canada, 2013",
		Address: "https://recalls-rappels.canada.ca/en/alert-recall/reminding-canadians-potential-safety-concerns-home-canning-0",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		var fs []Finding
		for _, in := range m.unlisted(ItemSweetener) {
			fs = append(fs, Finding{
				Pos:     in.Pos,
				Message: in.Item + ": the process was not tested with it",
				Advice:  "Add it when the jar is opened, or cite a process that has it.",
			})
		}
		return fs
	},
}
