package validate

import "stillroom/content"

// soupHalfFull reports a canned soup that does not say how far the jar is
// filled with solids.
var soupHalfFull = &Rule{
	ID:       "soup-half-full",
	Severity: Warning,
	Summary:  "a canned soup that does not say to fill the jars half with solids",
	Doc: `The process of soups was set for jars half full of solids and topped up with
liquid. A jar packed with vegetables heats far more slowly. Let a step say it: "fill
the jars half full with solids, then top up with the liquid".`,
	Source: Source{
		Title:   "Canning soups, Clemson Cooperative Extension",
		Address: "https://clemson.edu/extension/food/canning/canning-tips/05canning-soups.html",
	},
	CheckKeeping: func(r *content.Recipe, m *Match) []Finding {
		if m.isSoup() && stepsSay(r, "three-quarters full", "three quarters full", "two-thirds full", "two thirds full", "3/4 full", "¾ full", "2/3 full", "⅔ full") {
			return []Finding{{
				Pos:      m.Keeping.Process.Pos,
				Severity: Error,
				Message:  "a step fills the jars more than half full",
				Advice:   "Say: fill the jars half full with solids, then top up with the liquid.",
			}}
		}
		if !m.isSoup() || stepsSay(r, "half full", "half-full", "halfway", "half way", "half with", "half solids", "half of each jar", "half the jar") {
			return nil
		}
		return []Finding{{
			Pos:     m.Keeping.Process.Pos,
			Message: "no step says that the jars are filled half with solids",
			Advice:  "Say: fill the jars half full with solids, then top up with the liquid.",
		}}
	},
}
