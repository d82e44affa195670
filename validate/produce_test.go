package validate

import (
	"fmt"
	"slices"
	"testing"
	"time"
)

func TestLookUpProduce(t *testing.T) {
	tests := []struct{ words, want string }{ // an empty want is no produce
		// As a recipe's list of produce says it.
		{"plum", "plum"}, {"plums", "plum"}, {"damson", "plum"}, {"damsons", "plum"}, {"damson plums", "plum"},
		{"strawberries", "strawberry"}, {"Blackberries", "blackberry"}, {"black currants", "currant"},
		{"cherries", "cherry"}, {"sour cherry", "cherry"}, {"peaches", "peach"}, {"yellow peaches", "peach"},
		{"white peaches", "white peach"}, {"white-fleshed nectarines", "white nectarine"},
		{"asian pears", "asian pear"}, {"crab apples", "crab apple"}, {"crabapple", "crab apple"},
		{"pears", "pear"}, {"prickly pears", "prickly pear"}, {"pineapple", "pineapple"}, {"apple", "apple"},
		{"elderberries", "elderberry"}, {"elderflowers", "elderflower"}, {"rhubarb", "rhubarb"},
		{"tomatoes", "tomato"}, {"cherry tomatoes", "tomato"}, {"green tomatoes", "green tomato"},
		{"tomatillos", "tomatillo"}, {"husk tomatoes", "tomatillo"}, {"mangoes", "mango"}, {"mangos", ""},
		{"potatoes", "potato"}, {"sweet potatoes", "sweet potato"}, {"courgettes", "summer squash"},
		{"zucchini", "summer squash"}, {"butternut squash", "winter squash"}, {"squash", "squash"},
		{"spaghetti squash", "winter squash"}, {"pumpkin", "pumpkin"}, {"leeks", "leek"}, {"chard", "chard"},
		{"green beans", "green bean"}, {"wax beans", "green bean"}, {"lima beans", "lima bean"},
		{"butter beans", "lima bean"}, {"beans", "bean"}, {"kidney beans", "dried bean"}, {"chickpeas", "chickpea"},
		{"peas", "pea"}, {"sugar snap peas", "edible-pod pea"}, {"black-eyed peas", "black-eyed pea"},
		{"split peas", "dried pea"}, {"mushrooms", "mushroom"}, {"chanterelles", "wild mushroom"},
		{"shiitake", "specialty mushroom"}, {"salmon", "salmon"}, {"chicken", "chicken"}, {"geese", "goose"},
		{"beef", "beef"}, {"eggs", "egg"}, {"cucumbers", "cucumber"}, {"gherkins", "cucumber"},
		{"peppers", "pepper"}, {"bell peppers", "bell pepper"}, {"jalapenos", "jalapeno"},
		{"jalapeño peppers", "jalapeno"}, {"chillies", "hot pepper"}, {"chiles", "hot pepper"},
		{"banana peppers", "banana pepper"}, {"bananas", "banana"}, {"watermelon rind", "watermelon rind"},
		{"watermelon", "watermelon"}, {"water chestnuts", "water chestnut"}, {"chestnuts", "chestnut"},
		{"corn", "corn"}, {"sweetcorn", "corn"}, {"cabbage", "cabbage"}, {"sauerkraut", ""},
		{"brussels sprouts", "brussels sprout"}, {"mixed vegetables", "mixed vegetables"},
		{"grapes", "grape"}, {"concord grapes", "grape"}, {"grapefruit", "grapefruit"}, {"limes", "lime"},
		{"oranges", "orange"}, {"seville oranges", "orange"}, {"cranberries", "cranberry"}, {"garlic", "garlic"},
		{"onions", "onion"}, {"pearl onions", "pearl onion"}, {"spring onions", "green onion"},
		{"beets", "beet"}, {"beetroot", "beet"}, {"beet greens", "beet greens"}, {"celery root", "celeriac"},
		// As the item of an ingredient says it.
		{"damson plums, halved", "plum"},
		{"finely chopped onions", "onion"},
		{"onion, finely chopped, with its skin", "onion"},
		{"large red bell peppers, seeded and sliced", "bell pepper"},
		{"chopped sweet red peppers", "bell pepper"},
		{"red or green peppers", "bell pepper"},
		{"fresh green chiles, roasted and peeled", "hot pepper"},
		{"long green chiles", "hot pepper"},
		{"crushed ripe tomatoes with their juice", "tomato"},
		{"peeled, cored, chopped slicing tomatoes", "tomato"},
		{"tomatoes in juice", "tomato"},
		{"canned whole tomatoes", "tomato"},
		{"Roma tomatoes (about 20)", "tomato"},
		{"sliced green tomatoes", "green tomato"},
		{"firm, hard green tomatoes", "green tomato"},
		{"sliced peeled firm-ripe peaches", "peach"},
		{"pitted sour cherries", "cherry"},
		{"apples or pears", "apple"},
		{"apples and pears", "apple"},
		{"peeled cooking apples, such as russets", "apple"},
		{"frozen raspberries, thawed", "raspberry"},
		{"fresh or frozen cranberries", "cranberry"},
		{"cranberries/raspberries", "cranberry"},
		{"cloves of garlic, peeled", "garlic"},
		{"garlic cloves", "garlic"},
		{"head garlic", "garlic"},
		{"peeled garlic", "garlic"},
		{"piece of ginger, grated", "ginger"},
		{"fresh ginger root", "ginger"},
		{"ears of corn", "corn"},
		{"corn on the cob", "corn"},
		{"whole kernel corn", "corn"},
		{"cream-style corn", "corn"},
		{"carrot sticks", "carrot"},
		{"thinly sliced carrots", "carrot"},
		{"celery, diced", "celery"},
		{"ribs celery", "celery"},
		{"shredded cabbage, packed", "cabbage"},
		{"cabbage leaves", "cabbage"},
		{"spinach leaves", "spinach"},
		{"cauliflower florets", "cauliflower"},
		{"4-inch pickling cucumbers", "cucumber"},
		{"pumpkin puree", "pumpkin"},
		{"purée of pumpkin", "pumpkin"},
		{"cubed pumpkin or winter squash", "pumpkin"},
		{"shelled peas", "pea"},
		{"snap beans, trimmed", "green bean"},
		{"beans, green", "bean"},
		{"dried navy beans, soaked overnight", "dried bean"},
		{"small white onions", "onion"},
		{"stewing beef, cubed", "beef"},
		{"skinless chicken thighs", "chicken"},
		{"ground pork", "pork"},
		{"hard-cooked eggs, shelled", "egg"},
		{"lemons, thinly sliced", "lemon"},
		{"seedless raisins", "raisin"},
		{"chopped walnuts", "walnut"},
		{"fresh dill heads", "dill"},
		{"sprigs of dill", "dill"},
		{"fresh mint leaves", "mint"},
		{"chopped cilantro", "cilantro"},
		{"horseradish root, peeled", "horseradish"},
		{"orange juice", "orange"},
		{"unsweetened apple juice", "apple"},
		{"fresh apple cider", "apple"},
		{"carrot juice", "carrot"},
		{"seeds of 1 pomegranate", "pomegranate"},
		// What is made of a food and is that food no longer, and what sounds
		// like one.
		{"tomato paste", ""}, {"tomato ketchup", ""}, {"tomato sauce", ""}, {"onion powder", ""},
		{"garlic powder", ""}, {"granulated garlic", ""}, {"dried minced onion", ""}, {"garlic salt", ""},
		{"celery salt", ""}, {"celery seed", ""}, {"mustard seed", ""}, {"mustard seeds", ""},
		{"coriander seeds", ""}, {"dill seed", ""}, {"fennel seeds", ""}, {"pepper", ""}, {"black pepper", ""},
		{"freshly ground pepper", ""}, {"peppercorns", ""}, {"cayenne pepper", ""}, {"ground cayenne", ""},
		{"crushed red pepper flakes", ""}, {"chili powder", ""}, {"paprika", ""}, {"lemon zest", ""},
		{"orange peel", ""}, {"grated rind of 1 lemon", ""}, {"lemon juice", ""}, {"bottled lime juice", ""},
		{"apple cider vinegar", ""}, {"raspberry vinegar", ""}, {"red wine vinegar", ""}, {"grape leaves", ""},
		{"bay leaves", ""}, {"cherry leaves", ""}, {"grapeseed oil", ""}, {"grape seed oil", ""},
		{"corn syrup", ""}, {"corn starch", ""}, {"cornmeal", ""}, {"corn oil", ""}, {"potato starch", ""},
		{"rice flour", ""}, {"chickpea flour", ""}, {"apple pectin", ""}, {"apple butter", ""},
		{"peanut butter", ""}, {"butter", ""}, {"cocoa butter", ""}, {"vanilla bean", ""}, {"coffee beans", ""},
		{"whole cloves", ""}, {"cloves", ""}, {"cinnamon sticks", ""}, {"beef stock", ""}, {"chicken broth", ""},
		{"vegetable stock", ""}, {"vegetable oil", ""}, {"olive oil", ""}, {"coconut milk", ""},
		{"soy sauce", ""}, {"fish sauce", ""}, {"oyster sauce", ""}, {"prepared mustard", ""},
		{"dijon mustard", ""}, {"prepared horseradish", ""}, {"cream of tartar", ""}, {"rose water", ""},
		{"cherry brandy", ""}, {"orange liqueur", ""}, {"plum wine", ""}, {"ginger ale", ""},
		{"ground ginger", ""}, {"dried dill", ""}, {"spaghetti", ""}, {"egg noodles", ""}, {"sugar", ""},
		{"canning or pickling salt", ""}, {"water", ""}, {"ice water", ""}, {"pickle relish", ""},
		{"strawberry gelatin", ""}, {"lemon extract", ""}, {"almond extract", ""}, {"mystery", ""}, {"", ""},
	}
	for _, tt := range tests {
		p, ok := LookUpProduce(tt.words)
		if p.Name != tt.want || ok != (tt.want != "") {
			t.Errorf("LookUpProduce(%q) = %q, %v, want %q", tt.words, p.Name, ok, tt.want)
		}
	}
	if len(tests) < 150 {
		t.Errorf("%d texts, want 150 or more", len(tests))
	}
}

