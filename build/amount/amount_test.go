package amount

import (
	"math/big"
	"math/rand/v2"
	"regexp"
	"strings"
	"testing"

	"stillroom/content"
)

// recipe is one in which nothing ferments.
var recipe = &content.Recipe{}

// lineOf reads a line of ingredients.
func lineOf(t *testing.T, r *content.Recipe, line string) Amount {
	t.Helper()
	a, ok := Of(r, content.ParseIngredient(line))
	if !ok {
		t.Fatalf("%q has no amount", line)
	}
	return a
}

func ratOf(t *testing.T, s string) *big.Rat {
	t.Helper()
	n, ok := new(big.Rat).SetString(s)
	if !ok {
		t.Fatalf("%q is no number", s)
	}
	return n
}

// What a cup of something weighs is from food-density.tsv; all else is
// arithmetic with the units of NIST Handbook 44 (from memory), and rounding to
// what a kitchen can measure.
func TestIn(t *testing.T) {
	for _, c := range []struct {
		line, factor string
		system       System
		want         string
	}{
		// As written, unless something changes.
		{"4½ cups sugar", "1", Written, "4½ cups"},
		{"14 tablespoons oil", "1", US, "14 tablespoons"},
		{"400 g sugar", "1", Metric, "400 g"},

		// Cups and spoons, exact as long as a set of them can be.
		{"4½ cups sugar", "2", Written, "9 cups"},
		{"4½ cups sugar", "1/2", Written, "2 1/4 cups"},
		{"1/3 cup sugar", "1/2", Written, "2 tbsp + 2 tsp"},
		{"1/2 cup sugar", "1/3", Written, "2 tbsp + 2 tsp"},
		{"3/4 cup sugar", "1/2", Written, "3/8 cup"},
		{"1 cup sugar", "17/16", Written, "1 cup + 1 tbsp"},
		{"1 cup sugar", "1/3", Written, "1/3 cup"},
		{"2/3 cup sugar", "2", Written, "1 1/3 cups"},
		{"1 tablespoon sugar", "1/2", Written, "1 1/2 tsp"},
		{"1 tablespoon sugar", "4/3", Written, "1 tbsp + 1 tsp"},
		{"1½ tablespoons sugar", "1/2", Written, "2 1/4 tsp"},
		{"1 tsp sugar", "3", Written, "1 tbsp"},
		{"1 tbsp sugar", "16", Written, "1 cup"},
		{"1/4 tsp mace", "1/2", Written, "1/8 tsp"},
		{"1/8 tsp mace", "1/4", Written, "a pinch"},
		{"1 pinch mace", "2", Written, "2 pinches"},

		// Quarts are for what is poured, and for what was written so.
		{"4 cups water", "2", Written, "2 quarts"},
		{"4 cups sugar", "2", Written, "8 cups"},
		{"1 quart strawberries", "1/2", Written, "2 cups"},
		{"1 quart strawberries", "3", Written, "3 quarts"},
		{"1 gallon water", "2", Written, "2 gallons"},
		{"5¾ cups water", "3", Written, "17 1/4 cups"},

		// Weights.
		{"13½ lb apples", "1/2", Written, "6 3/4 lb"},
		{"1 lb apples", "1/2", Written, "8 oz"},
		{"1 lb apples", "4/3", Written, "1 lb 5 oz"},
		{"12 oz apples", "2", Written, "1 1/2 lb"},
		{"3.15 kg apples", "1/2", Written, "1.575 kg"},
		{"500 g apples", "2", Written, "1 kg"},
		{"100 g apples", "1/3", Written, "33 g"},
		{"950 ml juice", "2", Written, "1.9 l"},

		// Things that are counted.
		{"12 eggs", "1/2", Written, "6"},
		{"1 grapefruit", "1/3", Written, "1/3"},
		{"8 heads fresh dill", "1/8", Written, "1 head"},
		{"1 box powdered pectin", "2", Written, "2 boxes"},
		{"2 x 400 g tins chickpeas", "3", Written, "6 tins"},

		// Ranges.
		{"4-5 cups sugar", "2", Written, "8-10 cups"},
		{"1-2 cups sugar", "1/2", Written, "1/2 to 1 cup"},
		{"1-2 cups sugar", "1/8", Written, "2 tbsp to 1/4 cup"},

		// Acid up, low-acid food and water down, the rest to the nearest.
		{"1 cup white vinegar", "9/7", Written, "1 1/4 cups + 1 tbsp"},
		{"1 cup chopped onions", "9/7", Written, "1 1/4 cups"},
		{"1 cup water", "9/7", Written, "1 1/4 cups"},
		{"1 cup chopped onions", "99/100", Written, "7/8 cup + 1 tbsp"},
		{"1 cup sugar", "99/100", Written, "1 cup"},
		{"22 lb tomatoes", "9/7", Written, "28 1/2 lb"},
		{"1 cup white vinegar", "1", Metric, "240 ml"},
		{"1 cup water", "1", Metric, "235 ml"},

		// Other measures. Sugar 200 g a cup, canning salt 288 g.
		{"4½ cups sugar", "1", Metric, "900 g"},
		{"4½ cups sugar", "1", Weight, "900 g"},
		{"2 tablespoons sugar", "1", Metric, "30 ml"},
		{"2 tablespoons sugar", "1", Weight, "25 g"},
		{"400 g sugar", "1", US, "2 cups"},
		{"9 g canning salt", "1", US, "1 1/2 tsp"},
		{"22 lb plums", "1", Metric, "10 kg"},
		{"2 kg plums", "1", US, "4 lb 7 oz"},
		{"3 cups crushed blackberries", "1", Weight, "710 ml"}, // what a cup of them weighs is not known

		// What the author gives in other measures is taken before any conversion.
		{"8 cups sliced onions, about 3 lb", "2", Metric, "2.7 kg"},
		{"55 g canning salt (3 tablespoons)", "2", US, "3/8 cup"},
	} {
		if got := lineOf(t, recipe, c.line).In(ratOf(t, c.factor), c.system); got != c.want {
			t.Errorf("%s times %s in %s = %q, want %q", c.line, c.factor, c.system, got, c.want)
		}
	}
}

