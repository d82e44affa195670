package validate

import (
	"fmt"

	"stillroom/content"
)

// fermentUnfinished reports a ferment that is canned without anything that
// shows it to be finished, or too early.
var fermentUnfinished = &Rule{
	ID:       "ferment-unfinished",
	Severity: Warning,
	Summary:  "a ferment that is canned without a word that it is finished",
	Doc: `Kraut and fermented pickles go into boiling water because they have made their own
acid: only when they have finished. Show it: give the fermenting as a way of keeping
with its published time (3 to 4 weeks at 70 to 75 F, 5 to 6 weeks at 60 to 65), or the
pH that was measured before canning, 4.6 at most. A shorter time than published is an
error.`,
	Source: Source{
		Title:   "Fermenting, University of California ANR",
		Address: "https://ucanr.edu/sites/MG_Practice_Site/Resources/Ferment/",
	},
	CheckKeeping: checkFermentUnfinished,
}

func checkFermentUnfinished(r *content.Recipe, m *Match) []Finding {
	if !m.Keeping.Way.V.Canned() || m.need().Origin != AcidFromFermenting {
		return nil
	}
	for i := range r.Keeping {
		if k := &r.Keeping[i]; k.Way.V == content.Fermenting && k.Duration.Set() {
			return fermentedTooShort(m, k)
		}
	}
	if m.Keeping.PH.Set() {
		return nil
	}
	return []Finding{{
		Pos:     m.Keeping.Process.Pos,
		Message: "nothing shows that the ferment is finished when it is canned",
		Advice:  "Give the fermenting as a way of keeping, with its time; or the pH that was measured.",
	}}
}

// fermentedTooShort compares the time of fermenting with the published one
// for its temperature. A measured pH stands in for it.
func fermentedTooShort(m *Match, k *content.Keeping) []Finding {
	warm := LimitOf("ferment-temp")
	need := LimitOf("ferment-time")
	if t := k.Temperature.V.Fahrenheit(); t != nil && t.Cmp(warm.Low) < 0 {
		need = LimitOf("ferment-time-cool")
	}
	least := content.Duration{Quantity: content.Quantity{Low: need.Low, High: need.Low, Unit: content.Week}}
	if m.Keeping.PH.Set() || k.Duration.V.Minutes().Cmp(least.Minutes()) >= 0 {
		return nil
	}
	return []Finding{{
		Pos:      k.Duration.Pos,
		Severity: Error,
		Message:  fmt.Sprintf("%s of fermenting is under the published %s weeks", k.Duration.V.Text, need.Value),
		Advice:   "Ferment it to the end before it is canned, or measure its pH and give it.",
		Notes:    []Note{{Pos: m.Keeping.Way.Pos, Message: "canned here"}},
		Source:   need.Source,
	}}
}
