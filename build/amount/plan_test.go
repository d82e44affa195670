package amount

import (
	"fmt"
	"math/big"
	"strings"
	"testing"

	"stillroom/content"
)

// read makes a recipe of front matter; what it leaves out is not needed here.
func read(t *testing.T, matter string) *content.Recipe {
	t.Helper()
	r, faults := content.ReadRecipe("content/recipes/x.md", []byte("---\nname: X\nsummary: x\nproduce: [plums]\ningredients: [2 lb plums]\n"+matter+"---\n1. Cook.\n"))
	for _, f := range faults {
		if f.Kind != content.MissingKey {
			t.Fatalf("%v: %s", f.Pos, f.Message)
		}
	}
	return r
}

const tomatoes = `kind: tomato
yield: 7 quart jars
times: {hands_on: 2 h, cooking: 1 h 45 min}
keeping:
  - way: boiling-water
    processing:
      - {jar: quart, altitude: {"0-1,000 ft": 45 min, "above 1,000 ft": 60 min}}
      - {jar: pint, altitude: {"0-1,000 ft": 35 min, "above 1,000 ft": 50 min}}
`

const jam = `kind: jam
yield: 2½ cups
times: {hands_on: 30 min, cooking: 30 min}
keeping:
  - {way: refrigerator, keeps: 3 weeks}
  - {way: boiling-water, factor: 3, processing: [{jar: half-pint, altitude: {"0-1,000 ft": 10 min}}]}
`

const onions = `kind: pickle
yield: 2 pints
scale: {smallest: 1/2, largest: 3}
keeping: [{way: refrigerator, keeps: 2 weeks}]
`

const salsa = `kind: salsa
yield: 6-8 pint jars
keeping: [{way: boiling-water, processing: [{jar: pint, altitude: {"0-1,000 ft": 15 min}}]}]
`

func TestPlan(t *testing.T) {
	for _, c := range []struct {
		recipe    string
		way       int
		batches   string
		jar       int
		minutes   int64
		pot, last string // what the ingredients are multiplied by
		want      string
	}{
		{tomatoes, 0, "1", 0, 0, "1", "0", "Amounts now for 7 quart jars: 1 batch. 1 canner load of up to 7 quart jars. About 3 h 45 min in the kitchen."},
		// The pot does not grow: two batches are cooked and canned one by one.
		{tomatoes, 0, "2", 0, 0, "1", "0", "Amounts now for 14 quart jars: 2 batches, each cooked and canned on its own. 2 canner loads of up to 7 quart jars. About 7 h 30 min in the kitchen."},
		{tomatoes, 0, "9/7", 0, 0, "1", "2/7", "Amounts now for 9 quart jars: 1 full batch and a smaller one, each cooked and canned on its own. 2 canner loads of up to 7 quart jars. About 7 h 30 min in the kitchen."},
		{tomatoes, 0, "1/2", 0, 0, "1/2", "0", "Amounts now for 3 1/2 quart jars: 1/2 batch. What does not fill a jar goes in the refrigerator. 1 canner load of up to 7 quart jars. About 3 h 45 min in the kitchen."},
		// 14 pints are two loads of the one batch: the second takes its 35 minutes more.
		{tomatoes, 0, "1", 1, 35, "1", "0", "Amounts now for 14 pint jars: 1 batch. 2 canner loads of up to 9 pint jars. About 4 h 20 min in the kitchen."},
		{tomatoes, 0, "1", 1, 0, "1", "0", "Amounts now for 14 pint jars: 1 batch. 2 canner loads of up to 9 pint jars. About 4 h 35 min in the kitchen."},
		// No more and no less than is offered.
		{tomatoes, 0, "9", 0, 0, "1", "0", "Amounts now for 28 quart jars: 4 batches, each cooked and canned on its own. This recipe is offered for 1/4 to 4 batches. 4 canner loads of up to 7 quart jars. About 15 h in the kitchen."},
		{onions, 0, "1/8", 0, 0, "1/2", "0", "Amounts now for 1 pint: 1/2 batch. This recipe is offered for 1/2 to 3 batches."},
		// What is neither canned nor has to set is made in one.
		{onions, 0, "3", 0, 0, "3", "0", "Amounts now for 6 pints: 3 times the recipe."},
		// Jam has to set, so that a larger pot will not do.
		{jam, 0, "2", 0, 0, "1", "0", "Amounts now for 5 cups: 2 batches, each cooked on its own. About 2 h in the kitchen."},
		// A way that is made from a larger batch.
		{jam, 1, "1", 0, 0, "3", "0", "Amounts now for 7 1/2 half-pint jars: 1 batch of 3 times the recipe. What does not fill a jar goes in the refrigerator. 1 canner load of up to 9 half-pint jars. About 1 h in the kitchen."},
		{salsa, 0, "1/2", 0, 0, "1/2", "0", "Amounts now for 3-4 pint jars: 1/2 batch. 1 canner load of up to 9 pint jars."},
	} {
		p := Makings(read(t, c.recipe))[c.way].Plan(ratOf(t, c.batches), c.jar, c.minutes)
		if got := strings.Join(p.Says(), " "); got != c.want {
			t.Errorf("%s batches:\n got %s\nwant %s", c.batches, got, c.want)
		}
		if p.Pot().RatString() != c.pot || p.Last().RatString() != c.last {
			t.Errorf("%s batches: pot %s, last %s, want %s, %s", c.batches, p.Pot().RatString(), p.Last().RatString(), c.pot, c.last)
		}
	}
}

// Jars on hand are never too few for what is made.
func TestForJars(t *testing.T) {
	m := Makings(read(t, salsa))[0]
	if got := m.ForJars(big.NewRat(4, 1), 0); got.RatString() != "1/2" {
		t.Errorf("4 jars of 6 to 8 are %s batches, want 1/2", got.RatString())
	}
}

// A canner takes as many jars as publications reckon with, or none are named.
func TestLoads(t *testing.T) {
	for _, c := range []struct {
		jar  string
		want int64
	}{{"quarter-pint", 9}, {"half-pint", 9}, {"pint", 9}, {"500 ml", 8}, {"pint-and-a-half", 7}, {"quart", 7}, {"1 l", 7}, {"half-gallon", 0}} {
		j, err := content.ParseJar(c.jar)
		if err != nil {
			t.Fatal(err)
		}
		if got := load(content.BoilingWater, j.Millilitres()); got != c.want {
			t.Errorf("a canner takes %d of %s, want %d", got, c.jar, c.want)
		}
		if got := load(content.Freezer, j.Millilitres()); got != 0 {
			t.Errorf("a freezer takes %d canner loads", got)
		}
	}
}

func ExampleMaking_Plan() {
	m := Making{Factor: one, Smallest: one, Largest: big.NewRat(4, 1), Apart: true, Canned: true,
		Jars: []Jar{{One: "quart jar", Many: "quart jars", Low: big.NewRat(7, 1), High: big.NewRat(7, 1), Load: 7}}}
	p := m.Plan(m.ForJars(big.NewRat(14, 1), 0), 0, 0)
	fmt.Println(p.Makes())
	fmt.Println(p.Pot().RatString(), "times the recipe in the pot,", p.Total().RatString(), "in the shop")
	// Output:
	// 14 quart jars
	// 1 times the recipe in the pot, 2 in the shop
}