func TestProduceAcidity(t *testing.T) {
	tests := []struct {
		name string
		want Acidity
	}{
		{"damson", Acid}, {"apple", Acid}, {"strawberries", Acid}, {"lemon", Acid}, {"rhubarb", Acid},
		{"blackberries", Acid}, // listed up to pH 4.5
		{"tomato", Borderline}, // 4.3 to 4.9
		{"persimmon", Borderline}, {"banana", Borderline}, {"pimientos", Borderline},
		{"elderberries", Borderline}, {"white peaches", Borderline}, {"asian pears", Borderline},
		{"peaches", Acid},
		{"figs", LowAcid}, {"papaya", LowAcid}, {"watermelon", LowAcid}, {"dates", LowAcid},
		{"onions", LowAcid}, {"bell peppers", LowAcid}, {"garlic", LowAcid}, {"green beans", LowAcid},
		{"mushrooms", LowAcid}, {"carrots", LowAcid}, {"eggplant", LowAcid}, {"cucumbers", LowAcid},
		{"beef", LowAcid}, {"salmon", LowAcid}, {"eggs", LowAcid}, {"milk", LowAcid},
		{"quail", LowAcid}, {"medlars", UnknownAcidity},
	}
	for _, tt := range tests {
		if p, _ := LookUpProduce(tt.name); p.Acidity != tt.want {
			t.Errorf("%s is %v, want %v", tt.name, p.Acidity, tt.want)
		}
	}
}

