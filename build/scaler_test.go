package build

import (
	"strings"
	"testing"

	"stillroom/build/amount"
	"stillroom/content"
)

func TestScalerTakesProduce(t *testing.T) {
	for _, c := range []struct{ produce, line, have, units string }{
		{"tomatoes", "22 lb tomatoes, ripe", "22 lb", "lb oz kg g"},
		{"plums", "5 cups pitted damson plums, from about 2½ lb", "5/2 lb;5 cup", "lb oz kg g cup quart"},
		{"sweet corn", "12 ears sweet corn", "12 ear/ears", "ear lb oz kg g cup quart"},
		{"tomatoes", "2 lb onions", "", ""},
		{"tomatoes", "tomatoes, to taste", "", ""},
	} {
		r := &content.Recipe{
			Produce:     []content.Field[string]{{V: c.produce}},
			Ingredients: []content.Group{{Items: []content.Ingredient{content.ParseIngredient(c.line)}}},
		}
		s := scaler(r, amount.Lines(r))
		have, _, _ := strings.Cut(s.Have, "|")
		var units []string
		for _, u := range s.Units {
			units = append(units, u.Value)
		}
		if got := strings.Join(units, " "); have != c.have || got != c.units {
			t.Errorf("%s of %s: %q in %q, want %q in %q", c.line, c.produce, have, got, c.have, c.units)
		}
	}
}

func TestWeightNotes(t *testing.T) {
	r := &content.Recipe{Ingredients: []content.Group{{Items: []content.Ingredient{
		content.ParseIngredient("2 cups sugar"),
		content.ParseIngredient("2 cups (380 g) brown sugar, packed"), // the recipe's own weight needs no source
		content.ParseIngredient("2 lb plums"),                         // nor does what is weighed
	}}}}
	notes := weightNotes(amount.Lines(r))
	if len(notes) != 1 || notes[0].Item != "sugar" || !strings.HasPrefix(notes[0].Source, "USDA National Nutrient Database") {
		t.Errorf("got %+v", notes)
	}
}

// The jelly point is for what sets by its own pectin.
func TestPoints(t *testing.T) {
	for _, c := range []struct {
		kind, line string
		want       string // how it begins
	}{
		{"jelly", "4 cups sugar", "0 211.95 219.95;1000 210.13 218.13;"},
		{"jelly", "1 box powdered pectin", ""},
		{"pickle", "4 cups sugar", ""},
	} {
		r := &content.Recipe{
			Kind:        content.Field[content.Kind]{V: content.Kind(c.kind)},
			Ingredients: []content.Group{{Items: []content.Ingredient{content.ParseIngredient(c.line)}}},
		}
		if got := points(r); !strings.HasPrefix(got, c.want) || (got == "") != (c.want == "") {
			t.Errorf("%s of %s: %q", c.kind, c.line, got)
		}
	}
}
