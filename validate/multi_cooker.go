package validate

import "stillroom/content"

// multiCooker reports an electric pressure cooker or multi-cooker used as a
// canner.
var multiCooker = &Rule{
	ID:       "multi-cooker",
	Severity: Error,
	Summary:  "an electric pressure cooker or multi-cooker used as a canner",
	Doc: `Pressure processes were tested in stovetop canners that hold at least 4 quart
jars. An electric pressure cooker heats and cools faster, and nobody can tell
what pressure it holds at your altitude. Cook in it; don't can in it, whatever
its buttons say.`,
	Source: Source{
		Title:   "NCHFP blog, multi-cookers",
		Address: "https://nchfp.uga.edu/blog/can-i-can-in-a-multi-cooker",
	},
	Practice: &Practice{
		Phrases: `can|canned|canning|process~|seal~|jar .. @jar|@it|food|beans|vegetables|meat|tomatoes? .. in|with|using .. electric_pressure_cooker~|electric_pressure_canner~|multi_cooker~|multicooker~|programmable_pressure|electric_multi|electric_canner~|smart_cooker~
			use~|using .. electric_pressure_cooker~|electric_pressure_canner~|multi_cooker~|multicooker~|programmable_pressure|electric_multi .. as|to|for|instead .. can|canning|canner|process~|processing|a
			put~|place~|set~|load~|stand~|lower~ .. @jar|@it .. in|into .. electric_pressure_cooker~|multi_cooker~|multicooker~|programmable_pressure|electric_multi
			set~|use~ .. multi_cooker~|multicooker~|electric_pressure_cooker~ ... process~|can|canning .. @jar|@it; multi_cooker~|multicooker~|electric_pressure_cooker~ .. canning|canner|works|instead|will_do|as_well|setting; canning button|setting|mode|program|function; maybe in|with|using a|an|my|the|your electric_pressure_cooker~|electric_pressure_canner~|multi_cooker~|multicooker~; maybe multi_cooker~|multicooker~|electric_pressure_cooker~|electric_pressure_canner~
			can|canned|canning|cans|process~|seal~ .. in|with|using|by .. electric|countertop|digital|plug_in pressure? pot~|canner~|cooker~; electric|countertop|digital|plug_in pressure pot~|canner~|cooker~ ... can|cans|canned|canning|process~|works
			multi_cooker~|multicooker~|electric_pressure_cooker~|programmable_cooker~ .. does|do|handles|manages|takes|holds|cooks .. jar~|jars|pints|quarts`,
		Where:   asCanner,
		Message: "an electric pressure cooker is no pressure canner",
		Advice:  "Ask for a stovetop pressure canner that holds at least 4 quart jars.",
	},
}

// asCanner takes the bare name for a canner only in the gear of a recipe that
// is pressure canned.
func asCanner(t *Text, s *sentence, h hit) bool {
	if !h.maybe {
		return true
	}
	named := s.place == placeGear || s.isAny(h.from, "in with using")
	return named && t.hasWay(content.PressureCanner) && !s.anyOf("cook cooking soak soaking broth stock bones then")
}
