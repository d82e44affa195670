package validate

import "stillroom/content"

// canningTablet reports tablets and powders that are offered for canning.
var canningTablet = &Rule{
	ID:       "canning-tablet",
	Severity: Warning,
	Summary:  "aspirin, canning powder or canning tablets",
	Doc: `Tablets and powders sold for canning, and aspirin, were found to do nothing that
makes a jar safe: they replace neither the acid nor the heat. Bring the acid of the
process, and leave them out.

Where such a tablet is all the acid that a recipe has, acid-other refuses it.`,
	Source: Source{
		Title:   "Lemon juice and citric acid for canning tomatoes, Penn State Extension",
		Address: "http://extension.psu.edu/food/preservation/faq/lemon-juice-citric-acid-for-canning-tomatoes",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		if !m.Keeping.Way.V.Canned() {
			return nil
		}
		var fs []Finding
		for _, in := range m.withAdded() {
			if in.Class.Kind == ItemAcidTablet {
				fs = append(fs, Finding{Pos: in.Pos, Message: in.Item + ": does nothing for a canned food", Advice: "Leave it out."})
			}
		}
		return fs
	},
}
