package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// ventShort reports words for less than ten minutes of venting.
var ventShort = &Rule{
	ID:       "vent-short",
	Severity: Error,
	Summary:  "a pressure canner vented for less than 10 minutes",
	Doc: `Air in a pressure canner keeps it cooler than its gauge says. Steam blows from the
vent for 10 minutes before it is closed. The page tells readers so in any case, so a
step may leave it out, but not say less.`,
	Source: Source{
		Title:   "USDA Complete Guide to Home Canning, pressure canning",
		Address: "http://www.recipesource.com/misc/canning/00/rec0010.html",
	},
	CheckText: checkVentShort,
	Practice: &Practice{
		Phrases: `bother~|need~|have|worth|wait~|necessary .. to|with|about|for? vent~|venting|exhaust~|exhausting; vent~|venting|exhaust~|exhausting .. is|are|isn't|aren't .. needed|necessary|required`,
		Left:    true,
		Where:   underPressure,
		Message: "this says that a pressure canner need not be vented",
		Advice:  "Say: vent for 10 minutes, then close the vent or set the weight.",
	},
}

func checkVentShort(t *Text) []Finding {
	if t.Recipe != nil && !t.hasWay(content.PressureCanner) {
		return nil
	}
	least := LimitRat("canner-vent")
	var fs []Finding
	for s := range t.counting() {
		for _, f := range s.figures() {
			if f.dimension() != content.TimeDim || !s.isVenting(f) {
				continue
			}
			m := f.in(content.Minute)
			if m.Cmp(least) >= 0 || m.Cmp(big.NewRat(1, 2)) < 0 || s.isDifference(f) || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: fmt.Sprintf("%s of venting is too short", s.words(f.from, f.to)),
				Advice:  "Say 10 minutes, before the vent is closed or the weight set.",
			})
		}
	}
	return fs
}

// isVenting reports whether a time is that of the steam that blows off.
func (s *sentence) isVenting(f mention) bool {
	if s.jobBefore(f.from) == jobVent {
		return true
	}
	if s.anyIn("of", f.to, f.to+1) && s.anyIn("venting steam", f.to, f.to+3) {
		return true
	}
	return s.anyIn("steam", 0, f.from) && s.anyIn("escape blow blows flow out exhaust vent petcock", 0, s.len()) && !s.has(famProcess) && !s.anyOf("pressure zero")
}
