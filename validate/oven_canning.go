package validate

// ovenCanning reports filled jars heated in an oven.
var ovenCanning = &Rule{
	ID:       "oven-canning",
	Severity: Error,
	Summary:  "filled jars heated in an oven",
	Doc: `Dry air heats a jar badly and unevenly, and the glass may burst. How long an
oven would need has never been worked out: a time in an oven is no process,
however hot it is.

To dry or warm empty jars in an oven is another matter, and so is to roast what
goes into them.`,
	Source: Source{
		Title:   "Illinois Extension, unsafe methods",
		Address: "https://extension.illinois.edu/cottage-food/unsafe-methods",
	},
	Practice: &Practice{
		Phrases: `process~|pasteurise~|seal~|can|canned|canning .. @jar|@it|lids .. in|into|inside|using .. oven~
			use~|using .. oven~ .. to|for .. process~|processing|seal~|sealing|can|canning|pasteurise~
			oven canning|canned|method|processing|processed|processes|bath|seals|sealed|sealing|cans; canning|processing|sealing|bottling in|with|by|using .. oven~
			oven .. process~|seal~ .. @jar|@it|lids; process~|can|canned|bottle~|seal~ .. in .. oven~
			maybe put~|place~|set~|slide~|pop~|leave~|return~|transfer~|arrange~|stand~|move~|stick~|heat~|cook~|keep~|load~|sit~|shut|finish~ .. @jar|@it .. in|into|inside|on .. oven~; maybe put~|place~|set~|slide~ .. tray|sheet|rack|pan .. in|into .. oven~
			maybe bake~ .. @jar|@it .. # ; maybe bake~ at|for; maybe bake~ .. filled|sealed|full .. @jar ; bake~ .. @jar|@it .. until ... seal~|pop~|ping~
			oven~ .. makes|make|is|serves .. canner; oven~ does|do .. same|job|trick|work .. @jar|canner|process~|canning
			minutes|hour|hours|shelf .. of|in|on|inside .. oven~ ... how|where|what i|we|you can|process~|seal~|preserve~ my|our|the|your|all
			oven .. works|will_do|does|serves .. for .. @jar; oven & fill~|filled|sealed|closed @jar & degrees|hour~|minutes
			oven .. in_place_of|instead_of|rather_than .. canner|water_bath|pressure_canner|boiling_water_bath; maybe stand~|set~|put~|place~|arrange~ .. @jar|@it .. tray|sheet|rack|tin ... gas_mark`,
		Where:   ovenHoldsFood,
		Message: "an oven does not process jars",
		Advice:  "Process them in boiling water, in steam or under pressure, as the cited process says.",
	},
}

// ovenHoldsFood leaves out empty jars that are warmed or dried, and recipes that
// fill no jars for the shelf.
func ovenHoldsFood(t *Text, s *sentence, h hit) bool {
	if !h.maybe {
		return !s.forEmptyJars() || s.has(famFull) && s.has(famSeal)
	}
	return t.canned() && s.speaksOfJars(h) && t.jarsAreFull(s, h) && !s.forEmptyJars()
}
