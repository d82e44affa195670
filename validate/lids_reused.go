package validate

// lidsReused reports flat lids used a second time.
var lidsReused = &Rule{
	ID:       "lids-reused",
	Severity: Error,
	Summary:  "flat lids used a second time",
	Doc: `The sealing compound of a flat lid takes the shape of one rim, once. Bands may
be used again, and jars; flat lids are new every time.`,
	Source: Source{
		Title:   "Navajo County column on dangerous methods",
		Address: "https://www.wmicentral.com/outdoors_and_gardening/avoid-dangerous-canning-methods/article_8170a934-92f7-5e69-bf5b-962da836ffb9.html",
	},
	Practice: &Practice{
		Phrases: `reuse~|re_use~|re_used|re_using|recycle~ .. lid~|flats; lid~ .. can|may|could|are|is .. reused|re_used|used_again|used_twice|washed_and_used|used_a_second
			use~ .. lids .. again|twice|second|over|until|several|more_than_once; save~|wash~|boil~|rinse~|keep~ .. lids .. for|and .. next|again|another|reuse|use|later
			old|used|last_year's|secondhand|second_hand lids .. will|do|work|works|fine|are|seal|if; use~|using|with .. old|used|last_year's|secondhand lids; lids .. good_for .. two|several|three|more|second|uses
			last_year|previous_year flat|canning|metal|used? lids; second_hand|secondhand|once_used|used flat|canning|metal? lids; lid~ .. used|sealed once .. again
			uses|goes|seasons|years|times .. out_of|from|with .. lid~|flats|lids; lid~|lids .. seal~|work~|do|last~|serve .. second|again|twice|another|next|more_than; save~|keep~ .. lid~|lids .. seal|again|next|another|reuse|second
			lid~|flats .. saved|kept|left .. last|year|season|before|previous; last_summer's|last_season's|last_autumn's|last_fall's|last_winter's|last_spring's lid~; if|when .. used|old lid~ .. looks|look|is|are|sits flat|fine|good|sound ... again|use~|turn|go|another`,
		Where:   lidsForShelf,
		Message: "flat lids are used once only",
		Advice:  "Say: new flat lids every time; bands and jars may be used again.",
	},
}

// lidsForShelf leaves out the refrigerator and the freezer, and lids that are
// only named beside the bands that may be used again.
func lidsForShelf(t *Text, s *sentence, h hit) bool {
	for i := h.from; i < h.to; i++ {
		if s.isAny(i, "new fresh buy but band bands rings ring") && !s.isAny(i+1, "and") {
			return false
		}
	}
	return inCanned(t, s, h)
}
