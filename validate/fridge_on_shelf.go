package validate

import "stillroom/content"

// fridgeOnShelf reports cupboard words for food that is only kept cold.
var fridgeOnShelf = &Rule{
	ID:       "fridge-on-shelf",
	Severity: Error,
	Summary:  "cupboard words for food that is only kept cold",
	Doc: `A recipe whose ways of keeping are the refrigerator and the freezer has no
process behind it. Its jars are not kept in a cupboard, however much vinegar or
sugar is in them, and the words must not say so.`,
	Source: Source{
		Title:   "MSU Extension, freezer jams",
		Address: "http://www.solareagle.com/PREP/PFS/01600553.HTM",
	},
	Practice: &Practice{
		Phrases: `store~|keep~|kept|put~|stack~|stays|lasts|last|line~|stash~|stock~|good|fine .. in|on .. @cupboard|cool_dark
			maybe store~|keep~|kept|stays|lasts|last|leave~|good|fine .. at|on|in .. room_temperature|counter|countertop|worktop|ambient
			shelf stable; shelf_stable; pantry staple|ready|safe|jam|pickles; unrefrigerated; no_need to refrigerate|chill; no refrigeration|refrigerating needed|required|necessary; without refrigeration|refrigerating
			does|do|will|need .. not|n't? need|require .. to_be? refrigerated|refrigeration|a_fridge; keeps|keep|lasts for years|months in|on|out
			do|does|don't|doesn't|needn't|never|no .. need|needs|require|want|belong .. in? the|a|any? fridge|refrigerator|refrigeration|refrigerating|chilling
			live~|lives|living|sit~|stand~|belong~|go|goes|move~|rest~ .. in|on .. @cupboard|cool_dark`,
		Where:   keptColdOnly,
		Message: "food that is kept cold is given cupboard words",
		Advice:  "Say refrigerator or freezer, or give a way of keeping with a process.",
	},
}

// keptColdOnly holds in recipes for the refrigerator or the freezer alone. To
// let something cool or set on the counter for a while is no keeping.
func keptColdOnly(t *Text, s *sentence, h hit) bool {
	if t.Recipe == nil || t.canned() || t.hasWay(content.Drying, content.CoolStore, content.Fermenting) {
		return false
	}
	if s.isAny(0, "serve") || s.isAny(0, "plain pure") {
		return false
	}
	if h.from < h.to && (s.find(famFridge, 0, s.len()) >= 0 || s.find(famFreezer, 0, s.len()) >= 0) && !s.anyIn("stable no without need needs", h.from, h.to) {
		return false
	}
	return !h.maybe || !s.anyOf("hour hours minutes minute overnight until cool cools set thaw while before")
}
