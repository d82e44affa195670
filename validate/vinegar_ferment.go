package validate

import "stillroom/content"

// vinegarFerment reports a ferment whose brine is mostly vinegar.
var vinegarFerment = &Rule{
	ID:       "vinegar-ferment",
	Severity: Error,
	Summary:  "a ferment whose brine is mostly vinegar",
	Doc: `A ferment makes its own acid, and its salt is its safety; a quick pickle is given
vinegar, and that is its safety. In a brine that is half vinegar nothing ferments, and
what is called a ferment was never one. Say which of the two it is. A quarter of a cup
in half a gallon, as in fermented dill pickles, is no such brine.`,
	Source: Source{
		Title:   "Safe modifications to canning recipes, University of Wisconsin Extension",
		Address: "https://fyi.uwex.edu/safepreserving/2013/09/11/safe-preserving-safe-modifications-to-canning-recipes/",
	},
	CheckKeeping: func(r *content.Recipe, m *Match) []Finding {
		vinegar := m.ofKind(ItemVinegar)
		if m.Keeping.Way.V != content.Fermenting || len(vinegar) == 0 || r.Kind.V == content.Vinegar {
			return nil
		}
		sour, _ := cupsOf(vinegar)
		water, _ := cupsOf(m.ofKind(ItemWater))
		if sour.Cmp(water) < 0 || sour.Sign() == 0 {
			return nil
		}
		return []Finding{{
			Pos:     vinegar[0].Pos,
			Message: "a brine of mostly vinegar does not ferment",
			Advice:  "Make it a quick pickle by a tested process, or leave the vinegar out.",
			Notes:   []Note{{Pos: m.Keeping.Way.Pos, Message: "fermented here"}},
		}}
	},
}
