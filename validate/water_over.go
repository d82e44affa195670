package validate

import (
	"strings"

	"stillroom/content"
)

// waterOver reports more water beside the vinegar than was tested.
var waterOver = &Rule{
	ID:       "water-over",
	Severity: Error,
	Summary:  "more water to the vinegar than in the published brine",
	Doc: `The proportion of vinegar to water may change in one direction only: by adding
vinegar. Water that is poured away (for soaking, icing, blanching) does not count;
say what it is for: "2 quarts water, for soaking".`,
	Source: Source{
		Title:   "Approved recipes for craft foods, Nevada Department of Agriculture",
		Address: "https://agri.nv.gov/Food/Craft_Foods/Approved_Craft_Foods_Recipes/",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		if m.need().Origin != AcidFromRecipe {
			return nil
		}
		return m.besideTested((*comparison).waterOver)
	},
}

// pouredAway are words of water that does not stay in the jar.
var pouredAway = []string{
	"soak", "soaking", "ice", "icing", "chill", "chilling", "blanch", "blanching", "rinse", "rinsing", "wash", "washing",
	"drain", "drained", "boil", "boiling", "peel", "peeling", "scald", "scalding", "to cover",
}

func (c *comparison) waterOver() []Finding {
	have := c.water()
	tested := c.tested.of(RoleWater)
	switch {
	case len(have) == 0 || c.acid == nil:
		return nil
	case len(tested) == 0:
		return []Finding{{
			Pos:     have[0].Pos,
			Message: "water, which the published recipe has none of",
			Advice:  `Leave it out; if it is poured away, say what it is for: "for soaking".`,
			Source:  c.tested.source(),
		}}
	}
	x := timesTested(have, tested, highEnd)
	switch {
	case x == nil:
		return []Finding{c.untoldAmount(have[0], tested)}
	case x.Cmp(c.acid) <= 0:
		return nil
	}
	return []Finding{{
		Pos:     have[0].Pos,
		Message: shareOver(x, c.acid) + " of the water that was tested with this much acid",
		Advice:  "The tested recipe has " + lineOf(tested) + " to " + lineOf(c.tested.of(RoleAcid)) + ". Use less water, never less acid.",
		Source:  c.tested.source(),
	}}
}

// water gives the water that stays in the jar: that of the vinegar's own
// group, where the ingredients are in groups.
func (c *comparison) water() []Item {
	acids := ofRole(c.items, RoleAcid)
	var all []Item
	for _, in := range ofRole(c.items, RoleWater) {
		if len(acids) > 0 && in.For == acids[0].For && !in.isPouredAway() {
			all = append(all, in)
		}
	}
	return all
}

// isPouredAway reports whether water is said to be for soaking and the like.
// Boiling water may well stay in the jar.
func (in Item) isPouredAway() bool {
	return in.ToTaste || saysAny(strings.ToLower(in.Note+" "+in.For), pouredAway) || saysAny(strings.ToLower(in.Item), []string{"ice", "iced"})
}
