package validate

import (
	"slices"
	"strings"
	"sync"

	"stillroom/content"
)

// A Notice is a later ruling on a food. It wins over the rows of the
// processes. Nobody may change what it points to.
type Notice struct {
	ID      string
	Date    string // YYYY-MM-DD, or a year; empty if not known
	Foods   []string
	Ways    []content.Way // empty for every way of canning
	Words   []string      // one of them must be said of the food; empty if it is the food as such
	Kinds   []content.Kind
	Only    []string // processes that it speaks of; empty for all
	Except  []string // processes that it leaves alone
	Unless  []string // words of the food that lift it
	With    ItemKind // an ingredient that must be there too
	Asks    bool     // it stands until the recipe says one of Unless: what is not known is asked for
	Says    string   // what is wrong, as a clause
	Instead string   // what to do
	Source  Source
}

// A Case is a food in a recipe that is kept in some way: what notices are
// read against.
type Case struct {
	Food    string // by the name of LookUpProduce
	Said    string // what is said of it: its item and note, and the recipe's name
	Way     content.Way
	Kind    content.Kind
	Process string
	Items   []ItemKind // what else is in the recipe
}

// Notices gives every notice, in order of ID. Nobody may change them.
func Notices() []Notice { return notices() }

// NoticesOn gives the notices that stand against a case.
func NoticesOn(c Case) []Notice {
	var ns []Notice
	for _, n := range noticesOf()[c.Food] {
		if n.stands(c) {
			ns = append(ns, *n)
		}
	}
	return ns
}

// noticesOf gives the notices on a food, in order of ID.
var noticesOf = sync.OnceValue(func() map[string][]*Notice {
	byFood := map[string][]*Notice{}
	all := notices()
	for i := range all {
		for _, food := range all[i].Foods {
			byFood[food] = append(byFood[food], &all[i])
		}
	}
	return byFood
})

func (n *Notice) stands(c Case) bool {
	if !n.concerns(c) {
		return false
	}
	c.Said = plain(c.Said)
	return !saysAny(c.Said, n.Unless) && n.speaksOf(c)
}

// concerns reports whether the notice is about such a food, kept in such a
// way, whatever is said of it.
func (n *Notice) concerns(c Case) bool {
	switch {
	case !slices.Contains(n.Foods, c.Food):
	case len(n.Ways) == 0 && !c.Way.Canned():
	case len(n.Ways) > 0 && !slices.Contains(n.Ways, c.Way):
	case len(n.Only) > 0 && !slices.Contains(n.Only, c.Process):
	case slices.Contains(n.Except, c.Process):
	case n.With != ItemOther && !slices.Contains(c.Items, n.With):
	default:
		return true
	}
	return false
}

// speaksOf reports whether the form of the food is the one that the notice is
// about.
func (n *Notice) speaksOf(c Case) bool {
	if len(n.Words)+len(n.Kinds) == 0 {
		return true
	}
	return saysAny(c.Said, n.Words) || slices.Contains(n.Kinds, c.Kind)
}

var notices = sync.OnceValue(func() []Notice {
	var ns []Notice
	for _, r := range readTable("notices.tsv") {
		n := Notice{
			ID:      r.text("notice"),
			Date:    r.text("date"),
			Foods:   r.list("foods"),
			Words:   r.list("words"),
			Only:    r.list("only"),
			Except:  r.list("except"),
			Unless:  r.list("unless"),
			With:    ItemKind(r.text("with")),
			Asks:    r.text("asks") == "yes",
			Says:    r.text("says"),
			Instead: r.text("instead"),
			Source:  r.source("publication"),
		}
		for _, w := range r.list("ways") {
			n.Ways = append(n.Ways, content.Way(w))
		}
		for _, k := range r.list("kinds") {
			n.Kinds = append(n.Kinds, content.Kind(k))
		}
		ns = append(ns, n)
	}
	slices.SortFunc(ns, func(a, b Notice) int { return strings.Compare(a.ID, b.ID) })
	return ns
})
