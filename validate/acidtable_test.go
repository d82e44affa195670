package validate

import (
	"fmt"
	"math/big"
	"strings"
	"testing"

	"stillroom/content"
)

func TestAcidFor(t *testing.T) {
	tests := []struct {
		id   string
		want AcidOrigin
	}{
		{"tomatoes-crushed-hot", AcidInEachJar},
		{"tomatillos-whole-hot", AcidInEachJar},
		{"figs-hot", AcidInEachJar},
		{"asian-pears-hot", AcidInEachJar},
		{"peaches-halved-hot", AcidFromFood},
		{"berry-jam-no-added-pectin", AcidFromFood},
		{"jam-no-added-pectin", AcidForTaste},
		{"peach-jam-powdered-pectin", AcidForTaste},
		{"apple-butter-hot", AcidForTaste},
		{"pear-apple-jam", AcidFromRecipe},
		{"golden-pepper-jelly", AcidFromRecipe},
		{"tomato-salsa-paste-tomatoes-hot", AcidFromRecipe},
		{"pickled-beets", AcidFromRecipe},
		{"cantaloupe-pickles-no-sugar-hot", AcidFromRecipe},
		{"sauerkraut-raw", AcidFromFermenting},
		{"spaghetti-sauce-meat-hot", AcidNotNeeded},
		{"green-beans-raw", AcidNotNeeded},
		{"pickled-eggs", AcidAndCold},
	}
	for _, tt := range tests {
		if got := AcidFor(anyProcess(t, tt.id)).Origin; got != tt.want {
			t.Errorf("the acid of %s is %q, want %q", tt.id, got, tt.want)
		}
	}
}

// An acidified food whose acid nobody knows could not be judged.
func TestEveryAcidifiedFoodHasItsAcid(t *testing.T) {
	for _, p := range Processes() {
		n := AcidFor(p)
		switch n.Origin {
		case AcidInEachJar, AcidFromRecipe:
			if len(n.Choices) == 0 {
				t.Errorf("%s: no acid is listed", p.ID)
			}
		case AcidFromFermenting, AcidAndCold:
		case AcidNotNeeded:
			if p.Method != content.PressureCanner {
				t.Errorf("%s: no acid without pressure", p.ID)
			}
		case AcidFromFood, AcidForTaste:
			if p.Acidity != Acid {
				t.Errorf("%s is %v, and its acid is only %s", p.ID, p.Acidity, n.Origin)
			}
		default:
			t.Errorf("%s: acid %q", p.ID, n.Origin)
		}
		checkChoices(t, p, n)
	}
}

func checkChoices(t *testing.T, p *Process, n AcidNeed) {
	for _, c := range n.Choices {
		if len(c.Doses) == 0 || c.Source.Title == "" || c.Evidence == "" {
			t.Errorf("%s: a choice of acid lacks something: %+v", p.ID, c)
		}
		if n.Origin == AcidInEachJar && (c.Per != "jar" || len(c.Doses) != 1) {
			t.Errorf("%s: %+v is no dose for a jar", p.ID, c)
		}
		if c.Low != nil && (c.Low.Sign() <= 0 || c.High.Cmp(c.Low) < 0) {
			t.Errorf("%s: a batch fills %v to %v jars", p.ID, c.Low, c.High)
		}
		for _, d := range c.Doses {
			if _, ok := LemonJuice(d.Kind, d.Amount, d.Unit); !ok && d.Amount != nil {
				t.Errorf("%s: %+v cannot be compared", p.ID, d)
			}
		}
	}
}

// USDA Complete Guide to Home Canning, Guide 3: 2 tablespoons of bottled lemon
// juice or 1/2 teaspoon of citric acid to a quart of tomatoes, half of it to a
// pint; or 4 tablespoons of vinegar to a quart.
func TestAcidForJar(t *testing.T) {
	tests := []struct{ id, jar, want string }{
		{"tomatoes-crushed-hot", "quart", "2 tbsp citrus-juice, 1/2 tsp citric-acid, 4 tbsp vinegar"},
		{"tomatoes-crushed-hot", "pint", "1 tbsp citrus-juice, 1/4 tsp citric-acid, 2 tbsp vinegar"},
		{"tomatoes-crushed-hot", "half-pint", "1 tbsp citrus-juice, 1/4 tsp citric-acid, 2 tbsp vinegar"},
		{"tomatoes-crushed-hot", "pint-and-a-half", "2 tbsp citrus-juice, 1/2 tsp citric-acid, 4 tbsp vinegar"},
		{"tomatoes-crushed-hot", "half-gallon", ""},
		{"tomatillos-whole-hot", "pint", "1 tbsp citrus-juice, 1/4 tsp citric-acid, 4 tbsp vinegar"}, // no pint figure is printed
		{"figs-hot", "pint", "1 tbsp citrus-juice, 1/4 tsp citric-acid"},
		{"asian-pears-hot", "quart", "2 tbsp citrus-juice"},
		{"pickled-beets", "pint", ""}, // its acid is the recipe's
		{"tomatoes-crushed-hot", "no such jar", ""},
	}
	for _, tt := range tests {
		var got []string
		for _, c := range AcidFor(anyProcess(t, tt.id)).ForJar(tt.jar) {
			d := c.Doses[0]
			got = append(got, fmt.Sprintf("%s %s %s", d.Amount.RatString(), d.Unit, d.Kind))
		}
		if s := strings.Join(got, ", "); s != tt.want {
			t.Errorf("%s in a %s: %s, want %s", tt.id, tt.jar, s, tt.want)
		}
	}
}

