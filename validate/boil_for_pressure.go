package validate

import "stillroom/content"

// boilForPressure reports low-acid food boiled for hours in place of a pressure
// canner.
var boilForPressure = &Rule{
	ID:       "boil-for-pressure",
	Severity: Error,
	Summary:  "low-acid food boiled for hours in place of a pressure canner",
	Doc: `Boiling water gets no hotter than it is. Spores in beans, corn, meat and soup
live through hours of it, and grow in the sealed jar. There is no boiling time
that makes up for pressure; without a pressure canner, freeze the food.`,
	Source: Source{
		Title:   "UNH Extension, top questions",
		Address: "https://extension.unh.edu/blog/2017/08/top-food-preservation-questions",
	},
	Practice: &Practice{
		Phrases: `no|have_no|don't_have|haven't|without|lack|lacking .. pressure_canner ... boil~|process~|water_bath|water_bathe ... hour~|longer|instead|bath
			boil~|process~|water_bath~|simmer~ ... #|several|two|three|four|few hours ... instead|rather_than|if_you_have_no|if_you_don't_have|without|no .. pressure
			instead_of|rather_than .. pressure_canning|pressure_canner|pressure ... boil~|process~|water_bath ... hour~|hours|longer|boiling
			boil~|process~|water_bath .. longer|three|four .. hours? .. will|to|and .. make_up|kill|safe|same|do; water_bath|waterbath|water_bathe .. green? beans|corn|meat|vegetables|soup|chicken|stock|peas|carrots|broth|fish|venison|beef
			can|canned|process~ .. green? beans|corn|meat|vegetables|soup|chicken|stock|peas|carrots|broth|fish|venison|beef .. in .. boiling_water|water_bath|boiling_water_bath ... #|hours|three|long|fine|works
			beans|corn|meat|vegetables|soup|chicken|stock|peas|carrots|broth|fish|venison|beef .. can|may|go|goes|done|canned|fine|works|process~ .. in|by .. water_bath|waterbath|boiling_water_bath|boiling_water_canner; boil~|boiling .. of|for .. #|several hours ... do|does|works|enough|plenty|fine
			hours|hour .. in|of .. boiling_water|water_bath|waterbath .. does|do|is|will|works|makes|as
			boil~|boiling|bath of|for .. hours|minutes|hour ... before|instead|in_place .. pressure; without|no|lack|lacking .. pressure_canner ... boil~|simmer~|steam~ .. @jar; half_a_day|all_day|overnight|for_hours & simmer~|boil~|boiling & @jar
			can|canned|process~ .. in .. kettle|boiler|washtub|wash_boiler|copper|pot|tub ... hours
			hours|hour .. in|of .. boiling_water_bath .. does|do|did|is|will|works|makes|as; boil~ .. @jar|pints|quarts .. for|of #|two|three|four|several hours`,
		Where:   lowAcidFood,
		Message: "boiling does not take the place of pressure",
		Advice:  "Say: under pressure, or in the freezer.",
	},
}

// lowAcidFood holds where food of low acid is spoken of.
func lowAcidFood(t *Text, s *sentence, h hit) bool {
	if s.anyOf("pickled dilled vinegar pickle relish salsa freeze freezer tasting eating acid") {
		return false
	}
	if s.anyIn("safe enough", h.to, s.len()) && s.anyIn("never not isn't aren't nor", h.to, s.len()) {
		return false
	}
	return t.hasWay(content.PressureCanner) || s.has(famLowAcid)
}
