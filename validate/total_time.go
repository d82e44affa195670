package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// totalTime gives advice on times that leave the canner out.
var totalTime = &Rule{
	ID:       "total-time",
	Severity: Advice,
	Summary:  "times that are too short to hold the process",
	Doc: `Readers plan by the time on the page, and search engines print it. The minutes in
the canner belong to "cooking:"; so do heating the water and venting.`,
	Source: Source{Title: "Structured data of recipes, schema.org totalTime and cookTime, from memory"},
	CheckKeeping: func(r *content.Recipe, m *Match) []Finding {
		cooking := r.Times.Cooking
		need := m.leastProcess()
		if !cooking.Set() || need == nil || m.Keeping != &r.Keeping[0] || compare(cooking.V.Minutes(), need) >= 0 {
			return nil
		}
		return []Finding{{
			Pos:     cooking.Pos,
			Message: fmt.Sprintf("%s of cooking do not hold the %s min in the canner", cooking.V.Text, need.FloatString(0)),
			Advice:  "Count the process, and the heating of the water, into cooking.",
		}}
	},
}

// leastProcess is the shortest of the processing times that are written; nil
// if there is none.
func (m *Match) leastProcess() *big.Rat {
	var least *big.Rat
	for _, j := range m.Jars {
		least = lower(least, j.Entry.Time.V.Minutes())
		for _, b := range j.Entry.Altitude {
			least = lower(least, b.Value.V.Minutes())
		}
	}
	return least
}
