package validate

import (
	"slices"

	"stillroom/content"
)

// vinegarForJuice reports vinegar in the place of bottled lemon or lime juice.
var vinegarForJuice = &Rule{
	ID:       "vinegar-for-juice",
	Severity: Error,
	Summary:  "vinegar in the place of bottled lemon or lime juice",
	Doc: `Bottled lemon juice is stronger than vinegar. It may take the place of vinegar
in equal volume; vinegar may not take its place, unless the publication lists a
dose of vinegar of its own.`,
	Source: Source{
		Title:   "Choice Salsa, NCHFP",
		Address: "http://www.theadvocate.com/baton_rouge/entertainment_life/food/article_86ed3a80-651d-52c3-b5d3-8a563e9871d0.html",
	},
	Practice: &Practice{
		Phrases: `no|out_of|without lemon|lime juice? ... use~|substitute~|add~ .. vinegar; use~|substitute~|add~|try~|choose .. vinegar ... for|instead_of|in_place_of|rather_than|in_lieu_of .. lemon|lime
			replace~|swap~|switch~|exchange~|substitute~ .. lemon|lime juice? .. with|by .. vinegar; swap~|switch~|exchange~ .. lemon|lime juice? .. for .. vinegar; vinegar .. can|may|will|does|could|works .. do|serve|instead|stand .. instead|in_place|for .. lemon|lime|juice; vinegar .. can|may|will|works|work|does|could .. replace|stand_in|substitute|instead|take_the_place|place .. of|for|lemon|lime|juice
			lemon|lime juice? .. can|may|could be? replaced|swapped|substituted|exchanged .. with|by|for .. vinegar; vinegar .. is|makes .. fine|good|easy|same substitute|replacement .. for .. lemon|lime|juice
			maybe use~|take~|add~|put~ .. same|equal amount|quantity|measure .. of? vinegar; swap~|trade~|change~ .. lemon|lime juice .. for ... vinegar
			vinegar stands|stand|fills|fill|steps|serves|substitutes|works|does .. for|as .. lemon|lime
			maybe vinegar .. does|do|will_do|works|serves .. same|just_as|too|instead|job
			maybe vinegar .. does|do|works|will .. trick|fine|nicely|well`,
		Where:   noVinegarDose,
		Message: "vinegar is weaker than bottled lemon or lime juice",
		Advice:  "Keep the bottled juice.",
	},
}

// noVinegarDose leaves out recipes whose process was tested with vinegar too.
func noVinegarDose(t *Text, s *sentence, h hit) bool {
	if h.maybe && !s.near("lemon lime lemons limes") {
		return false
	}
	for _, m := range t.Matches {
		if m.reliesOnAcid() && m.need().accepts(ItemVinegar) && slices.ContainsFunc(s.figures(), func(f mention) bool { return f.measures == content.VolumeDim }) {
			return false
		}
	}
	return whereAcidCounts(t, s, h) && !s.anyOf("twice double")
}
