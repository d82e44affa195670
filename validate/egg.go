package validate

import "stillroom/content"

// egg reports eggs in a canned recipe, or kept at room temperature.
var egg = &Rule{
	ID:       "egg",
	Severity: Error,
	Summary:  "eggs for the shelf, plain or pickled",
	Doc: `No home process is published for eggs. A pickled egg is dense, and its middle
stays low in acid for a long time. Keep them in the refrigerator. Canned lemon curd
is the one exception: its process was tested with eggs.`,
	Source: Source{
		Title:   "Pickled eggs and botulism, National Center for Home Food Preservation",
		Address: "https://preservingfoodathome.com/tag/botulism/",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		eggs := m.unlisted(ItemEgg)
		if m.Keeping.Way.V == content.CoolStore {
			eggs = ofRole(m.Items, RoleEgg)
		}
		return m.keepOut(eggs, "no home process for the shelf is published for eggs", "Keep them in the refrigerator.")
	},
}
