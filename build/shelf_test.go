package build

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

func TestVessel(t *testing.T) {
	canned := func(kind, jar string) string {
		return "kind: " + kind + "\nproduce: [x]\nkeeping:\n  - way: boiling-water\n    keeps: 1 year\n" +
			"    processing: [{jar: " + jar + ", altitude: {\"0-1,000 ft\": 10 min, \"above 1,000 ft\": 15 min}}]"
	}
	other := func(kind, way string) string {
		return "kind: " + kind + "\nproduce: [x]\nkeeping: [{way: " + way + ", keeps: 1 month}]"
	}
	for _, c := range []struct{ recipe, want string }{
		{canned("jam", "half-pint"), "small"},
		{canned("jam", "12-ounce"), "small"},
		{canned("jam", "250 ml"), "small"},
		{canned("pickle", "pint"), "pint"},
		{canned("pickle", "500 ml"), "pint"},
		{canned("pickle", "pint-and-a-half"), "pint"},
		{canned("tomato", "quart"), "quart"},
		{canned("tomato", "1 l"), "quart"},
		{canned("syrup", "pint"), "bottle"},
		{other("ferment", "fermenting"), "crock"},
		{other("jam", "freezer"), "tub"},
		{other("fruit", "drying"), "packet"},
		{other("jam", "refrigerator"), "small"}, // the jars of the yield
	} {
		if got := vessel(recipeOf(t, c.recipe)); got != c.want {
			t.Errorf("vessel of %q = %s, want %s", c.recipe, got, c.want)
		}
	}
}

// Every colour and every drawing that a page can ask for is in the theme.
func TestThemeHasEveryFillAndVessel(t *testing.T) {
	style := ""
	for _, f := range theme(t).Files {
		if f.Name == "style.css" {
			style = string(f.Data)
		}
	}
	for _, table := range []map[string]string{fills, map[string]string{"nothing known": fillOf("moondust")}} {
		for produce, f := range table {
			if !strings.Contains(style, ".c-"+f+"{") {
				t.Errorf("%s: the style has no fill %s", produce, f)
			}
		}
	}
	for kind, f := range kindFills {
		if !strings.Contains(style, ".c-"+f+"{") {
			t.Errorf("%s: the style has no fill %s", kind, f)
		}
	}
	for _, v := range []string{"small", "pint", "quart", "bottle", "crock", "tub", "packet"} {
		var b strings.Builder
		if err := theme(t).Write(&b, "missing", &MissingPage{Shell: Shell{Vessels: []string{v}}}); err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(b.String(), `<symbol id="v-`+v+`"`) {
			t.Errorf("there is no drawing of %s", v)
		}
		if !strings.Contains(style, ".v-"+v+"{") {
			t.Errorf("the style has no size for %s", v)
		}
	}
}

func TestEveryKindHasAName(t *testing.T) {
	seen := map[content.Kind]bool{}
	for _, n := range kindNames {
		if seen[n.kind] || n.one == "" || n.many == "" {
			t.Errorf("%+v", n)
		}
		seen[n.kind] = true
	}
	if len(seen) != 26 { // those of the contract
		t.Errorf("%d kinds have a name", len(seen))
	}
}

func TestLarder(t *testing.T) {
	recipe := func(i int, kind content.Kind, name string) *content.Recipe {
		r := &content.Recipe{Slug: fmt.Sprintf("r%d", i)}
		r.Kind.V, r.Name.V = kind, name
		return r
	}
	few := []*content.Recipe{
		recipe(1, content.Pickle, "Beets"), recipe(2, content.Jam, "Öl"), recipe(3, content.Jam, "apple"), recipe(4, content.Jam, "Zest"),
	}
	l := larder(shelved(few))
	if l.Close || l.Tabs || len(l.Shelves) != 2 || l.Shelves[0].Name != "Jams and preserves" {
		t.Fatalf("larder = %+v", l)
	}
	var names []string
	for _, j := range l.jars() {
		names = append(names, j.Name)
	}
	if got := strings.Join(names, " "); got != "apple Öl Zest Beets" {
		t.Errorf("in the order %s", got)
	}
	var many []*content.Recipe
	for i := range roomy + 1 {
		many = append(many, recipe(i, content.Jam, "Jam"))
	}
	if l := larder(many); !l.Close || !l.Tabs || len(l.Shelves) != 1 || len(l.Shelves[0].Jars) != roomy+1 {
		t.Errorf("%d recipes: close %v, tabs %v", len(many), l.Close, l.Tabs)
	}
}

func TestSeason(t *testing.T) {
	months := func(s ...time.Month) []time.Month { return s }
	for _, c := range []struct {
		recipe string
		want   []time.Month
	}{
		{"kind: jam\nproduce: [plums]\nseason: [sep, aug, september]\nkeeping: [{way: refrigerator, keeps: 1 week}]", months(8, 9)},
		{"kind: jam\nproduce: [asparagus, plums]\nkeeping: [{way: refrigerator, keeps: 1 week}]", months(4, 5, 6)},
		{"kind: jam\nproduce: [seville oranges]\nkeeping: [{way: refrigerator, keeps: 1 week}]", months(1, 2, 12)},
		{"kind: jam\nproduce: [damson]\nkeeping: [{way: refrigerator, keeps: 1 week}]", months(8, 9, 10)},
		{"kind: jam\nproduce: [kumquats]\nkeeping: [{way: refrigerator, keeps: 1 week}]", months(1, 2, 3, 4, 12)},
		{"kind: jam\nproduce: [blackberry]\nkeeping: [{way: refrigerator, keeps: 1 week}]", months(7, 8, 9)},
		{"kind: jam\nproduce: [moondust]\nkeeping: [{way: refrigerator, keeps: 1 week}]", nil},
	} {
		got := Season(recipeOf(t, c.recipe))
		if fmt.Sprint(got) != fmt.Sprint(c.want) {
			t.Errorf("season of %q = %v, want %v", c.recipe, got, c.want)
		}
	}
}

func TestFromStart(t *testing.T) {
	got := FromStart([]time.Month{time.January, time.February, time.November, time.December})
	if want := []time.Month{time.November, time.December, time.January, time.February}; !slices.Equal(got, want) {
		t.Errorf("a winter begins as %v, want %v", got, want)
	}
	year := Season(recipeOf(t, "kind: jam\nproduce: [onions]\nkeeping: [{way: refrigerator, keeps: 1 week}]\nseason: [jan, feb, mar, apr, may, jun, jul, aug, sep, oct, nov, dec]"))
	if got := FromStart(year); len(got) != 12 || got[0] != time.January {
		t.Errorf("a season of a whole year begins as %v", got)
	}
}

// Chicken has no season, but soup has one if its recipe says so.
func TestOnlyProduceRipens(t *testing.T) {
	for produce, want := range map[string]bool{"apples": true, "chicken": false, "eggs": false, "moondust": true} {
		if got := ripens(produce); got != want {
			t.Errorf("%s ripens: %v, want %v", produce, got, want)
		}
	}
}

// The home page names the produce of the month for which the site is built.
// What is scheduled ripens for nobody yet.
func TestRipe(t *testing.T) {
	e := editionOf(t, txtar.Parse([]byte(scheduled)))
	home := e.homePage()
	if home.Month != "September" || len(home.Ripe) != 1 || home.Ripe[0].Name != "Plums" || home.Ripe[0].Address != "/produce/plums/" {
		t.Errorf("in %s the home page names %v", home.Month, home.Ripe)
	}
	if ripe := e.monthPage(time.January).Ripe; len(ripe) > 0 {
		t.Errorf("in January %v is ripe", ripe)
	}
}
