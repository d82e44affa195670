package validate

import (
	"fmt"

	"stillroom/content"
)

// phHigh reports a measured pH that is too high for boiling water.
var phHigh = &Rule{
	ID:       "ph-high",
	Severity: Error,
	Summary:  "a measured pH over 4.6 in food canned without pressure, or at the end of a ferment",
	Doc: `Botulinum spores grow above pH 4.6. A reading above it, in the recipe or in the
kitchen log, says that this food is low-acid, whatever its process: boiling water
and steam are not for it, and a ferment is not finished.

A reading below it proves less than it seems to: one jar on one day. It never
stands in for a tested process.`,
	Source: Source{
		Title:   "21 CFR 114.3, Acidified foods: definitions",
		Address: "https://lawserver.com/law/country/us/cfr/21_cfr_114-3",
	},
	Check: checkPHHigh,
}

func checkPHHigh(r *content.Recipe) []Finding {
	var fs []Finding
	acidWays := false
	for i := range r.Keeping {
		k := &r.Keeping[i]
		if !needsAcid(k.Way.V) {
			continue
		}
		acidWays = true
		fs = append(fs, overLimit(k.PH)...)
	}
	if !acidWays {
		return nil
	}
	for _, b := range r.Batches {
		fs = append(fs, overLimit(b.PH)...)
	}
	return fs
}

// needsAcid reports whether acid is what holds botulism off in that way.
func needsAcid(w content.Way) bool {
	return w == content.BoilingWater || w == content.AtmosphericSteam || w == content.Fermenting
}

func overLimit(ph content.Field[content.Quantity]) []Finding {
	limit := LimitRat("acid-limit-ph")
	if !ph.Set() || ph.V.High == nil || ph.V.High.Cmp(limit) <= 0 {
		return nil
	}
	return []Finding{{
		Pos:     ph.Pos,
		Message: fmt.Sprintf("a pH of %s is over %s", ph.V.Text, limit.FloatString(1)),
		Advice:  "Do not put this food on the shelf: refrigerate or freeze it, and have the recipe reviewed.",
	}}
}