// A vegetable, a meat or a fish that came out acid would be let into boiling
// water.
func TestOnlyFruitIsAcid(t *testing.T) {
	sour := []string{"green tomato", "yogurt"}
	for _, p := range AllProduce() {
		if p.Acidity == Acid && !p.Group.Fruit() && !slices.Contains(sour, p.Name) {
			t.Errorf("%s (%s) is acid", p.Name, p.Group)
		}
		switch p.Group {
		case Vegetables, Peppers, Greens, Legumes, Mushrooms, Meats, Poultries, Fishes, Shellfish:
			if p.Acidity == UnknownAcidity && p.Name != "sorrel" {
				t.Errorf("the acidity of %s is not known", p.Name)
			}
		}
	}
}

func TestProduceIsInOrder(t *testing.T) {
	groups := map[Group]bool{
		Berry: true, StoneFruit: true, PomeFruit: true, Citrus: true, Fruits: true, Melon: true, TomatoLike: true,
		Vegetables: true, Peppers: true, Greens: true, Legumes: true, Mushrooms: true, Herbs: true, Aromatics: true,
		Nuts: true, Meats: true, Poultries: true, Fishes: true, Shellfish: true, Eggs: true, Dairies: true,
	}
	all := AllProduce()
	for i, p := range all {
		if i > 0 && p.Name <= all[i-1].Name {
			t.Errorf("%s comes after %s", p.Name, all[i-1].Name)
		}
		if !groups[p.Group] || p.Plural == "" {
			t.Errorf("%s: group %q, plural %q", p.Name, p.Group, p.Plural)
		}
		if p.Acidity != UnknownAcidity && len(p.PH) == 0 && p.Basis == "" {
			t.Errorf("%s is %v on no basis", p.Name, p.Acidity)
		}
	}
}

