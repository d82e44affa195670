package validate

import "stillroom/content"

// bailJars reports jars with wire bails, glass lids or zinc caps for canning.
var bailJars = &Rule{
	ID:       "bail-jars",
	Severity: Error,
	Summary:  "jars with wire bails, glass lids or zinc caps for canning",
	Doc: `Glass lids with wire bails and rubber rings, and zinc caps, are no longer
recommended: there is no way to be sure of their seal. They store dry food, and
serve on the table. For canning use jars with flat metal lids and screw bands.`,
	Source: Source{
		Title:   "K-State on the 2015 guide changes",
		Address: "https://enewsletters.k-state.edu/youaskedit/2016/05/12/usda-complete-guide-to-home-canning",
	},
	Practice: &Practice{
		Phrases: `wire_bail|wire_bailed|bail_top|bail_lid|bail|bailed|clamp_top|clamp_down|clip_top|clip_lid|swing_top|flip_top|lightning|hinged|rubber_ring|rubber_ringed|rubber_gasket|glass_lidded|glass_topped|latch_lid|latch_top|kilner_style jar~|jars|closure~|lid~
			@jar .. with|have|using .. bail~|wire_bail~|clamp~|clip~|glass_lid~|rubber_ring~|rubber_seal~|rubber_gasket~|zinc_cap~|zinc_lid~|hinged; zinc cap~|lid~; porcelain_lined cap~|lid~; glass lid~ .. and|with|held .. rubber|clip|clamp|wire|gasket
			rubber_ring~|rubber_seal~ .. and|with|under .. glass|clip|clamp|lid; snap~|close~|clamp~ .. wire|bail|clip|clamp .. down|over|shut|on
			wire_clasp|clasp|spring_clip|spring_top|wire_clip|wire_closure|wire_top|wire_lid|lever|toggle_top|hinge_top jar~|jars|closure~|lid~; wire bail~|clasp~|clip~|clamp~ .. jar~|jars|down|shut|closed; zinc|porcelain|glass cap~|lid~ .. canning|seal~|jar~`,
		Where:   jarsForShelf,
		Message: "jars with bails, glass lids or zinc caps are not for canning",
		Advice:  "Use jars with flat metal lids and screw bands.",
	},
}

// jarsForShelf leaves out the jars of the refrigerator, the freezer, the crock
// and the dry store.
func jarsForShelf(t *Text, s *sentence, h hit) bool {
	if !inCanned(t, s, h) || s.anyOf("ferment fermenting fermented dried dry flour storing storage rice buttons sugar oats cookies sweets beads display") {
		return false
	}
	return !t.hasWay(content.Fermenting) || s.has(famCanner) || s.has(famProcess)
}
