package validate

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"stillroom/content"
)

func TestNoticesOn(t *testing.T) {
	jam := content.Jam
	tests := []struct {
		say  string
		c    Case
		want string // IDs
	}{
		{"elderberries by the row that still names them",
			Case{Food: "elderberry", Way: content.BoilingWater, Kind: content.Fruit, Process: "berries-whole-hot"}, "elderberry"},
		{"elderberries in a pressure canner",
			Case{Food: "elderberry", Way: content.PressureCanner, Process: "berries-whole-hot"}, "elderberry"},
		{"elderberries in the freezer", Case{Food: "elderberry", Way: content.Freezer}, ""},
		{"blackberries", Case{Food: "blackberry", Way: content.BoilingWater, Kind: jam}, ""},
		{"peaches of no colour", Case{Food: "peach", Said: "peaches, halved", Way: content.BoilingWater}, "flesh-unsaid"},
		{"yellow peaches", Case{Food: "peach", Said: "Yellow peaches", Way: content.BoilingWater}, ""},
		{"white-fleshed ones", Case{Food: "peach", Said: "peaches (white-fleshed)", Way: content.BoilingWater}, "white-flesh-said"},
		{"white wine is no flesh", Case{Food: "peach", Said: "peaches in white wine", Way: content.BoilingWater}, "flesh-unsaid"},
		{"white peaches by name", Case{Food: "white peach", Way: content.AtmosphericSteam}, "white-flesh"},
		{"pumpkin cubes", Case{Food: "pumpkin", Said: "pumpkin, in 1 in cubes", Way: content.PressureCanner, Kind: content.Vegetable}, ""},
		{"pumpkin butter", Case{Food: "pumpkin", Said: "pumpkin", Way: content.BoilingWater, Kind: content.FruitButter}, "pumpkin-mash"},
		{"pumpkin purée", Case{Food: "pumpkin", Said: "pumpkin purée", Way: content.PressureCanner, Kind: content.Vegetable}, "pumpkin-mash"},
		{"frozen pumpkin purée", Case{Food: "pumpkin", Said: "pumpkin purée", Way: content.Freezer}, ""},
		{"zucchini as such", Case{Food: "summer squash", Way: content.PressureCanner, Process: "pumpkin-winter-squash-cubed"}, "summer-squash-plain"},
		{"zucchini pickles", Case{Food: "summer squash", Way: content.BoilingWater, Process: "pickled-bread-and-butter-zucchini"}, ""},
		{"banana butter", Case{Food: "banana", Way: content.BoilingWater, Kind: content.FruitButter}, "puree-of-sweet-fruit"},
		{"bananas by the puree process", Case{Food: "banana", Said: "bananas", Way: content.BoilingWater, Kind: content.Fruit, Process: "fruit-purees-hot"}, "puree-process-not-for"},
		{"figs by their own process", Case{Food: "fig", Way: content.BoilingWater, Process: "figs-hot"}, ""},
		{"mango sauce", Case{Food: "mango", Way: content.BoilingWater, Kind: content.Sauce, Process: "mango-sauce-hot"}, ""},
		{"mango salsa of mango", Case{Food: "mango", Said: "mangoes", Way: content.BoilingWater, Kind: content.Salsa, Process: "mango-salsa-hot"}, "mango-ripeness"},
		{"mango salsa of hard mango", Case{Food: "mango", Said: "hard mangoes", Way: content.BoilingWater, Kind: content.Salsa, Process: "mango-salsa-hot"}, ""},
		{"frost-killed tomatoes", Case{Food: "tomato", Said: "tomatoes, frost-killed", Way: content.BoilingWater}, "dead-vine-tomato"},
		{"onions beside lime", Case{Food: "onion", Way: content.BoilingWater, Items: []ItemKind{ItemVinegar, ItemPicklingLime}}, "lime-onion-squash"},
		{"onions without", Case{Food: "onion", Way: content.BoilingWater, Items: []ItemKind{ItemVinegar}}, ""},
		{"wild mushrooms", Case{Food: "wild mushroom", Way: content.PressureCanner, Process: "mushrooms"}, "wild-mushroom"},
		{"frosted rhubarb, even frozen", Case{Food: "rhubarb", Said: "frosted rhubarb", Way: content.Freezer}, "frosted-rhubarb"},
	}
	for _, tt := range tests {
		var got []string
		for _, n := range NoticesOn(tt.c) {
			got = append(got, n.ID)
		}
		if s := strings.Join(got, " "); s != tt.want {
			t.Errorf("%s: %q, want %q", tt.say, s, tt.want)
		}
	}
}

func TestNoticesAreComplete(t *testing.T) {
	foods := map[string]bool{}
	for _, p := range AllProduce() {
		foods[p.Name] = true
	}
	ids := map[string]bool{}
	for _, p := range Processes() {
		ids[p.ID] = true
	}
	for i, n := range Notices() {
		if i > 0 && n.ID <= Notices()[i-1].ID {
			t.Errorf("%s comes after %s", n.ID, Notices()[i-1].ID)
		}
		if n.Says == "" || n.Instead == "" || n.Source.Title == "" || len(n.Foods) == 0 {
			t.Errorf("%s lacks something: %+v", n.ID, n)
		}
		if n.Asks && len(n.Unless) == 0 {
			t.Errorf("%s asks for what cannot be said", n.ID)
		}
		for _, f := range n.Foods {
			if !foods[f] {
				t.Errorf("%s: no produce is called %q", n.ID, f)
			}
		}
		for _, id := range slices.Concat(n.Only, n.Except) {
			if !ids[id] {
				t.Errorf("%s: there is no process %s", n.ID, id)
			}
		}
		for _, k := range n.Kinds {
			if !slices.Contains(contractKinds, k) {
				t.Errorf("%s: no kind is called %q", n.ID, k)
			}
		}
	}
}

func ExampleNoticesOn() {
	for _, n := range NoticesOn(Case{Food: "elderberry", Way: content.BoilingWater, Process: "berries-whole-hot"}) {
		fmt.Println(n.Date, n.Says)
	}
	// Output: 2020-06-29 elderberries are low-acid or close to it, and no process for other berries is safe for them
}
