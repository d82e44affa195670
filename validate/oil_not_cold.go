package validate

import "slices"

// oilNotCold reports garlic, herbs or vegetables in oil kept out of the
// refrigerator.
var oilNotCold = &Rule{
	ID:       "oil-not-cold",
	Severity: Error,
	Summary:  "garlic, herbs or vegetables in oil kept out of the refrigerator",
	Doc: `Under oil there is no air and no acid, and garlic, fresh herbs and vegetables
come out of the ground: botulism has come of it more than once. Keep such oil in
the refrigerator for a few days, or freeze it. A tested recipe that has oil in
it, as marinated peppers have, stands on its process.`,
	Source: Source{
		Title:   "NCHFP, garlic in oil",
		Address: "http://nchfp.uga.edu/how/freeze/garlic_oil.html",
	},
	Practice: &Practice{
		Phrases: `oil ... keep~|store~|leave~|stand~|sit~|steep~|infuse~|lasts|last|kept|good|stored ... at|on|in .. room_temperature|counter|countertop|windowsill|sill|worktop|ambient|@cupboard|cool_dark|dark|sun
			keep~|store~|leave~|stand~|steep~|let~|infuse~|set~|put~|display~ ... oil ... at|on|in .. room_temperature|counter|countertop|windowsill|sill|worktop|@cupboard|cool_dark|dark|sun
			maybe keep~|store~|leave~|stand~|sit~|last~|steep~|let~|infuse~|set~|put~|cap~|display~ ... at|on|in .. room_temperature|counter|countertop|windowsill|sill|worktop|@cupboard|cool_dark|dark_place|dark_cupboard
			oil ... on|in .. counter|windowsill|sill|@cupboard; oil .. shelf_stable|shelf stable; no need to refrigerate ... oil; oil .. does|do|need not|n't need refrigerating|refrigeration|to_be_refrigerated
			maybe keep~|store~|leave~|stand~|set~ ... next_to|beside|by|near|close_to .. stove|cooker|range|hob|grill|bread; maybe keep~|leave~|have|stand~ ... to_hand|at_hand|within_reach|close_at_hand|handy`,
		Where:   infusedOil,
		Message: "garlic, herbs or vegetables in oil are kept warm",
		Advice:  "Keep it in the refrigerator for a few days at most, or freeze it.",
	},
}

// infusedOil holds for oil with something fresh in it, unless the process that
// the recipe cites was tested with oil.
func infusedOil(t *Text, s *sentence, h hit) bool {
	for _, m := range t.Matches {
		if m.Process != nil && slices.Contains(m.Process.Lists, ItemFat) {
			return false
		}
	}
	b := s.before()
	switch {
	case s.isAny(0, "serve"), s.anyOf("throw discard bin"), s.anyIn("plain pure", h.from-2, h.from), s.forCold() && !s.anyOf("no not without"), s.anyOf("minutes minute cools cooled"):
		return false
	case s.has(famOil) && s.has(famHerb):
		return true
	case s.has(famOil):
		return b != nil && b.has(famHerb) || s.anyOf("infused flavored flavoured") || t.hasHerbsInOil()
	}
	return h.maybe && b != nil && b.has(famOil) && (b.has(famHerb) || t.hasHerbsInOil()) || h.maybe && t.hasHerbsInOil()
}

// hasHerbsInOil reports whether the recipe is of something fresh in oil.
func (t *Text) hasHerbsInOil() bool {
	oil, fresh := false, false
	if len(t.Matches) == 0 || t.canned() {
		return false
	}
	for _, in := range t.Matches[0].Items {
		oil = oil || in.Class.Kind == ItemFat
		switch in.Class.Kind {
		case ItemGarlic, ItemHerb, ItemVegetable, ItemMushroom:
			fresh = true
		}
	}
	return oil && fresh
}
