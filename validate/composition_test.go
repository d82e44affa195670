package validate

import (
	"fmt"
	"math/big"
	"slices"
	"strings"
	"testing"

	"stillroom/content"
)

// TestCompositionsPass reads every published composition as a recipe. None
// may be refused or warned of; with one amount made worse, each must be.
func TestCompositionsPass(t *testing.T) {
	recipes, worse := 0, 0
	for _, p := range Processes() {
		for _, c := range CompositionsOf(p.ID) {
			d, ok := compositionDraft(p, c)
			if !ok {
				continue
			}
			recipes++
			if fs := aboutIngredients(d); len(fs) > 0 {
				t.Errorf("%s %s: %v\n%s", p.ID, c.Batch, fs, d.text())
			}
			worse += refuseWorsePortions(t, p, c, d)
		}
	}
	if recipes < 85 || worse < 240 {
		t.Errorf("%d compositions pass and %d made worse are refused, want 85 and 240", recipes, worse)
	}
	t.Logf("%d published compositions pass; %d made worse are all refused", recipes, worse)
}

// compositionDraft writes a composition as the recipe that it is, all of its
// options taken.
func compositionDraft(p *Process, c Composition) (draft, bool) {
	if !p.Method.Canned() {
		return draft{}, false
	}
	d := processDrafts(p)[0]
	d.kind = string(p.Kinds[0])
	d.ingredients = nil
	for _, x := range c.Portions {
		d.ingredients = append(d.ingredients, portionLine(x.Item))
	}
	return d, true
}

// portionLine writes a portion as a cook would.
func portionLine(in Item) string {
	line := in.Amount.String()
	if len(in.Same) > 0 {
		line += " (" + in.Same[0].String() + ")"
	}
	switch in.Class.Kind {
	case ItemVinegar:
		return line + " " + in.Item + " (5%)"
	case ItemPicklingLime:
		return line + " food-grade " + in.Item
	}
	return line + " " + in.Item
}

// aboutIngredients runs the rules that judge what goes into a jar, and gives
// all that they find.
func aboutIngredients(d draft) []Finding {
	r, _ := d.recipe()
	return checkRecipe(r, []*Rule{
		starch, grain, dairy, egg, fat, chocolate, gelatin, breadInJar, dryGoods, picklingLime, sweetener, canningTablet,
		notTestedWith, lowAcidOver, noMeasure, waterOver, spicesOver, herbsOver, sugarCut, lowSugarTime, savouryJelly,
		vinegarWeak, acidOther, overruled,
	})
}

// refuseWorsePortions doubles each low-acid food, the water, the oil and the
// starch of a composition that has acid or tomatoes to compare them with, and
// adds what it does not have.
func refuseWorsePortions(t *testing.T, p *Process, c Composition, d draft) int {
	t.Helper()
	if len(c.of(RoleAcid))+len(c.of(RoleTomato)) == 0 {
		return 0
	}
	n := 0
	refuse := func(what string, lines []string) {
		n++
		w := d.clone()
		w.ingredients = lines
		if fs := aboutIngredients(w); !slices.ContainsFunc(fs, func(f Finding) bool { return f.Severity == Error }) {
			t.Errorf("%s %s: %s passes: %v", p.ID, c.Batch, what, fs)
		}
	}
	for i, x := range c.Portions {
		doubled := slices.Clone(d.ingredients)
		doubled[i] = portionLine(times(x.Item, 2))
		switch x.Role {
		case RoleWater:
			if AcidFor(p).Origin != AcidFromRecipe {
				continue
			}
		case RoleStarch, RoleOil, RoleButter:
		case RoleLowAcid:
			if len(sharedWith(c, x)) > 1 {
				doubled[i] = portionLine(times(x.Item, 20))
			}
		default:
			continue
		}
		refuse("more "+x.Item.Item, doubled)
	}
	if AcidFor(p).Origin == AcidFromRecipe {
		refuse("with corn", append(slices.Clone(d.ingredients), "3 cups lima beans"))
	}
	return n
}

// times multiplies every amount of an ingredient.
func times(in Item, n int64) Item {
	x := *in.Ingredient
	x.Amount = timesAmount(x.Amount, n)
	x.Same = slices.Clone(x.Same)
	for i := range x.Same {
		x.Same[i] = timesAmount(x.Same[i], n)
	}
	return Item{Ingredient: &x, Class: in.Class}
}

func timesAmount(q content.Quantity, n int64) content.Quantity {
	f := big.NewRat(n, 1)
	q.Low, q.High = new(big.Rat).Mul(q.Low, f), new(big.Rat).Mul(q.High, f)
	return q
}

// sharedWith gives the tested foods that count together with a portion.
func sharedWith(c Composition, x Portion) []Item {
	for _, s := range c.shares {
		if s.covers(x.Class.Produce) {
			return s.tested
		}
	}
	return nil
}

// The acids of the compositions are those of acid.tsv.
func TestCompositionsAgreeWithAcids(t *testing.T) {
	for _, p := range Processes() {
		need := AcidFor(p)
		for _, c := range CompositionsOf(p.ID) {
			if need.Origin != AcidFromRecipe {
				continue
			}
			var have []string
			for _, in := range c.of(RoleAcid) {
				have = append(have, fmt.Sprint(in.Class.Kind, " ", tablespoons(in.Amount)))
			}
			slices.Sort(have)
			if !slices.ContainsFunc(need.Choices, func(ch AcidChoice) bool { return slices.Equal(have, doseTexts(ch)) }) {
				t.Errorf("%s %s has %v, which is no choice of acid.tsv", p.ID, c.Batch, have)
			}
		}
	}
}

func doseTexts(c AcidChoice) []string {
	var all []string
	for _, d := range c.Doses {
		all = append(all, fmt.Sprint(d.Kind, " ", tablespoons(content.Quantity{Low: d.Amount, High: d.Amount, Unit: d.Unit})))
	}
	slices.Sort(all)
	return all
}

func tablespoons(q content.Quantity) string {
	c, _ := q.In(content.Tablespoon)
	return c.Low.RatString()
}

// Every portion is read as what its role says.
func TestPortionsAreKnown(t *testing.T) {
	for id, cs := range compositions() {
		if !slices.ContainsFunc(Processes(), func(p *Process) bool { return p.ID == id }) {
			t.Errorf("there is no process %s", id)
		}
		for _, c := range cs {
			for _, x := range c.Portions {
				got := x.role()
				if got != x.Role && x.Role != RoleOther && !strings.Contains(x.Item.Item, "juice concentrate") {
					t.Errorf("%s: %s is read as %s, its role is %s", id, x.Item.Item, got, x.Role)
				}
				if x.Role == RoleLowAcid && x.Class.Produce.Name == "" {
					t.Errorf("%s: %s is no known food", id, x.Item.Item)
				}
			}
		}
	}
}
