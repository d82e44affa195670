package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// headspace reports a jar filled higher or lower than its process was tested
// with.
var headspace = &Rule{
	ID:       "headspace",
	Severity: Error,
	Summary:  "a headspace other than the tested one",
	Doc: `Headspace is the air left between the food, or its liquid, and the rim. Too
little, and food boils out and gets under the lid; too much, and the process is
not long enough to drive the air out. Both cost the seal.

Write what the process says: mostly 1/4 in for jam and jelly, 1/2 in for fruit,
tomatoes and pickles, 1 in and more for food that is pressure canned. In
metric, 6, 13, 25 and 32 mm stand for 1/4, 1/2, 1 and 1 1/4 in.`,
	Source: Source{
		Title:   "AIB 539 (2015), headspace, as reproduced in a table of headspaces",
		Address: "https://creativehomemaking.com/recipes/canning/how-much-headspace/",
	},
	CheckKeeping: checkHeadspace,
}

func checkHeadspace(_ *content.Recipe, m *Match) []Finding {
	h := m.Keeping.Headspace
	if !h.Set() || !m.Keeping.Way.V.Canned() {
		return nil
	}
	for _, j := range m.Jars {
		if j.Tested == nil || sameHeadspace(h.V, j.Tested.Headspace) {
			continue
		}
		return []Finding{{
			Pos: h.Pos,
			Message: fmt.Sprintf("%s of headspace where the tested process leaves %s in %s",
				h.V.Text, inches(j.Tested.Headspace), j.jars()),
			Advice: fmt.Sprintf("Write %s.", inches(j.Tested.Headspace)),
			Source: m.Process.Source(),
		}}
	}
	return nil
}

// sameHeadspace compares exactly in inches; a metric length agrees if it is
// the tested one to the nearest millimetre, as metric tables print it.
func sameHeadspace(h content.Length, tested *big.Rat) bool {
	if h.IsRange() {
		return false
	}
	if h.Unit == content.Inch {
		return compare(h.Inches(), tested) == 0
	}
	mm := new(big.Rat).Mul(h.Inches(), big.NewRat(254, 10))
	return compare(mm, wholeMillimetres(tested)) == 0
}

// wholeMillimetres rounds a length in inches to the nearest millimetre.
func wholeMillimetres(in *big.Rat) *big.Rat {
	x := new(big.Rat).Mul(in, big.NewRat(254, 10))
	x.Add(x, big.NewRat(1, 2))
	return new(big.Rat).SetInt(new(big.Int).Div(x.Num(), x.Denom()))
}

// inches writes a length as a kitchen fraction: 1 1/4 in.
func inches(in *big.Rat) string {
	q := content.Quantity{Low: in, High: in, Unit: content.Inch}
	return q.String()
}
