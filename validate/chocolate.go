package validate

import "stillroom/content"

// chocolate reports chocolate and cocoa in a canned recipe.
var chocolate = &Rule{
	ID:       "chocolate",
	Severity: Error,
	Summary:  "chocolate or cocoa in a canning jar",
	Doc: `Chocolate is low in acid and full of fat, and no process is published for chocolate
sauce, fudge sauce or jam with chocolate. Keep it in the refrigerator or the
freezer, or stir cocoa in when the jar is opened.`,
	Source: Source{
		Title:   "Home food gifts, National Center for Home Food Preservation",
		Address: "http://nchfp.uga.edu/tips/winter/hfp_gifts.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		if !m.Keeping.Way.V.Canned() {
			return nil
		}
		var found []Item
		for _, in := range m.inJar() {
			if in.Class.Kind == ItemPrepared && in.Class.Variety == "chocolate" {
				found = append(found, in)
			}
		}
		return m.keepOut(found, "no home process is published for food with chocolate", "Refrigerate or freeze it.")
	},
}