func TestProduceSeason(t *testing.T) {
	tests := []struct {
		name string
		want []time.Month
	}{
		{"strawberry", []time.Month{time.May, time.June, time.July}},
		{"lemon", []time.Month{time.January, time.February, time.March, time.April, time.November, time.December}},
		{"beef", nil},
	}
	for _, tt := range tests {
		if p, _ := LookUpProduce(tt.name); !slices.Equal(p.Season, tt.want) {
			t.Errorf("season of %s = %v, want %v", tt.name, p.Season, tt.want)
		}
	}
}

func TestProduceBlanching(t *testing.T) {
	p, _ := LookUpProduce("green beans")
	if len(p.Blanch) != 1 || p.Blanch[0].Low.RatString() != "3" || p.Blanch[0].Source.Title == "" {
		t.Errorf("green beans are blanched %+v, want 3 min", p.Blanch)
	}
	p, _ = LookUpProduce("asparagus")
	if len(p.Blanch) != 3 || p.Blanch[2].Form != "large" || p.Blanch[2].High.RatString() != "4" {
		t.Errorf("asparagus is blanched %+v, want 2, 3 and 4 min", p.Blanch)
	}
	for _, none := range []string{"onion", "strawberry", "tomato"} {
		if p, _ := LookUpProduce(none); len(p.Blanch) > 0 {
			t.Errorf("%s is blanched %+v, want not", none, p.Blanch)
		}
	}
}

// Every blanching time of the table of the National Center belongs to a food.
func TestBlanchingTimesAreTaken(t *testing.T) {
	taken := map[string]bool{
		"blanch-water": true, "blanch-altitude": true, // hold for all
		"blanch-onions-until-center-heated": true, // rings for frying; chopped onions need none
	}
	for _, r := range readTable("produce.tsv") {
		for _, id := range r.list("blanch") {
			id, _, _ = cutForm(id)
			taken[id] = true
		}
	}
	for _, l := range Limits() {
		if len(l.ID) > 7 && l.ID[:7] == "blanch-" && !taken[l.ID] && !olderBlanching(l.ID) {
			t.Errorf("%s belongs to no produce", l.ID)
		}
	}
}

func olderBlanching(id string) bool { return len(id) > 16 && id[:16] == "blanch-illinois-" }

func BenchmarkLookUpProduce(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		LookUpProduce("finely chopped red bell peppers, seeded")
	}
}

func BenchmarkLoadProduce(b *testing.B) {
	for b.Loop() {
		loadKitchen()
	}
}

// A food is looked for once for each ingredient: it has to be cheap.
func TestLookUpProduceIsCheap(t *testing.T) {
	if n := testing.AllocsPerRun(10, func() { LookUpProduce("finely chopped red bell peppers, seeded") }); n > 0 {
		t.Errorf("a look-up takes %v pieces of memory, want none", n)
	}
}

func ExampleLookUpProduce() {
	for _, words := range []string{"damson plums, halved", "apple cider vinegar"} {
		p, ok := LookUpProduce(words)
		fmt.Printf("%s: %q %v %v\n", words, p.Name, ok, p.Acidity)
	}
	// Output:
	// damson plums, halved: "plum" true acid
	// apple cider vinegar: "" false unknown
}
