package validate

import (
	"slices"
	"testing"

	"stillroom/content"
)

var contractKinds = []content.Kind{
	content.Jam, content.Jelly, content.Marmalade, content.Conserve, content.FruitButter, content.Syrup, content.Juice,
	content.Sauce, content.Salsa, content.Ketchup, content.Chutney, content.Relish, content.Pickle, content.Fruit,
	content.PieFilling, content.Tomato, content.Vegetable, content.Legume, content.Soup, content.Meat, content.Poultry,
	content.Fish, content.Ferment, content.Vinegar, content.Cordial, content.Other,
}

func TestEveryProcessHasItsFacts(t *testing.T) {
	known := map[string]bool{"any": true}
	for _, p := range AllProduce() {
		known[p.Name] = true
	}
	ids := map[string]bool{}
	for _, p := range Processes() {
		ids[p.ID] = true
		if len(p.Produce) == 0 || len(p.Kinds) == 0 || p.Basis == "" {
			t.Errorf("%s lacks produce, kinds or their basis: %+v", p.ID, p.Facts)
		}
		for _, name := range slices.Concat(p.Produce, p.Others) {
			if !known[name] {
				t.Errorf("%s: no produce is called %q", p.ID, name)
			}
		}
		for _, k := range p.Kinds {
			if !slices.Contains(contractKinds, k) {
				t.Errorf("%s: no kind is called %q", p.ID, k)
			}
		}
		switch p.Acidity {
		case Acid, Acidified, LowAcid:
		default:
			t.Errorf("%s is %v", p.ID, p.Acidity)
		}
	}
	for _, r := range readTable("process-facts.tsv") {
		if !ids[r.text("process")] {
			t.Errorf("%s: there is no process %s", r.place, r.text("process"))
		}
	}
}

// Boiling water is for acid and acidified food only.
func TestNoLowAcidFoodInBoilingWater(t *testing.T) {
	for _, p := range Processes() {
		if p.Method == content.BoilingWater && p.Acidity == LowAcid {
			t.Errorf("%s is low-acid", p.ID)
		}
		low := p.Method == content.PressureCanner && minPSI(p) >= LimitInt("altitude-weighted-0")
		if low != (p.Acidity == LowAcid) && p.Method == content.PressureCanner {
			t.Errorf("%s is %v, but its least pressure is %d psi", p.ID, p.Acidity, minPSI(p))
		}
	}
}

// minPSI is the least pressure of a process: 5 psi for acid foods, 10 for
// low-acid ones.
func minPSI(p *Process) int {
	least := 99
	for _, j := range p.Jars {
		for _, s := range j.Schedules {
			least = min(least, s.Bands[0].PSI)
		}
	}
	return least
}

func TestFactsLists(t *testing.T) {
	tests := []struct {
		id   string
		want []ItemKind
	}{
		{"spaghetti-sauce-no-meat-hot", []ItemKind{ItemFat}},
		{"marinated-peppers-raw", []ItemKind{ItemFat}},
		{"pickled-corn-relish", []ItemKind{ItemStarch}},
		{"pickled-green-tomato-relish", []ItemKind{ItemStarch}},
		{"apple-pie-filling-hot", []ItemKind{ItemModStarch}},
		{"lemon-curd", []ItemKind{ItemEgg, ItemButter}},
		{"spaghetti-sauce-meat-hot", nil},
		{"green-beans-raw", nil},
	}
	for _, tt := range tests {
		if p := anyProcess(t, tt.id); !slices.Equal(p.Lists, tt.want) {
			t.Errorf("%s lists %v, want %v", tt.id, p.Lists, tt.want)
		}
	}
}

func TestFactsName(t *testing.T) {
	tests := []struct {
		id, food string
		want     bool
	}{
		{"green-beans-raw", "wax beans", true},
		{"green-beans-raw", "peas", false},
		{"peaches-halved-hot", "peas", false}, // the New York cases of 2018: MMWR 68(10)
		{"peaches-halved-hot", "peaches", true},
		{"peaches-halved-hot", "white peaches", false},
		{"peaches-halved-hot", "nectarines", false},
		{"berries-whole-hot", "elderberries", false},
		{"berries-whole-hot", "raspberries", true},
		{"berry-jam-no-added-pectin", "elderberries", false},
		{"berry-jam-no-added-pectin", "blackberries", true},
		{"jam-no-added-pectin", "apricots", true},
		{"jam-no-added-pectin", "figs", false},
		{"jam-no-added-pectin", "ginger", true}, // beside the fruit
		{"jams-jellies-added-pectin", "jalapenos", false},
		{"peach-salsa-hot", "onions", true},
		{"peach-salsa-hot", "corn", false},
		{"soups", "carrots", true},
		{"mixed-vegetables", "carrots", true},
		{"fish-pint-raw", "tuna", false},
		{"chicken-rabbit-boneless-hot", "turkey", true},
	}
	for _, tt := range tests {
		food, ok := LookUpProduce(tt.food)
		if !ok {
			t.Errorf("%s is not known", tt.food)
		}
		if got := anyProcess(t, tt.id).names(food.Name); got != tt.want {
			t.Errorf("%s names %s: %v, want %v", tt.id, tt.food, got, tt.want)
		}
	}
}
