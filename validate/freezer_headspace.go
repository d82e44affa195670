package validate

import (
	"fmt"

	"stillroom/content"
)

// freezerHeadspace reports a container for the freezer that is filled too
// high.
var freezerHeadspace = &Rule{
	ID:       "freezer-headspace",
	Severity: Warning,
	Summary:  "a freezer container that is filled too high",
	Doc: `Food swells as it freezes, and a jar with shoulders breaks at the neck. In liquid, a
wide top takes 1/2 in to a pint and 1 in to a quart; a narrow one 3/4 and 1 1/2 in;
juice in a narrow top 1 1/2 in; dry packs 1/2 in.

Where the container is not said to be wide or narrow, or how much it holds, and it
matters, this asks for it as advice. Glass jars count as narrow unless they are said to
be wide or straight-sided.`,
	Source: Source{
		Title:   "Headspace to allow between packed food and closure, National Center for Home Food Preservation",
		Address: "http://nchfp.uga.edu/how/freeze/headspace.html",
	},
	CheckKeeping: checkFreezerHeadspace,
}

func checkFreezerHeadspace(r *content.Recipe, m *Match) []Finding {
	k := m.Keeping
	if k.Way.V != content.Freezer || !k.Headspace.Set() || !k.Container.Set() || isBag(k.Container.V) {
		return nil
	}
	pack := freezerPack(r, m)
	least, most := boxOf(k.Container.V).headspaces(pack)
	have := k.Headspace.V
	switch {
	case atLeast(have, most):
		return nil
	case !atLeast(have, least):
		return []Finding{{
			Pos:     k.Headspace.Pos,
			Message: fmt.Sprintf("%s is under the published %s", have.Text, inches(least.Low)),
			Advice:  least.Statement + ": " + inches(least.Low) + ".",
			Source:  least.Source,
			Notes:   []Note{{Pos: k.Container.Pos, Message: "packed in this"}},
		}}
	}
	return []Finding{{
		Pos:      k.Container.Pos,
		Severity: Advice,
		Message:  "not said whether the top is wide or narrow, and how much it holds; the headspace depends on it",
		Advice:   fmt.Sprintf("Say it, as in wide pint boxes, or leave %s.", inches(most.Low)),
		Source:   most.Source,
	}}
}

// atLeast compares a headspace with a limit; a metric one to the nearest
// millimetre.
func atLeast(h content.Length, l Limit) bool {
	return h.Inches().Cmp(l.Low) >= 0 || sameHeadspace(h, l.Low)
}
