package validate

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"stillroom/content"
)

// A Recheck is a recipe that somebody should compare with the published
// guidance again.
type Recheck struct {
	Recipe  *content.Recipe
	Never   bool     // the recipe does not say that it was ever checked
	Since   string   // the edition of the tables, YYYY-MM-DD, that first called for it; empty if there is no reason but Never
	Reasons []Reason // by date of publication, the newest first, those without a date last
}

// A Reason is something that became known after a recipe was checked.
type Reason struct {
	Date   string // of publication: YYYY-MM-DD, YYYY-MM or YYYY; empty if not known
	Since  string // the edition of the tables in which it stands first: YYYY-MM-DD
	Says   string // what changed, as a clause
	Look   string // what to look at: a sentence
	Source Source
	Notice bool // a notice that stands against the recipe, which the rule overruled reports too
}

// Rechecks gives the recipes of a site that a change of the guidance or of the
// tables concerns and that were not checked since, and the canned ones that
// were never checked, in order of file. Drafts and scheduled recipes are among
// them. A recipe says when it was checked by its key "checked", which [Fill]
// writes; as long as that names the newest edition, [Edition], it is not here.
//
// A change concerns a recipe by the way of keeping, the process or the food, as
// [Revision] and [Notice] say; of a recipe that was never checked all that
// concern it are reasons.
func Rechecks(s *content.Site) []Recheck {
	var all []Recheck
	for _, r := range s.Recipes {
		c := Recheck{Recipe: r, Never: !r.Checked.Edition.Set(), Reasons: reasonsSince(r, r.Checked.Edition.V)}
		for _, reason := range c.Reasons {
			if c.Since == "" || reason.Since < c.Since {
				c.Since = reason.Since
			}
		}
		if len(c.Reasons) > 0 || c.Never && isCanned(r) {
			all = append(all, c)
		}
	}
	return all
}

// reasonsSince gives what concerns a recipe and is newer than an edition of
// the tables; for the zero Date all that concerns it.
func reasonsSince(r *content.Recipe, edition content.Date) []Reason {
	since := edition.String()
	if since >= Edition {
		return nil // of most recipes; what follows takes its time
	}
	items := itemsOf(r)
	var reasons []Reason
	for _, v := range revisions() {
		if v.Entered > since && v.concerns(r, items) {
			reasons = append(reasons, Reason{Date: v.Date, Since: v.Entered, Says: v.Says, Look: v.Look, Source: v.Source, Notice: v.Notice != nil})
		}
	}
	if since != "" {
		reasons = append(reasons, newFigures(r, since)...)
	}
	slices.SortStableFunc(reasons, func(a, b Reason) int { return strings.Compare(b.Date, a.Date) })
	return reasons
}

// newFigures gives the cited processes whose figures are newer than an
// edition.
func newFigures(r *content.Recipe, since string) []Reason {
	var reasons []Reason
	for i := range r.Keeping {
		k := &r.Keeping[i]
		p, _ := FindProcess(k.Process.V, k.Way.V, "")
		if p == nil || p.Since <= since {
			continue
		}
		reasons = append(reasons, Reason{
			Date:   p.Since,
			Since:  p.Since,
			Says:   fmt.Sprintf("the figures of %s are those of the edition of %s", p.ID, p.Since),
			Look:   "Compare acid, headspace and minutes in the steps with the front matter.",
			Source: p.Source(),
		})
	}
	return reasons
}

func isCanned(r *content.Recipe) bool {
	return slices.ContainsFunc(r.Keeping, func(k content.Keeping) bool { return k.Way.V.Canned() })
}

var one = big.NewRat(1, 1)
