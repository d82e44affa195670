package validate

import (
	"fmt"

	"stillroom/content"
)

// remakeLarge reports soft jam that is cooked again in too large a lot.
var remakeLarge = &Rule{
	ID:       "remake-large",
	Severity: Advice,
	Summary:  "soft jam cooked again, more than 8 cups at a time",
	Doc: `Jam or jelly that did not set is cooked again 4 to 8 cups at a time. A larger lot
takes so long to boil that it darkens and does not set either.`,
	Source: Source{
		Title:   "Remaking soft jelly, Oklahoma State University Extension",
		Address: "https://extension.okstate.edu/programs/oklahoma-gardening/recipes/remaking-soft-jelly.html",
	},
	CheckText: checkRemakeLarge,
}

var (
	remaking  = fewOf("remake remaking recook recooking re-cook")
	againWord = fewOf("again")
)

func checkRemakeLarge(t *Text) []Finding {
	most := LimitRat("jelly-remake-batch")
	var fs []Finding
	for _, s := range t.counting() {
		if !s.holds(&remaking) && !(s.holds(&againWord) && s.has(famOtherJob) && s.near("soft set runny")) {
			continue
		}
		for _, f := range s.figures() {
			cups := mention{low: f.high, high: f.high, unit: f.unit}.in(content.Cup)
			if f.measures != content.VolumeDim || cups == nil || cups.Cmp(most) <= 0 || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: fmt.Sprintf("%s is too much to cook again at a time", s.words(f.from, f.to)),
				Advice:  "Say 4 to 8 cups at a time.",
			})
		}
	}
	return fs
}
