package validate

import (
	"slices"
	"strings"
	"testing"

	"stillroom/content"
)

// TestTolerances makes the changes to tested recipes that authorities allow:
// Nevada Department of Agriculture, approved craft foods; University of
// Wisconsin Extension, Safe modifications to canning recipes, 2013; UC Master
// Food Preservers of the Central Sierra, Preserve it; Ask Extension 435085.
// Nothing of it may be refused or warned of.
func TestTolerances(t *testing.T) {
	tests := []struct {
		name, process string
		change        map[string]string // a line of the published recipe by its food, and what stands in its place; "" leaves it out
		add           []string
	}{
		{"fewer onions", "chile-salsa-hot", map[string]string{"onions": "8 oz onions"}, nil},
		{"no onions", "chile-salsa-hot", map[string]string{"onions": ""}, nil},
		{"sweet peppers for chiles", "chile-salsa-hot", map[string]string{"chile peppers": "2 lb green bell peppers"}, nil},
		{"two kinds of pepper", "chile-salsa-hot", map[string]string{"chile peppers": "1 lb jalapeños"}, []string{"1 lb red bell peppers"}},
		{"red onions for yellow", "chile-salsa-hot", map[string]string{"onions": "1 lb red onions"}, nil},
		{"more vinegar", "chile-salsa-hot", map[string]string{"vinegar": "1 1/2 cups vinegar (5%)"}, nil},
		{"bottled lime for vinegar", "chile-salsa-hot", map[string]string{"vinegar": "1 cup bottled lime juice"}, nil},
		{"no salt", "chile-salsa-hot", map[string]string{"salt": ""}, nil},
		{"no spice", "chile-salsa-hot", map[string]string{"black pepper": ""}, nil},
		{"half as much spice again", "chile-salsa-hot", map[string]string{"black pepper": "3/4 tsp black pepper"}, nil},
		{"another dried spice", "chile-salsa-hot", map[string]string{"black pepper": "1/2 tsp ground cumin"}, nil},
		{"tomato paste to thicken", "chile-salsa-hot", nil, []string{"1 cup tomato paste"}},
		{"a clove or two of garlic", "pickled-beets", nil, []string{"2 cloves garlic"}},
		{"a hot pepper", "dilled-beans-raw", nil, []string{"1 small hot pepper"}},
		{"no sugar", "pickled-beets", map[string]string{"sugar": ""}, nil},
		{"less water", "dilled-beans-raw", map[string]string{"water": "3 cups water"}, nil},
		{"less sugar in chutney", "cranberry-orange-chutney-hot", map[string]string{"white sugar": "1 cup white sugar"}, nil},
		{"no starch", "pickled-green-tomato-relish", map[string]string{"cornstarch": ""}, nil},
		{"no oil", "spaghetti-sauce-no-meat-hot", map[string]string{"vegetable oil": ""}, nil},
		{"no mushrooms", "spaghetti-sauce-no-meat-hot", map[string]string{"mushrooms": ""}, nil},
		{"peppers for celery", "spaghetti-sauce-no-meat-hot", map[string]string{"chopped celery": "1 cup chopped green peppers"}, nil},
		{"dried dill for fresh", "quick-fresh-pack-dill-pickles-raw", map[string]string{"fresh dill": "4 tbsp dried dill"}, nil},
	}
	for _, tt := range tests {
		p := anyProcess(t, tt.process)
		d, _ := compositionDraft(p, CompositionsOf(tt.process)[0])
		if tt.process == "quick-fresh-pack-dill-pickles-raw" {
			d.ingredients = slices.DeleteFunc(d.ingredients, func(s string) bool { return strings.Contains(s, "mustard") })
		}
		for food, line := range tt.change {
			i := slices.IndexFunc(d.ingredients, func(s string) bool {
				return content.ParseIngredient(s).Item == food || strings.HasSuffix(s, food) || strings.HasSuffix(s, food+" (5%)")
			})
			if i < 0 {
				t.Fatalf("%s: %s has no %s in %q", tt.name, tt.process, food, d.ingredients)
			}
			if line == "" {
				d.ingredients = slices.Delete(d.ingredients, i, i+1)
			} else {
				d.ingredients[i] = line
			}
		}
		d.ingredients = append(d.ingredients, tt.add...)
		if fs := aboutIngredients(d); len(fs) > 0 {
			t.Errorf("%s: %v\n%s", tt.name, fs, d.text())
		}
	}
}

// TestLooksWrongAndIsNot holds what a plain ban would refuse and a published
// process has. Each names where it stands.
func TestLooksWrongAndIsNot(t *testing.T) {
	tests := []struct {
		name, process string
		lines         []string
	}{
		{"oil in spaghetti sauce (Guide 3)", "spaghetti-sauce-no-meat-hot", []string{"30 lb tomatoes", "1/4 cup vegetable oil"}},
		{"oil on marinated peppers (Guide 6)", "marinated-peppers-raw", []string{"4 lb peppers", "1 cup bottled lemon juice", "2 cups vinegar (5%)", "1 cup olive oil"}},
		{"oil on halibut in quarts (Guide 5)", "fish-quart-raw", []string{"12 lb halibut", "1/4 cup olive oil"}},
		{"fish without liquid (Guide 5)", "fish-pint-raw", []string{"12 lb salmon", "2 tsp salt"}},
		{"smoked fish without liquid (Guide 5)", "smoked-fish", []string{"12 lb smoked salmon"}},
		{"flour in corn relish (Guide 6)", "pickled-corn-relish", []string{"10 cups corn kernels", "5 cups vinegar (5%)", "1/4 cup flour"}},
		{"corn starch in green tomato relish (Guide 6)", "pickled-green-tomato-relish", []string{"10 lb green tomatoes", "4 cups vinegar (5%)", "2 tbsp cornstarch"}},
		{"modified starch in pie filling (Guide 2)", "blueberry-pie-filling-hot", []string{"3 1/2 cups blueberries", "5/16 cup cook-type modified starch", "3 1/2 tsp bottled lemon juice"}},
		{"eggs and butter in lemon curd (national center)", "lemon-curd", []string{"1 cup bottled lemon juice", "4 eggs", "7 egg yolks", "3/4 cup butter", "2 1/2 cups sugar"}},
		{"a little butter against foam (Guide 7)", "strawberry-jam-powdered-pectin", []string{"5 1/2 cups crushed strawberries", "8 cups sugar", "1 box powdered pectin", "1/2 tsp butter"}},
		{"lime for bread-and-butter pickles (Guide 6)", "quick-sweet-pickles-raw", []string{"8 lb pickling cucumbers", "3 1/2 cups vinegar (5%)", "1 cup pickling lime"}},
		{"suet in mincemeat (Guide 2)", "mincemeat-pie-filling", []string{"4 lb ground beef", "2 cups suet", "5 quarts chopped apples"}},
		{"a salsa with less juice than the Georgia ratio (Guide 3)", "chile-salsa-hot", []string{"5 lb tomatoes", "2 lb chile peppers", "1 lb onions", "1 cup vinegar (5%)"}},
		{"vegetables in a soup (Guide 4)", "soups", []string{"4 lb carrots", "2 lb beef", "1 lb onions"}},
	}
	for _, tt := range tests {
		p := anyProcess(t, tt.process)
		d := processDrafts(p)[0]
		d.ingredients = tt.lines
		if fs := aboutIngredients(d); len(fs) > 0 {
			t.Errorf("%s: %v\n%s", tt.name, fs, d.text())
		}
	}
}
