package validate

import (
	"fmt"
	"regexp"
	"slices"
	"testing"
)

func TestClassifyItem(t *testing.T) {
	tests := []struct {
		item, note string
		want       string // kind, variety, strength or form
	}{
		{"cider vinegar", "5 % acidity", "vinegar cider 5"},
		{"apple cider vinegar (5% acidity)", "", "vinegar cider 5"},
		{"vinegar (5 percent)", "", "vinegar  5"},
		{"5-percent white vinegar", "", "vinegar white 5"},
		{"white distilled vinegar", "", "vinegar white "},
		{"white wine vinegar", "6 per cent", "vinegar wine 6"},
		{"distilled white vinegar, 50 grain", "", "vinegar white 5"},
		{"vinegar", "4-6 % acid", "vinegar  4"},
		{"vinegar", "between 4 and 6 percent", "vinegar  6"}, // the first of them is no share as written
		{"vinegar", "4.5%", "vinegar  9/2"},
		{"vinegar", "diluted with 50 % water", "vinegar  "},
		{"malt vinegar", "", "vinegar malt "},
		{"rice vinegar", "4.3 % acetic acid", "vinegar rice 43/10"},
		{"homemade apple vinegar", "", "vinegar cider  home-made"},
		{"kombucha vinegar", "", "vinegar kombucha  home-made"},
		{"raspberry vinegar", "", "vinegar fruit "},
		{"white or cider vinegar", "5%", "vinegar cider 5"},

		{"bottled lemon juice", "", "citrus-juice lemon bottled"},
		{"lemon juice", "bottled", "citrus-juice lemon bottled"},
		{"lemon juice", "", "citrus-juice lemon "},
		{"lemon juice, freshly squeezed", "", "citrus-juice lemon fresh"},
		{"fresh lime juice", "", "citrus-juice lime fresh"},
		{"bottled lemon or lime juice", "", "citrus-juice lemon or lime bottled"},
		{"lemon juice", "bottled or fresh", "citrus-juice lemon "},
		{"lemon juice", "fresh, not bottled", "citrus-juice lemon fresh"},
		{"lemon juice", "bottled, not fresh", "citrus-juice lemon bottled"},
		{"juice of 2 lemons", "", "citrus-juice lemon fresh"},
		{"juice of 1 lime", "", "citrus-juice lime fresh"},
		{"the juice of half a lemon", "", "citrus-juice lemon fresh"},
		{"lemons", "juiced", "citrus-juice lemon fresh"},
		{"lemons", "thinly sliced", "fruit lemon"},
		{"zest of 2 lemons", "", "peel"},
		{"orange juice", "", "fruit orange"},

		{"citric acid", "", "citric-acid"},
		{"ascorbic acid", "", "ascorbic-acid"},
		{"vitamin C tablets, crushed", "", "ascorbic-acid"},
		{"aspirin tablets", "", "acid-tablet"},
		{"tomato canning tablets", "", "acid-tablet"},
		{"cream of tartar", "", "acid-other"},

		{"canning salt", "", "salt pickling"},
		{"canning or pickling salt", "", "salt pickling"},
		{"salt", "pickling", "salt pickling"},
		{"non-iodized salt", "", "salt pickling"},
		{"kosher salt", "", "salt flake"},
		{"coarse kosher salt", "", "salt flake"},
		{"salt", "flaky", "salt flake"},
		{"table salt", "", "salt table"},
		{"iodised salt", "", "salt table"},
		{"salt (iodized)", "", "salt table"},
		{"fine sea salt", "", "salt sea"},
		{"salt", "", "salt"},
		{"salt and pepper", "to taste", "salt"},
		{"celery salt", "", "spice"},
		{"salt substitute", "", "salt-substitute"},
		{"potassium chloride", "", "salt-substitute"},
		{"pink curing salt", "", "salt curing"},

		{"sugar", "", "sugar white"},
		{"packed brown sugar", "", "sugar brown"},
		{"granulated sugar", "", "sugar white"},
		{"honey", "", "sugar honey"},
		{"light corn syrup", "", "sugar syrup"},
		{"gelling sugar", "", "sugar gelling"},
		{"stevia", "", "sweetener"},
		{"sucralose", "", "sweetener"},
		{"powdered pectin", "", "pectin powdered"},
		{"package powdered fruit pectin", "", "pectin powdered"},
		{"liquid pectin", "3 oz pouch", "pectin liquid"},
		{"low- or no-sugar pectin", "", "pectin low-sugar"},
		{"pectin", "", "pectin"},
		{"unflavored gelatin", "", "gelatin"},
		{"strawberry gelatin", "", "gelatin"},

		{"all-purpose flour", "", "starch"},
		{"cornstarch", "", "starch"},
		{"corn starch", "", "starch"},
		{"cook-type modified starch", "", "modified-starch"},
		{"clear gel starch", "cook type", "modified-starch"},
		{"elbow macaroni", "", "pasta"},
		{"egg noodles", "", "pasta"},
		{"pearl barley", "", "grain"},
		{"long-grain white rice", "", "grain"},
		{"rice vinegar", "", "vinegar rice "},
		{"whole milk", "", "dairy milk"},
		{"heavy cream", "", "dairy cream"},
		{"grated Parmesan cheese", "", "dairy cheese"},
		{"unsalted butter", "", "butter"},
		{"butter beans", "", "legume lima bean"},
		{"peanut butter", "", "prepared"},
		{"coconut milk", "", "prepared"},
		{"olive oil", "", "fat"},
		{"olive or salad oil", "", "fat"},
		{"lard", "", "fat"},
		{"egg yolks", "", "egg egg"},
		{"eggplant", "", "vegetable eggplant"},

		{"pickling lime", "", "pickling-lime"},
		{"food-grade lime (calcium hydroxide)", "", "pickling-lime"},
		{"lime", "calcium hydroxide", "pickling-lime"},
		{"limes", "", "fruit lime"},
		{"alum", "", "alum"},
		{"calcium chloride", "", "crisping-salt"},
		{"whey", "", "culture"},
		{"water", "", "water"},
		{"boiling water", "", "water"},
		{"chicken stock", "", "stock"},
		{"red wine", "", "alcohol"},
		{"cherry brandy", "", "alcohol"},

		{"mustard seed", "", "spice"},
		{"dry mustard", "", "spice"},
		{"Dijon mustard", "", "prepared"},
		{"mustard greens", "", "vegetable mustard greens"},
		{"dried oregano", "", "spice"},
		{"oregano", "dried", "spice"},
		{"fresh oregano", "", "herb oregano"},
		{"dill heads", "", "herb dill"},
		{"dill seed", "", "spice"},
		{"black peppercorns", "", "spice"},
		{"dried hot red peppers", "", "spice"},
		{"hot red peppers", "", "vegetable hot pepper"},
		{"ground ginger", "", "spice"},
		{"fresh ginger, grated", "", "vegetable ginger"},
		{"orange zest", "", "peel"},
		{"tomato paste", "", "prepared"},
		{"soy sauce", "", "prepared"},
		{"walnuts, chopped", "", "nut walnut"},
		{"garlic cloves", "", "garlic garlic"},
		{"cloves", "", "spice"},
		{"onions", "", "vegetable onion"},
		{"kidney beans", "cooked", "legume dried bean"},
		{"button mushrooms", "", "mushroom mushroom"},
		{"chicken thighs", "", "meat chicken"},
		{"salmon fillets", "", "meat salmon"},
		{"blackberries", "", "fruit blackberry"},
		{"2 x 400 g tins", "tomatoes", "vegetable tomato"}, // the food stands in the note
		{"something nobody knows", "", ""},
	}
	for _, tt := range tests {
		if got := ClassifyItem(tt.item, tt.note).describe(); got != tt.want {
			t.Errorf("ClassifyItem(%q, %q) = %q, want %q", tt.item, tt.note, got, tt.want)
		}
	}
}