// The three acids of a jar of tomatoes are one and the same in lemon juice.
func TestAcidsAreEqual(t *testing.T) {
	for _, jar := range []string{"pint", "quart"} {
		for _, c := range AcidFor(anyProcess(t, "tomato-juice-hot")).ForJar(jar) {
			if least, most := c.PerPint(); least.RatString() != "1" || most.RatString() != "1" {
				t.Errorf("%s, %s: %v to %v tablespoons of lemon juice to a pint, want 1", jar, c.Doses[0].Kind, least, most)
			}
		}
	}
}

func TestAcidPerPint(t *testing.T) {
	tests := []struct{ id, least, most string }{
		// 2 cups are 32 tablespoons of juice, on 7 to 9 pints.
		{"tomato-tomato-paste-salsa-hot", "32/9", "32/7"},
		// 1 cup of vinegar does as much as 8 tablespoons of juice, on 6 to 8 pints.
		{"chile-salsa-hot", "1", "4/3"},
		// 1 cup of juice and half a cup of vinegar make 20, on 7 quarts.
		{"green-tomato-pie-filling-hot", "10/7", "10/7"},
		// 1 cup of juice, 2 cups of vinegar make 32, on 9 half-pints.
		{"marinated-peppers-raw", "64/9", "64/9"},
		{"cantaloupe-pickles-no-sugar-hot", "", ""},
		{"jam-no-added-pectin", "", ""},
	}
	for _, tt := range tests {
		least, most := AcidFor(anyProcess(t, tt.id)).Choices[0].PerPint()
		if ratText(least) != tt.least || ratText(most) != tt.most {
			t.Errorf("%s: %s to %s to a pint, want %s to %s", tt.id, ratText(least), ratText(most), tt.least, tt.most)
		}
	}
}

func ratText(r *big.Rat) string {
	if r == nil {
		return ""
	}
	return r.RatString()
}

// The guide lets bottled lemon or lime juice stand for the vinegar of some
// salsas, and never the reverse.
func TestLemonForVinegar(t *testing.T) {
	for id, want := range map[string]bool{
		"chile-salsa-hot": true, "tomato-salsa-slicing-tomatoes-hot": true, "tomato-taco-sauce-hot": true,
		"tomato-salsa-paste-tomatoes-hot": false, "tomatillo-green-salsa-hot": false, "pickled-beets": false,
	} {
		if got := AcidFor(anyProcess(t, id)).LemonForVinegar; got != want {
			t.Errorf("lemon juice for vinegar in %s: %v, want %v", id, got, want)
		}
	}
}

func TestLemonJuice(t *testing.T) {
	tests := []struct {
		kind   ItemKind
		amount *big.Rat
		unit   content.Unit
		want   string // empty for none
	}{
		{ItemCitrusJuice, big.NewRat(1, 4), content.Cup, "4"},
		{ItemVinegar, big.NewRat(1, 1), content.Cup, "8"},
		{ItemCitricAcid, big.NewRat(1, 2), content.Teaspoon, "2"},
		{ItemCitricAcid, big.NewRat(2, 1), content.Gram, ""},
		{ItemAscorbicAcid, big.NewRat(1, 1), content.Teaspoon, ""},
		{ItemVinegar, nil, content.Cup, ""},
	}
	for _, tt := range tests {
		got, ok := LemonJuice(tt.kind, tt.amount, tt.unit)
		if ratText(got) != tt.want || ok != (tt.want != "") {
			t.Errorf("LemonJuice(%s, %v, %s) = %s, %v, want %s", tt.kind, tt.amount, tt.unit, ratText(got), ok, tt.want)
		}
	}
}

// Every process and every jar that the table of acids names is a known one.
func TestAcidRowsNameProcesses(t *testing.T) {
	ids := map[string]bool{}
	for _, p := range Processes() {
		ids[p.ID] = true
	}
	for _, r := range readTable("acid.tsv") {
		for _, id := range r.list("processes") {
			if !ids[id] {
				t.Errorf("%s: there is no process %s", r.place, id)
			}
		}
		if jar := r.text("jar"); jar != "" && JarOunces(jar) == nil {
			t.Errorf("%s: there is no jar %s", r.place, jar)
		}
	}
}
