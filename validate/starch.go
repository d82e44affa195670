package validate

import "stillroom/content"

// starch reports flour and other starch in a canned recipe whose process was
// not tested with it.
var starch = &Rule{
	ID:       "starch",
	Severity: Error,
	Summary:  "flour or another starch in a jar whose process was not tested with it",
	Doc: `Starch thickens, and heat creeps through what is thick: the middle of the jar may
never get hot enough. Flour, corn starch, tapioca, gums and coatings of flour are
left out, and the food is thickened when the jar is opened.

Pie fillings have a cook-type modified starch in the tested amount, and no
other starch takes its place. A few published relishes carry a little flour or
corn starch themselves; cite that process, and use no more.`,
	Source: Source{
		Title:   "Thickeners for home canning, Iowa State University Extension",
		Address: "https://blogs.extension.iastate.edu/answerline/2018/09/10/thickeners-for-home-canning/",
	},
	CheckKeeping: checkStarch,
}

func checkStarch(_ *content.Recipe, m *Match) []Finding {
	message, advice := "starch slows the heat, and the process was not tested with it", "Thicken the food when the jar is opened."
	if m.lists(ItemModStarch) {
		message = "the tested filling has a cook-type modified starch, and no other"
		advice = "Use the modified starch in the tested amount, or leave starch out until the jar is opened."
	}
	fs := m.keepOut(m.unlisted(ItemStarch, ItemModStarch), message, advice)
	if m.lists(ItemStarch) || m.lists(ItemModStarch) {
		fs = append(fs, m.tooMuch(RoleStarch, "Use no more than that.")...)
	}
	return fs
}
