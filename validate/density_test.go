package validate

import (
	"strings"
	"testing"
)

func TestGramsPerCup(t *testing.T) {
	tests := []struct{ item, want string }{ // an empty want is none
		{"sugar", "200"},
		{"granulated sugar", "200"},
		{"white sugar", "200"},
		{"packed brown sugar", "220"},
		{"brown sugar", ""}, // packed or loose?
		{"powdered sugar", ""},
		{"powdered sugar, sifted", "100"},
		{"honey", "339"},
		{"light corn syrup", "341"},
		{"water", "237"},
		{"vinegar", "239"},
		{"apple cider vinegar", "239"},
		{"white vinegar (5%)", "238"},
		{"bottled lemon juice", "244"},
		{"lemon juice", "244"},
		{"salt", ""}, // flake or fine?
		{"table salt", "292"},
		{"canning salt", "288"},
		{"pickling salt", "288"},
		{"kosher salt", ""}, // its two styles differ by three quarters
		{"strawberries", "144"},
		{"strawberries, sliced", "166"},
		{"pitted sour cherries", "155"},
		{"blackberries", "144"},
		{"crushed blackberries", ""}, // no gaps between them
		{"crushed tomatoes", "242"},
		{"apple cider", ""}, // no apple
		{"apple juice", "248"},
		{"red beet juice", ""},
		{"damson plums, sliced", "165"},
		{"apples, sliced and peeled", "110"},
		{"dried apples", "86"},
		{"chopped onions", "160"},
		{"sliced onions", "115"},
		{"onions", ""}, // chopped or sliced?
		{"chopped green onions", "100"},
		{"onion powder", "110"},
		{"shredded cabbage", "70"},
		{"diced celery", "101"},
		{"celery seed", "104"},
		{"tomato paste", "262"},
		{"tomatoes, chopped", "180"},
		{"raisins", "145"},
		{"packed raisins", "165"},
		{"butter", "227"},
		{"butter beans", ""},
		{"peanut butter", ""},
		{"cornstarch", "128"},
		{"olive oil", "216"},
		{"kidney beans, dry", "184"},
		{"kidney beans", ""}, // dry or cooked?
		{"moon dust", ""},
		{"", ""},
	}
	for _, tt := range tests {
		g, source, ok := GramsPerCup(tt.item)
		if ratText(g) != tt.want || ok != (tt.want != "") {
			t.Errorf("GramsPerCup(%q) = %s, %v, want %s", tt.item, ratText(g), ok, tt.want)
		}
		if ok && source.Title == "" {
			t.Errorf("GramsPerCup(%q) names no source", tt.item)
		}
	}
}

// A row that its own words do not find is of no use.
func TestEveryWeightIsFound(t *testing.T) {
	for _, d := range Densities() {
		base, kind, _ := strings.Cut(d.Food, ", ")
		item := kind + " " + base + ", " + d.Form
		if headOf(item) != d.is || d.fits(wordsOf(item)) == 0 {
			t.Errorf("%q does not fit its own row", item)
		}
		if d.Grams.Sign() <= 0 {
			t.Errorf("a cup of %s weighs %s g", item, d.Grams)
		}
	}
}
