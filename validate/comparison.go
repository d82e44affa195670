package validate

import (
	"math/big"
	"slices"
)

// A comparison sets the ingredients of a recipe beside a published recipe of
// the process that it cites.
type comparison struct {
	tested *Composition
	items  []Item
	acid   *big.Rat // how many times the tested acid there is; nil if none was tested, or it cannot be told
	tomato *big.Rat // the same of the tomatoes
	untold []string // what was tested and cannot be compared: "acid", "tomatoes"
}

// compare sets the recipe beside every published recipe of its process.
func (m *Match) compare() []comparison {
	if m.Process == nil {
		return nil
	}
	published := CompositionsOf(m.Process.ID)
	cs := make([]comparison, len(published))
	for i := range published {
		cs[i] = m.compareWith(&published[i])
	}
	return cs
}

func (m *Match) compareWith(tested *Composition) comparison {
	c := comparison{tested: tested, items: m.inJar()}
	c.acid = c.times("acid", m.acids(c.items), tested.of(RoleAcid))
	c.tomato = c.times("tomatoes", ofRole(c.items, RoleTomato), tested.of(RoleTomato))
	return c
}

// acids picks the acids that the process was tested with, or takes in their
// place. What is optional is not counted on.
func (m *Match) acids(items []Item) []Item {
	n := m.need()
	var all []Item
	for _, in := range items {
		if in.role() == RoleAcid && n.accepts(in.Class.Kind) && !in.Optional {
			all = append(all, in)
		}
	}
	return all
}

// times gives how many times the tested amount there is, and keeps in mind
// what cannot be told.
func (c *comparison) times(what string, have, tested []Item) *big.Rat {
	if len(tested) == 0 || len(have) == 0 {
		return nil
	}
	x := timesTested(have, tested, lowEnd)
	if x == nil {
		c.untold = append(c.untold, what)
	}
	return x
}

// batch gives how many times the tested batch the acid and the tomatoes stand
// for, the lesser of the two, and which of them it is; nil if neither is
// known.
func (c *comparison) batch() (times *big.Rat, by string) {
	switch {
	case c.acid == nil:
		return c.tomato, "tomatoes"
	case c.tomato == nil || c.acid.Cmp(c.tomato) <= 0:
		return c.acid, "acid"
	}
	return c.tomato, "tomatoes"
}

// of gives the portions of a role. Nobody may change them.
func (c *Composition) of(r Role) []Item { return c.roles[r] }

// source is where the published recipe stands.
func (c *Composition) source() Source { return c.Portions[0].Source }

// besideTested runs a check against each published recipe of the process: one
// that finds nothing will do; else what was found against the first is told.
func (m *Match) besideTested(check func(*comparison) []Finding) []Finding {
	var first []Finding
	for i := range m.Tested {
		fs := check(&m.Tested[i])
		if len(fs) == 0 {
			return nil
		}
		if first == nil {
			first = fs
		}
	}
	return first
}

// holds reports whether a published recipe of the process has that food.
func (c *Composition) holds(food Produce) bool {
	return slices.ContainsFunc(c.shares, func(s shared) bool { return s.covers(food) })
}
