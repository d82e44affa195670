package validate

import "stillroom/content"

// flakeSalt reports flake or kosher salt that is measured by the spoon in a
// pickle or a ferment.
var flakeSalt = &Rule{
	ID:       "flake-salt",
	Severity: Warning,
	Summary:  "flake or kosher salt by volume in a pickle or a ferment",
	Doc: `A tablespoon of pickling salt weighs 18 g, one of flake salt between 8 and 15, by
brand. A ferment with half its salt spoils. Give the salt by weight, "72 g kosher
salt (1/2 cup)", or write pickling salt.`,
	Source: Source{
		Title:   "Ingredients for pickling, Michigan State University Extension",
		Address: "http://www.solareagle.com/PREP/PFS/01600556.HTM",
	},
	CheckKeeping: checkFlakeSalt,
}

func checkFlakeSalt(r *content.Recipe, m *Match) []Finding {
	if m.Keeping.Way.V != content.Fermenting && r.Kind.V != content.Pickle && r.Kind.V != content.Relish && r.Kind.V != content.Ferment {
		return nil
	}
	var fs []Finding
	for _, in := range m.ofKind(ItemSalt) {
		if in.Class.Variety != "flake" || in.Amount.IsZero() {
			continue
		}
		if _, weighed := in.in(content.Gram); weighed {
			continue
		}
		fs = append(fs, Finding{
			Pos:     in.Pos,
			Message: in.Item + " is given by volume, and its weight differs by brand",
			Advice:  "Give its weight as well, or use pickling salt.",
		})
	}
	return fs
}
