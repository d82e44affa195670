package validate

import (
	"fmt"

	"stillroom/content"
)

// packUntested reports a pack for which the cited process has no figures.
var packUntested = &Rule{
	ID:       "pack-untested",
	Severity: Error,
	Summary:  "a pack that the cited process was not tested with",
	Doc: `Raw and hot packs heat at different speeds. Where only one of them is
published, only that one was found to work: a time for the other cannot be
worked out from it.`,
	Source: Source{
		Title:   "Pack types for home canning, quoting the National Center for Home Food Preservation",
		Address: "https://www.healthycanning.com/pack-types-for-home-canning/",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		k := m.Keeping
		if !k.Pack.Set() || len(m.Why.Packs) == 0 {
			return nil
		}
		return []Finding{{
			Pos:     k.Pack.Pos,
			Message: fmt.Sprintf("%s was not tested with a %s pack", k.Process.V, k.Pack.V),
			Advice:  fmt.Sprintf("Its figures are for a %s pack; look for the process of yours with \"stillroom processes\".", orList(m.Why.Packs)),
		}}
	},
}
