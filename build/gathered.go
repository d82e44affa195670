package build

import (
	"slices"
	"strings"
	"time"

	"stillroom/content"
)

// A GatheredPage holds the recipes that have one thing in common: a produce, a
// month, a way of keeping.
type GatheredPage struct {
	Shell
	Heading string
	Count   string
	What    string // a sentence on what they have in common; may be empty
	Fill    string
	Newest  *Newest
	Larder  Larder
	Year    []Month   // on the page of a month
	Ripe    []Counted // produce of that month
	Months  []Link    // when a produce is in season
	Others  []Counted // the other pages of the same sort
	All     string    // what the others are: Other produce
}

func (e *edition) producePage(h harvest) *GatheredPage {
	all := shelved(h.recipes)
	p := &GatheredPage{
		Heading: capital(h.name),
		Count:   count(len(h.recipes), "recipe", "recipes"),
		Fill:    fillOf(h.name),
		Newest:  e.newest("The newest", all),
		Larder:  larder(all),
		Others:  without(e.produceCounts(), h.address),
		All:     "Other produce",
	}
	for _, m := range FromStart(seasonOf(h.name)) {
		p.Months = append(p.Months, Link{Name: m.String(), Address: monthAddress(m)})
	}
	p.Shell = e.shell(leaf{
		address:     h.address,
		name:        p.Heading,
		description: "What to do with " + h.name + ": " + p.Count + " for keeping them.",
		trail:       []Link{{Name: "Recipes", Address: recipesAddress}},
		nodes:       e.lists(all),
	})
	p.Vessels = vessels(p.Larder.jars())
	return p
}

func (e *edition) monthPage(m time.Month) *GatheredPage {
	made := shelved(e.made[m])
	p := &GatheredPage{
		Heading: m.String(),
		Count:   count(len(made), "recipe", "recipes"),
		Fill:    commonFill(made),
		Newest:  e.newest("The newest", made),
		Larder:  larder(made),
		Year:    e.year(m),
		Ripe:    e.ripe(m),
	}
	p.Shell = e.shell(leaf{
		address:     monthAddress(m),
		name:        p.Heading,
		description: "What to put up in " + p.Heading + ": " + p.Count + ".",
		trail:       []Link{{Name: "Recipes", Address: recipesAddress}},
		nodes:       e.lists(made),
	})
	p.Vessels = vessels(p.Larder.jars())
	return p
}

func (e *edition) wayPage(w wayName) *GatheredPage {
	kept := shelved(e.kept[w.way])
	p := &GatheredPage{
		Heading: w.name,
		Count:   count(len(kept), "recipe", "recipes"),
		What:    w.what,
		Fill:    commonFill(kept),
		Newest:  e.newest("The newest", kept),
		Larder:  larder(kept),
		Others:  without(e.wayCounts(), wayAddress(w.way)),
		All:     "Other ways of keeping",
	}
	p.Shell = e.shell(leaf{
		address:     wayAddress(w.way),
		name:        w.name,
		description: strings.TrimSpace(w.what) + " " + capital(p.Count) + ".",
		trail:       []Link{{Name: "Recipes", Address: recipesAddress}},
		nodes:       e.lists(kept),
	})
	p.Vessels = vessels(p.Larder.jars())
	return p
}

// ripe gives the produce that a month's recipes are made of, in order of name.
func (e *edition) ripe(m time.Month) []Counted {
	main := make(map[string]bool)
	for _, r := range e.made[m] {
		if len(r.Produce) > 0 && ripens(r.Produce[0].V) {
			main[produceAddress(r.Produce[0].V)] = true
		}
	}
	return slices.DeleteFunc(e.produceCounts(), func(c Counted) bool { return !main[c.Address] })
}

// lists is a list as structured data; an empty one is none.
func (e *edition) lists(recipes []*content.Recipe) []node {
	if len(recipes) == 0 {
		return nil
	}
	return []node{e.recipeList(recipes)}
}

func without(all []Counted, address string) []Counted {
	var others []Counted
	for _, c := range all {
		if c.Address != address {
			others = append(others, c)
		}
	}
	return others
}
