package validate

import (
	"slices"
	"sync"

	"stillroom/content"
)

// A Revision is a dated change of the published guidance, and which recipes it
// concerns. Nobody may change what it points to.
type Revision struct {
	ID        string
	Date      string // on which it was published: YYYY-MM-DD, YYYY-MM or YYYY; empty if not known
	Entered   string // the edition of the tables in which it stands first
	Effect    Effect
	Notice    *Notice       // the notice that it is; nil for a revision of another sort, which alone has what follows
	Processes []string      // that it speaks of; empty for all
	Ways      []content.Way // that it speaks of
	Scaled    bool          // it speaks only of recipes that are offered in more than one batch
	Says      string        // what changed, as a clause
	Look      string        // what to look at in a recipe: a sentence
	Source    Source
}

// An Effect is what a revision does to the recipes of before.
type Effect string

// The effects.
const (
	Withdraws Effect = "withdraws" // what was published is so no longer
	Permits   Effect = "permits"   // what was forbidden is no longer
	Asks      Effect = "asks"      // something must be said that need not be said before
	Steps     Effect = "steps"     // the steps change, the figures stay
)

// Revisions gives every revision, in the order of their table. Nobody may
// change them.
func Revisions() []Revision { return revisions() }

var revisions = sync.OnceValue(func() []Revision {
	known := map[string]*Notice{}
	for i, n := range notices() {
		known[n.ID] = &notices()[i]
	}
	var vs []Revision
	for _, r := range readTable("changes.tsv") {
		v := Revision{
			ID:        r.text("change"),
			Date:      r.text("date"),
			Entered:   r.text("entered"),
			Effect:    word(r, "effect", effects),
			Processes: r.list("processes"),
			Scaled:    r.text("scaled") == "yes",
			Says:      r.text("says"),
			Look:      r.text("look"),
			Source:    r.source("publication"),
		}
		for _, w := range r.list("ways") {
			v.Ways = append(v.Ways, content.Way(w))
		}
		if r.text("notice") != "" {
			v.Notice = word(r, "notice", known)
			v.Says, v.Look = v.Notice.Says, v.Notice.Instead
		}
		vs = append(vs, v)
	}
	return vs
})

var effects = map[string]Effect{
	"withdraws": Withdraws, "permits": Permits, "asks": Asks, "steps": Steps,
}

// concerns reports whether the revision speaks of a recipe. A notice does only
// if it stands against it.
func (v *Revision) concerns(r *content.Recipe, items []Item) bool {
	for i := range r.Keeping {
		k := &r.Keeping[i]
		if v.Notice == nil && v.concernsWay(r, k) || v.Notice != nil && v.Notice.standsAgainst(r, k, items) {
			return true
		}
	}
	return false
}

func (v *Revision) concernsWay(r *content.Recipe, k *content.Keeping) bool {
	switch {
	case !slices.Contains(v.Ways, k.Way.V):
	case len(v.Processes) > 0 && !slices.Contains(v.Processes, k.Process.V):
	case v.Scaled && !overOne(r.Scale.Largest) && !overOne(k.Factor):
	default:
		return true
	}
	return false
}

// standsAgainst reports whether the notice stands against one of the foods of
// a recipe.
func (n *Notice) standsAgainst(r *content.Recipe, k *content.Keeping, items []Item) bool {
	m := Match{Keeping: k, Items: items}
	for _, f := range foodsOf(r, items) {
		if n.stands(m.caseOf(r, f)) {
			return true
		}
	}
	return false
}

func overOne(f content.Field[content.Quantity]) bool {
	return f.Set() && f.V.High.Cmp(one) > 0
}
