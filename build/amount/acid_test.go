package amount

import (
	"fmt"
	"math/big"
	"slices"
	"testing"

	"stillroom/content"
	"stillroom/validate"
)

// TestAcidHolds scales every canned recipe of the example, puts the rounded
// amounts into it as if its author had written them, and judges it again.
func TestAcidHolds(t *testing.T) {
	scaled, faults := 0, 0
	for _, c := range scaledRecipes(t) {
		scaled++
		if fs := errorsIn(c.recipe(Up, Down)); len(fs) > 0 {
			t.Errorf("%s: %v", c.name, fs)
		}
		// The other way round the check must fail now and then, or it sees nothing.
		faults += len(errorsIn(c.recipe(Down, Up)))
	}
	if scaled < 500 || faults < 10 {
		t.Errorf("%d scaled recipes; %d faults where acid is rounded down", scaled, faults)
	}
}

// A scaledRecipe is a recipe times a factor, in some measures.
type scaledRecipe struct {
	name   string
	r      *content.Recipe
	factor *big.Rat
	system System
}

func scaledRecipes(t *testing.T) []scaledRecipe {
	site, _, err := content.Read(content.Starter, nil)
	if err != nil {
		t.Fatal(err)
	}
	var all []scaledRecipe
	for _, r := range site.Recipes {
		if r.Withdrawn != nil {
			continue // nobody is to make it
		}
		for _, s := range Systems {
			for _, f := range []string{"1/4", "1/3", "1/2", "3/5", "2/3", "5/7", "3/4", "1", "8/7", "9/7", "13/9", "2", "3"} {
				all = append(all, scaledRecipe{fmt.Sprintf("%s times %s in %s", r.Slug, f, s), r, ratOf(t, f), s})
			}
		}
	}
	return all
}

// recipe gives the scaled recipe. Acid and what is low in acid are rounded to
// the given sides.
func (c scaledRecipe) recipe(acid, lowAcid Rounding) *content.Recipe {
	r := *c.r
	r.Yield.V.Low = new(big.Rat).Mul(r.Yield.V.Low, c.factor)
	r.Yield.V.High = new(big.Rat).Mul(r.Yield.V.High, c.factor)
	r.Ingredients = slices.Clone(r.Ingredients)
	for i := range r.Ingredients {
		r.Ingredients[i].Items = slices.Clone(r.Ingredients[i].Items)
		for j := range r.Ingredients[i].Items {
			in := &r.Ingredients[i].Items[j]
			a, ok := Of(c.r, *in)
			if !ok {
				continue
			}
			a.Round = [...]Rounding{Nearest, acid, lowAcid}[a.Round]
			if q, err := content.ParseQuantity(a.In(c.factor, c.system)); err == nil {
				in.Amount, in.Same = a.asVolume(q, in.Amount.Unit), nil
			}
		}
	}
	return &r
}

// asVolume turns the weight of what the recipe has by volume into a volume
// again, by which the rules judge it.
func (a Amount) asVolume(q content.Quantity, u content.Unit) content.Quantity {
	if q.Unit.Dimension() != content.WeightDim || u.Dimension() != content.VolumeDim || a.Grams == nil {
		return q
	}
	cup := func(n *big.Rat) *big.Rat { return new(big.Rat).Quo(in(n, q.Unit, content.Gram), a.Grams) }
	return content.Quantity{Low: cup(q.Low), High: cup(q.High), Unit: content.Cup, Text: q.Text}
}

func errorsIn(r *content.Recipe) []validate.Finding {
	rep, _, _ := validate.Check(&content.Site{FS: content.Starter, Recipes: []*content.Recipe{r}}, nil, content.Date{})
	return slices.DeleteFunc(rep.Findings, func(f validate.Finding) bool {
		return f.Severity != validate.Error || f.Rule == "picture-broken" || f.Rule == "missing-file" || f.Rule == "unknown-recipe"
	})
}
