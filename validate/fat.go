package validate

import "stillroom/content"

// fat reports oil and fat in a canned recipe whose process was not tested
// with it, and more of it than was tested.
var fat = &Rule{
	ID:       "fat",
	Severity: Error,
	Summary:  "oil or fat in a jar whose process was not tested with it",
	Doc: `Oil coats spores and keeps the heat and the acid from them, and it creeps under the
lid. It goes into a jar only where the published recipe has it: a quarter of a cup
in nine pints of spaghetti sauce, the marinade of peppers and mushrooms, three-bean
salad, fish. There, no more than that.`,
	Source: Source{
		Title:   "Spaghetti sauce without meat, USDA Complete Guide to Home Canning, Guide 3",
		Address: "http://www.recipesource.com/misc/canning/spaghetti-sauce-without-meat1.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		fs := m.keepOut(m.unlisted(ItemFat), "the process was not tested with oil or fat", "Leave it out, and add it when the jar is opened.")
		if m.Keeping.Way.V.Canned() && m.lists(ItemFat) {
			fs = append(fs, m.tooMuch(RoleOil, "Use no more than that.")...)
		}
		return fs
	},
}
