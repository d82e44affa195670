package amount

import (
	"slices"
	"testing"

	"stillroom/content"
)

// mentioned gives the words of the amounts that are found in some steps.
func mentioned(r *content.Recipe, steps ...string) []string {
	var all []string
	for n, ms := range InSteps(r, Lines(r), steps) {
		for _, m := range ms {
			all = append(all, steps[n][m.Start:m.End])
		}
	}
	return all
}

func recipeOf(lines ...string) *content.Recipe {
	var g content.Group
	for _, l := range lines {
		g.Items = append(g.Items, content.ParseIngredient(l))
	}
	return &content.Recipe{Ingredients: []content.Group{g}}
}

func TestInSteps(t *testing.T) {
	r := recipeOf("4 cups 5% white vinegar", "4½ cups (900 g) sugar", "½ cup water", "8 heads fresh dill",
		"14 tablespoons bottled lemon juice", "5 lb green cabbage", "2 cups cider vinegar", "12 eggs")
	for _, c := range []struct {
		steps []string
		want  []string
	}{
		// The listed amount, with its ingredient.
		{[]string{"Put it in the pot with the ½ cup of water. Heat it."}, []string{"½ cup"}},
		{[]string{"Pour 4 cups white vinegar over 8 heads of dill."}, []string{"4 cups", "8 heads"}},
		{[]string{"Stir in 900 g of the sugar."}, []string{"900 g"}},
		{[]string{"Boil 12 eggs."}, []string{"12"}},
		{[]string{"Shred the green cabbage. Weigh out 5 pounds."}, []string{"5 pounds"}},
		{[]string{"Boil the 2 cups of cider vinegar, then the 4 cups of white vinegar."}, []string{"2 cups", "4 cups"}},

		// Parts of it.
		{[]string{"Add 2 cups sugar.", "Add 2½ cups sugar."}, []string{"2 cups", "2½ cups"}},
		{[]string{"Add 1 cup of the sugar, and later the rest."}, []string{"1 cup"}},

		// What goes into each jar is the same in any batch.
		{[]string{"Put 2 tablespoons of bottled lemon juice into each hot quart jar, or 1 tablespoon into each pint."}, nil},
		{[]string{"Add 14 tablespoons bottled lemon juice per quart."}, nil},
		{[]string{"Take out a jar and drain it. Put in 1 head of dill, and the beans."}, nil},

		// Neither are times, temperatures, headspace, jars, altitudes and what is not listed.
		{[]string{"Boil for 10 minutes at 220 °F, leave ½ inch of headspace in 4 pint jars, 15 minutes above 1,000 feet."}, nil},
		{[]string{"Cover with 2 inches of ice."}, nil},
		{[]string{"Add 3 cups sugar."}, nil}, // of 4½: what becomes of the rest is not said
		{[]string{"Add 1½ cups of water."}, nil},
		{[]string{"Weigh out 5 pounds."}, nil}, // of what?
	} {
		if got := mentioned(r, c.steps...); !slices.Equal(got, c.want) {
			t.Errorf("%q: %q, want %q", c.steps, got, c.want)
		}
	}
}

// What is made on the way, or was left out of the list, grows with the batch;
// what a jar, a pan, a canner or a glass holds does not, nor does half of a
// proportion.
func TestInStepsOfUnlisted(t *testing.T) {
	r := recipeOf("5 lb crab apples", "4 cups sugar", "¼ cup bottled lemon juice")
	for _, c := range []struct {
		step string
		want []string
	}{
		{"Return 4 cups of juice to the pan and stir in the 4 cups of sugar.", []string{"4 cups", "4 cups"}},
		{"You should have about 1.5 l of the strained apple juice.", []string{"1.5 l"}},
		{"Cover them with 6 cups of cold water.", []string{"6 cups"}},
		{"Add 1 cup of raisins.", []string{"1 cup"}},
		{"Measure 4 cups of juice and the ¼ cup of lemon juice.", []string{"4 cups", "¼ cup"}},

		{"Add ¾ cup of sugar for each cup of juice.", nil},
		{"For 4 cups of juice use 3 cups of sugar.", nil},
		{"Allow 2 cups of juice to the pound of fruit.", nil},
		{"Stir 2 tablespoons of the syrup into soda water.", nil},
		{"Pour 1 quart of juice into a hot quart jar.", nil},
		{"Ladle it into 4 pint jars.", nil},
		{"Boil no more than 6 cups of juice at a time.", nil},
		{"Put 3 quarts of water into the canner.", nil},
		{"Heat 1 cup of water and read the thermometer.", nil},
		{"Weigh it down with a 5 lb stone.", nil},
		{"Simmer the juice in a 4 quart pan for 10 minutes.", nil},
		{"Add 3 cups of sugar.", nil}, // of 4: what becomes of the rest is not said
		{"Add 2 tablespoons of the lemon juice.", []string{"2 tablespoons"}},
	} {
		if got := mentioned(r, c.step); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.step, got, c.want)
		}
	}
}

// The ingredient lends its mention all that must be known to write it.
func TestMentionIsOfItsIngredient(t *testing.T) {
	r := recipeOf("4 cups 5% white vinegar")
	ms := InSteps(r, Lines(r), []string{"Boil the 4 cups of white vinegar."})
	if len(ms[0]) != 1 || ms[0][0].Amount.Data() != "4 cup|238|+q" {
		t.Errorf("found %v", ms)
	}
}

func TestInNote(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"5 cups pitted damson plums, from about 2½ lb", "2½ lb"},
		{"12 ears sweet corn, about 9 lb in the husk", "9 lb"},
		{"1 teaspoon ascorbic acid powder, in 1 gallon of cold water", "1 gallon"},
		{"6 lb pickling cucumbers, 4 to 5 inches long", ""},
		{"14 tablespoons bottled lemon juice, 2 tablespoons to each quart jar", ""},
		{"9 g salt, ½ teaspoon per pint", ""},
		{"2 lb chuck, cut in cubes", ""},
	} {
		i := content.ParseIngredient(c.line)
		got := ""
		for _, m := range InNote(i) {
			got += i.Note[m.Start:m.End]
		}
		if got != c.want {
			t.Errorf("%s: %q, want %q", c.line, got, c.want)
		}
	}
}
