package content

import (
	"fmt"
	"testing"
)

func TestParseAcid(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{"natural", "natural"},
		{"Natural", "natural"},
		{"in-recipe", "in recipe"},
		{"in recipe", "in recipe"},
		{"2 tbsp bottled lemon juice per quart", "amount 2 tbsp | item bottled lemon juice | per quart"},
		{"1 tbsp bottled lemon juice per pint jar", "amount 1 tbsp | item bottled lemon juice | per pint"},
		{"1/4 tsp citric acid per pint", "amount 1/4 tsp | item citric acid | per pint"},
		{"¼ tsp citric acid per half-pint", "amount 1/4 tsp | item citric acid | per half-pint"},
		{"1 tbsp lemon juice, bottled, per 500 ml jar", "amount 1 tbsp | item lemon juice | note bottled | per 500 ml"},
		{"4 tbsp vinegar (5%) per quart", "amount 4 tbsp | item vinegar | note 5% | per quart"},
	} {
		a, err := ParseAcid(tt.text)
		if err != nil {
			t.Errorf("ParseAcid(%q): %v", tt.text, err)
			continue
		}
		if got := acidOf(a); got != tt.want {
			t.Errorf("ParseAcid(%q) = %s, want %s", tt.text, got, tt.want)
		}
	}
}

// acidOf writes down an acid.
func acidOf(a Acid) string {
	switch a.Source {
	case AcidNatural:
		return "natural"
	case AcidInRecipe:
		return "in recipe"
	case AcidPerJar:
		return fmt.Sprintf("%s | per %s", readingOf(a.Added), a.Per)
	}
	return "none"
}

func TestParseAcidRefuses(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{"", "nothing is written: write natural, in-recipe, or what goes into each jar, as in 2 tbsp bottled lemon juice per quart"},
		{"lemon juice", `"lemon juice" cannot be read: write natural, in-recipe, or what goes into each jar, as in 2 tbsp bottled lemon juice per quart`},
		{"naturel", `"naturel" cannot be read: did you mean natural?`},
		{"2 tbsp bottled lemon juice", `"2 tbsp bottled lemon juice" cannot be read: the size of the jar comes last, as in 2 tbsp bottled lemon juice per quart`},
		{"lemon juice per quart", `"lemon juice per quart" cannot be read: an exact amount comes first, as in 2 tbsp bottled lemon juice per quart`},
		{"some lemon juice per quart", `"some lemon juice per quart" cannot be read: an exact amount comes first, as in 2 tbsp bottled lemon juice per quart`},
		{"2 tbps lemon juice per quart", `"2 tbps lemon juice per quart" cannot be read: an exact amount comes first, as in 2 tbsp bottled lemon juice per quart`},
		{"1-2 tbsp lemon juice per quart", `"1-2 tbsp lemon juice per quart" cannot be read: write one amount that goes into each jar, not a range`},
		{"2 tbsp lemon juice or 1/2 tsp citric acid per quart", `"2 tbsp lemon juice or 1/2 tsp citric aci…" cannot be read: name one acid, not a choice of two`},
		{"2 tbsp lemon juice per qart", `there is no jar "qart": did you mean quart?`},
	} {
		a, err := ParseAcid(tt.text)
		if err == nil || err.Error() != tt.want {
			t.Errorf("ParseAcid(%q): %v\nwant %s", tt.text, err, tt.want)
		}
		if a.Source != NoAcid {
			t.Errorf("ParseAcid(%q) = %s beside its error", tt.text, acidOf(a))
		}
	}
}