func TestAlso(t *testing.T) {
	for _, c := range []struct{ line, factor, want string }{
		{"4½ cups (900 g) sugar", "2", "1.8 kg"},
		{"8 cups sliced onions, about 3 lb", "1/2", "1 1/2 lb"},
		{"4½ cups sugar", "1", "900 g"},
		{"4 cups white vinegar", "1", "950 ml"},
		{"3.15 kg plums", "1", "6 lb 15 oz"},
		{"2 tablespoons sugar", "1", ""},
		{"8 heads dill", "1", ""},
	} {
		if got := lineOf(t, recipe, c.line).Also(ratOf(t, c.factor)); got != c.want {
			t.Errorf("%s times %s, also %q, want %q", c.line, c.factor, got, c.want)
		}
	}
}

// Salt carries the safety of a ferment.
func TestSaltOfAFerment(t *testing.T) {
	ferment := &content.Recipe{Keeping: []content.Keeping{{Way: content.Field[content.Way]{V: content.Fermenting}}}}
	half := big.NewRat(1, 2)
	for _, c := range []struct {
		r    *content.Recipe
		want string
	}{{recipe, "9 g"}, {ferment, "9.5 g"}} {
		if got := lineOf(t, c.r, "18.2 g canning salt").In(half, Written); got != c.want {
			t.Errorf("half of 18.2 g is %q, want %q", got, c.want)
		}
	}
}

// TestRounding reads what was written back, and compares it with the exact
// amount: to the right side, and never far away.
func TestRounding(t *testing.T) {
	d := rand.New(rand.NewPCG(3, 4))
	units := []content.Unit{"tsp", "tbsp", "cup", "quart", "oz", "lb", "g", "kg", "ml", "l", "head"}
	decimals := regexp.MustCompile(`\.\d* ?(cup|tsp|tbsp|quart|lb|oz)`)
	for range 30_000 {
		u := units[d.IntN(len(units))]
		n := big.NewRat(int64(d.IntN(4000)+1), int64(d.IntN(400)+1))
		a := Amount{Ways: []content.Quantity{{Low: n, High: n, Unit: u, Text: "?"}}, Round: Rounding(d.IntN(3)), Pours: d.IntN(2) == 0}
		system := Systems[d.IntN(3)]
		text := a.In(two, system)
		if decimals.MatchString(text) {
			t.Fatalf("%s %s doubled is %q", n, u, text)
		}
		if text == "a pinch" {
			continue
		}
		got, err := content.ParseQuantity(text)
		if err != nil {
			t.Fatalf("%s %s doubled is %q: %v", n, u, text, err)
		}
		exact := new(big.Rat).Mul(n, two)
		shown, ok := got.In(u)
		if !ok {
			t.Fatalf("%s %s doubled is %q", n, u, text)
		}
		off := new(big.Rat).Sub(shown.Low, exact)
		if a.Round == Up && off.Sign() < 0 || a.Round == Down && off.Sign() > 0 && !least(text) {
			t.Fatalf("%s %s, rounded %d, is %q", exact, u, a.Round, text)
		}
		if off.Abs(off); a.Round == Nearest && far(off, exact) && !small(exact, u) {
			t.Fatalf("%s %s is %q: off by over 1/16", exact, u, text)
		}
	}
}

// least reports whether an amount is the smallest that can be measured: what is
// not nothing is never shown as nothing.
func least(text string) bool {
	for _, s := range []string{"1/8 oz", "0.5 g", "0.25 ml", "1/4 head"} {
		if text == s {
			return true
		}
	}
	return false
}

func far(off, exact *big.Rat) bool {
	return off.Cmp(new(big.Rat).Quo(exact, big.NewRat(16, 1))) > 0
}

// small amounts cannot be measured so finely.
func small(n *big.Rat, u content.Unit) bool {
	if u == "head" {
		return n.Cmp(two) < 0
	}
	q := content.Quantity{Low: n, High: n, Unit: u}
	if ml, ok := q.In(content.Millilitre); ok {
		return ml.Low.Cmp(big.NewRat(10, 1)) < 0
	}
	g, _ := q.In(content.Gram)
	return g.Low.Cmp(big.NewRat(30, 1)) < 0
}

func TestData(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"4½ cups (900 g) sugar", "9/2 cup;900 g|200|s"},
		{"4 cups 5% white vinegar", "4 cup|238|+q"},
		{"6-8 heads fresh dill", "6..8 head/heads||-"},
		{"12 eggs", "12||-"},
		{"2 fl oz rum", "2 fl oz||q"},
	} {
		if got := lineOf(t, recipe, c.line).Data(); got != c.want && !strings.HasPrefix(got, c.want) {
			t.Errorf("%s: %q, want %q", c.line, got, c.want)
		}
	}
}

func TestNoAmount(t *testing.T) {
	for _, line := range []string{"salt, to taste", "boiling water, as needed", "crushed ice"} {
		if a, ok := Of(recipe, content.ParseIngredient(line)); ok {
			t.Errorf("%q asks for %v", line, a.Ways)
		}
	}
}
