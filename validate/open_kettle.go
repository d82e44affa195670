package validate

// openKettle reports the heat of the food, or of the jar, taken for a process.
var openKettle = &Rule{
	ID:       "open-kettle",
	Severity: Error,
	Summary:  "the heat of the food, or of the jar, taken for a process",
	Doc: `Hot food in a hot jar will often pull the lid down. It was not hot enough, for
long enough, in the middle of the jar, and the air above it was not driven out.
Of all unsafe ways this is the commonest; a good seal is no sign that it was
enough.`,
	Source: Source{
		Title:   "UNH Extension, top questions",
		Address: "https://extension.unh.edu/blog/2017/08/top-food-preservation-questions",
	},
	Practice: &Practice{
		Phrases: `heat of|from|in .. will|should|does|is|alone|that|enough ... seal~|sealed; heat of|from|in .. seal~|seals .. @jar|@lid|@it
			hot|boiling jam|jelly|food|fruit|sauce|salsa|contents|liquid|syrup|mixture|preserves|marmalade|chutney|filling|brine|juice .. will|should|does|itself|alone .. seal~
			hot|boiling jam|jelly|food|fruit|sauce|salsa|contents|liquid|syrup|preserves|marmalade|chutney|brine .. seals|sealed .. @lid|@jar|@it
			open kettle; open_kettled; hot_fill|hot_pour|overflow method|technique|bottling|canning|seal; residual heat .. seal~; seal~ from|with|by .. heat of
			hot_enough to seal; maybe seal~ themselves|itself; maybe seal~ .. by|on their|its|them|itself own?; maybe @lid|@jar|@it .. will|should|'ll seal as|when|while .. cool~
			heat of|from|in .. takes_care|does|makes|creates|gives|pulls|draws .. seal|vacuum|lid|lids; hot|boiling jam|jelly|sauce|salsa|food|fruit|contents|liquid|syrup|preserves|marmalade|chutney|brine .. pulls|pull|sucks|suck|draws|draw|makes|creates|create|forms|equals .. lid|lids|seal|vacuum; so_hot .. that? .. seal~ .. @jar|@lid|themselves
			hot|boiling jam|jelly|sauce|salsa|food|fruit|contents|liquid|syrup|preserves|marmalade|chutney|brine ... will|'ll|does pull|suck|draw|seal .. lid|lids|jar|jars; hot|boiling .. jar~|jars|lids .. is|makes|equals|does .. seal|vacuum|trick|all
			vacuum|seal .. forms|form|builds|develops|makes itself? .. as|when|while .. cool~; heat .. alone|itself|by_itself ... pull~|draw~|suck~|seal~|close~ .. @lid|@jar|@it
			hot jam|jelly|brine|sauce|salsa|fruit|pickles & hot jar|jars & done|finished|that_is_it|that_is_all|nothing_more; hot_enough|so_hot ... seal~|close~ .. @jar|@lid|@it
			ladle~|pour~|fill~|spoon~ .. hot|boiling ... @jar ... seal .. as|while|when .. cool~; hot ... lid .. on ... seal~ itself|themselves`,
		Where:   unprocessed,
		Message: "the heat of the food is not a process",
		Advice:  "Process the filled jars for the tested time.",
	},
}

// unprocessed holds for what is always wrong, and for "they seal by
// themselves" where nothing is processed; the heat of a canner does seal jars.
func unprocessed(t *Text, s *sentence, h hit) bool {
	if h.maybe {
		return t.Recipe != nil && !t.canned() && !s.forCold()
	}
	if s.isAny(h.from, "open") && s.isAny(h.from-1, "an the your my") && s.isAny(h.from-2, "in") && !s.has(famSeal) && !s.has(famJar) {
		return false // what the food is cooked in
	}
	return s.find(famCanner, h.from-4, h.to+4) < 0 && s.find(famProcess, h.from-4, h.to+4) < 0 && !s.anyIn("bath steam water", h.from, h.to)
}
