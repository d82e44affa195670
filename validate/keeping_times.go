package validate

import (
	"stillroom/content"
)

// A Term is how long a food keeps in one state.
type Term struct {
	State  State
	Time   string // 12 months, 3-4 days; empty where none is published
	Says   string // where, and on what terms: a sentence
	Own    bool   // the time is the recipe's own, and not a general one
	Source Source
}

// A State is how a food stands: in its sealed jar, opened, cold or frozen.
type State string

// The states.
const (
	Sealed State = "sealed"
	Opened State = "opened"
	Cold   State = "cold"   // in the refrigerator, never processed
	Frozen State = "frozen" // never processed
)

// KeepingTimes gives how long a canned recipe keeps: sealed, opened, cold and
// frozen, in that order. Where the recipe has a way of its own for one of them,
// its time is taken; else the general one for such food, if any is published.
// It is empty for a recipe that has no canned way.
func KeepingTimes(r *content.Recipe) []Term {
	var terms []Term
	for i := range r.Keeping {
		if k := &r.Keeping[i]; k.Way.V.Canned() {
			terms = append(terms, sealedTerm(k), openedTerm(r))
			break
		}
	}
	if terms == nil {
		return nil
	}
	for _, t := range []Term{coldTerm(r), frozenTerm(r)} {
		if t.Time != "" {
			terms = append(terms, t)
		}
	}
	return terms
}

func term(s State, time string, m Remark) Term {
	return Term{State: s, Time: time, Says: m.Says, Source: m.Source}
}

func sealedTerm(k *content.Keeping) Term {
	t := term(Sealed, k.Keeps.V.Text, remark("sealed", "cool", limitText("store-temp-best", "°F")))
	t.Own = true
	return t
}

func openedTerm(r *content.Recipe) Term {
	switch r.Kind.V {
	case content.Jam, content.Jelly, content.Marmalade, content.Conserve, content.FruitButter:
		return term(Opened, monthsText("opened-jam-fridge"), remark("opened-jam"))
	case content.Pickle, content.Relish, content.Chutney, content.Ferment, content.Ketchup:
		return term(Opened, "", remark("opened-pickle"))
	case content.Fruit, content.Juice, content.Syrup, content.Cordial, content.PieFilling:
		return term(Opened, limitText("leftovers", "days"), remark("opened-fruit"))
	}
	return term(Opened, limitText("leftovers", "days"), remark("opened-food"))
}

// coldTerm takes general times only of pickles: nothing general is published of
// cooked food that would keep for days.
func coldTerm(r *content.Recipe) Term {
	if k := ownWay(r, content.Refrigerator); k != nil {
		return ownTerm(Cold, k, remark("cold-own"))
	}
	if r.Kind.V == content.Pickle || r.Kind.V == content.Relish {
		return term(Cold, monthsText("fridge-pickle-keeps"), remark("cold-pickle"))
	}
	return Term{State: Cold}
}

func frozenTerm(r *content.Recipe) Term {
	frost := limitText("freeze-temp", "°F")
	if k := ownWay(r, content.Freezer); k != nil {
		return ownTerm(Frozen, k, remark("frozen-own", "frost", frost))
	}
	id, ok := frozenLimits[r.Kind.V]
	if !ok {
		return Term{State: Frozen}
	}
	return term(Frozen, monthsText(id), remark("frozen", "frost", frost))
}

// frozenLimits are the limits on frozen food by kind. Of pickles, soups and
// meat in pieces none is published.
var frozenLimits = map[content.Kind]string{
	content.Fruit: "freeze-fruit-veg", content.Vegetable: "freeze-fruit-veg", content.Tomato: "freeze-fruit-veg",
	content.Legume: "freeze-fruit-veg", content.PieFilling: "freeze-fruit-veg",
	content.Poultry: "freeze-poultry", content.Fish: "freeze-fish",
}

func ownWay(r *content.Recipe, w content.Way) *content.Keeping {
	for i := range r.Keeping {
		if r.Keeping[i].Way.V == w {
			return &r.Keeping[i]
		}
	}
	return nil
}

func ownTerm(s State, k *content.Keeping, m Remark) Term {
	t := term(s, k.Keeps.V.Text, m)
	t.Own = true
	if t.Source == (Source{}) {
		t.Source = Source{Title: "The recipe"}
	}
	return t
}

// monthsText writes a limit in months: 1 month, 8-12 months.
func monthsText(id string) string {
	if l := LimitOf(id); l.High.Cmp(one) == 0 {
		return limitText(id, "month")
	}
	return limitText(id, "months")
}
