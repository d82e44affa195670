package validate

import "stillroom/content"

// phEarly reports a pH that was measured on the day the batch was made.
var phEarly = &Rule{
	ID:       "ph-early",
	Severity: Warning,
	Summary:  "a pH that was measured on the day of canning",
	Doc: `At first the liquid is sour and the pieces are not. Solids and liquid even out in the
jar over a day and more, and only then does a reading of the whole jar, blended, say
anything: measure a day after canning or later.`,
	Source: Source{
		Title:   "Definitions of acid, acidified and fermented food, Minnesota Department of Agriculture",
		Address: "https://mda.state.mn.us/search?page=1749&q=Fh",
	},
	CheckKeeping: func(r *content.Recipe, m *Match) []Finding {
		k := m.Keeping
		if !k.Way.V.Canned() || !k.PH.Set() || !k.Measured.Set() || m.need().Origin == AcidFromFermenting {
			return nil
		}
		for _, b := range r.Batches {
			if b.Made.Set() && b.Made.V == k.Measured.V {
				return []Finding{{
					Pos:     k.Measured.Pos,
					Message: "the pH was measured on the day the batch was made",
					Advice:  "Measure a jar a day after canning or later.",
					Notes:   []Note{{Pos: b.Made.Pos, Message: "made here"}},
				}}
			}
		}
		return nil
	},
}