func (c ItemClass) describe() string {
	s := string(c.Kind)
	add := func(word string) {
		if word != "" {
			s += " " + word
		}
	}
	add(c.Produce.Name)
	add(c.Variety)
	switch c.Kind {
	case ItemVinegar:
		if c.Variety == "" {
			s += " "
		}
		s += " "
		if c.Strength != nil {
			s += c.Strength.RatString()
		}
	case ItemCitrusJuice:
		s += " " + string(c.Form)
	}
	if c.HomeMade {
		s += " home-made"
	}
	return s
}

// The kinds of the table are those of the code, each at least once.
func TestItemKinds(t *testing.T) {
	kinds := []ItemKind{
		ItemVinegar, ItemCitrusJuice, ItemCitricAcid, ItemAscorbicAcid, ItemAcidTablet, ItemAcidOther, ItemSalt,
		ItemSaltSubst, ItemSugar, ItemSweetener, ItemPectin, ItemGelatin, ItemStarch, ItemModStarch, ItemPasta,
		ItemGrain, ItemLeavening, ItemButter, ItemFat, ItemPicklingLime, ItemAlum, ItemCrisping, ItemPreservative, ItemCulture,
		ItemWater, ItemStock, ItemAlcohol, ItemSpice, ItemHerb, ItemPeel, ItemPrepared,
	}
	used := map[ItemKind]bool{}
	for _, r := range readTable("items.tsv") {
		kind := ItemKind(r.text("kind"))
		used[kind] = true
		if !slices.Contains(kinds, kind) {
			t.Errorf("%s: the code knows no kind %q", r.place, kind)
		}
	}
	for _, k := range kinds {
		if !used[k] {
			t.Errorf("no item is of kind %q", k)
		}
	}
}

// A classification leaves the tables as they were.
func TestClassifyItemKeepsNothing(t *testing.T) {
	first := ClassifyItem("vinegar, 50 grain", "").Strength
	ClassifyItem("vinegar, 60 grain", "")
	if first.RatString() != "5" {
		t.Errorf("the strength of the first became %s", first.RatString())
	}
}

func BenchmarkClassifyItem(b *testing.B) {
	for b.Loop() {
		ClassifyItem("white vinegar (5% acidity)", "divided")
	}
}

func ExampleClassifyItem() {
	c := ClassifyItem("cider vinegar", "5 % acidity")
	fmt.Println(c.Kind, c.Variety, c.Strength.RatString())
	// Output: vinegar cider 5
}

// TestSaysAny holds saysAny against a pattern that knows whole words.
func TestSaysAny(t *testing.T) {
	words := []string{"bread", "bread and butter", "home-made", "2 cloves", "juice of"}
	texts := []string{
		"", "bread", "breads", "sweetbread", "sweet-bread", "a bread", "bread2", "brioche, bread", "cornbread and bread and butter",
		"homemade", "home-made", "ahome-made", "12 cloves", "2 cloves", "juice", "juice of 2 lemons", "the juice off", "ébread", "bread\u00a0",
	}
	for _, text := range texts {
		for _, w := range words {
			want := regexp.MustCompile("(^|[^a-z])" + regexp.QuoteMeta(w) + "($|[^a-z])").MatchString(text)
			if got := saysAny(text, []string{"zest", w}); got != want {
				t.Errorf("%q says %q: %v, want %v", text, w, got, want)
			}
		}
	}
}
