package validate

import "stillroom/content"

// gelatin reports a spread set with gelatin or agar that is canned, or kept
// out of the refrigerator, or there for too long.
var gelatin = &Rule{
	ID:       "gelatin",
	Severity: Error,
	Summary:  "a spread set with gelatin that is canned, or kept long",
	Doc: `Gelatin sets a spread without sugar and without acid, and so without what keeps a
spread. No process is published for it: it lives in the refrigerator and is eaten
within a month.`,
	Source: Source{
		Title:   "Reduced sugar jams and jellies, Michigan State University Extension",
		Address: "http://www.solareagle.com/PREP/PFS/01600960.HTM",
	},
	CheckKeeping: checkGelatin,
}

func checkGelatin(_ *content.Recipe, m *Match) []Finding {
	way := m.Keeping.Way.V
	if way == content.CoolStore {
		return m.keepOut(m.ofKind(ItemGelatin), "a spread with gelatin is no shelf food", "Keep it in the refrigerator.")
	}
	fs := m.keepOut(m.unlisted(ItemGelatin), "no process is published for a spread with gelatin", "Keep it in the refrigerator.")
	most := LimitOf("gelatin-spread-fridge")
	if way == content.Refrigerator && len(m.ofKind(ItemGelatin)) > 0 && keepsOver(m.Keeping, most) {
		fs = append(fs, tooLong(m.Keeping, most, Warning))
	}
	return fs
}

// ofKind picks the ingredients of some kinds.
func (m *Match) ofKind(kinds ...ItemKind) []Item {
	var all []Item
	for _, in := range m.Items {
		for _, k := range kinds {
			if in.Class.Kind == k {
				all = append(all, in)
			}
		}
	}
	return all
}
