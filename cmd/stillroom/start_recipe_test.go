package main

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"stillroom/content"
	"stillroom/content/intake"
	"stillroom/validate"
)

// Whatever kind a recipe is of, and whatever process it follows, what is begun
// can be read, and as a draft it keeps nobody from publishing the rest.
func TestBlankRecipes(t *testing.T) {
	for _, k := range kindsOfRecipe {
		c := startCommand{Name: []string{"Plums"}, startFlags: startFlags{Kind: string(k)}}
		b := c.blank()
		if _, err := c.keeping(&b); err != nil {
			t.Errorf("%s: %v", k, err)
		}
		noErrors(t, string(k), b.Recipe())
	}
	for _, p := range validate.Processes() {
		c := startCommand{Name: []string{p.Food}, startFlags: startFlags{Process: p.ID, Way: string(p.Method)}}
		b := c.blank()
		if _, err := c.keeping(&b); err != nil {
			t.Errorf("%s: %v", p.ID, err)
		}
		noErrors(t, p.ID, filledBlank(&b, b.Recipe()))
	}
}

var kindsOfRecipe = []content.Kind{
	content.Jam, content.Jelly, content.Marmalade, content.Conserve, content.FruitButter, content.Syrup, content.Juice,
	content.Sauce, content.Salsa, content.Ketchup, content.Chutney, content.Relish, content.Pickle, content.Fruit,
	content.PieFilling, content.Tomato, content.Vegetable, content.Legume, content.Soup, content.Meat, content.Poultry,
	content.Fish, content.Ferment, content.Vinegar, content.Cordial, content.Other,
}

// noErrors checks a recipe that was just begun.
func noErrors(t *testing.T, what string, text intake.File) {
	t.Helper()
	r, faults := content.ReadRecipe(text.Path, text.Data)
	s := &content.Site{Recipes: []*content.Recipe{r}}
	s.Settings, _ = content.ReadSettings("content/site.yaml", []byte("name: Larder\nauthor: Ada\n"))
	rep, _, _ := validate.Check(s, faults, content.Date{Year: 2026, Month: time.November, Day: 28})
	for _, f := range rep.Findings {
		if f.Severity == validate.Error {
			t.Errorf("%s: %s: %s [%s]\n%s", what, f.Pos, f.Message, f.Rule, text.Data)
			return
		}
	}
}

// A begun recipe is whatever was typed, what its author fills in, and how it is
// published then. The recipes are those of the publications that the example
// site names, shortened.
var begunRecipes = []struct {
	typed string
	blank map[string]string // what is written behind each key that is left blank
	items []string
	steps string
}{
	{"Applesauce --process applesauce-hot --way boiling-water",
		map[string]string{"yield": "9 pint jars", "keeps": "12 months"}, []string{"13 lb apples"},
		"Cook the apples until they are tender, and sieve them. Fill the hot jars with the boiling sauce."},
	{"Steamed applesauce --process applesauce-hot --way atmospheric-steam",
		map[string]string{"yield": "9 pint jars", "keeps": "12 months"}, []string{"13 lb apples"},
		"Cook the apples until they are tender, and sieve them. Fill the hot jars with the boiling sauce."},
	{"Green beans --kind vegetable --process green-beans-raw",
		map[string]string{"yield": "7 quart jars", "keeps": "12 months"}, []string{"14 lb green beans"},
		"Cut the green beans into pieces, pack them tightly into hot jars, and cover them with boiling water."},
	{"Onions for the fridge --kind pickle --way refrigerator --produce onions",
		map[string]string{"yield": "2 pints", "keeps": "2 weeks"},
		[]string{"1 lb onions", "2 cups vinegar (5%)", "1 cup water", "1 tbsp pickling salt"},
		"Slice the onions. Boil the vinegar, the water and the pickling salt, pour them over, and put the jars into the refrigerator."},
	{"Strawberries whole --kind fruit --way freezer",
		map[string]string{"yield": "3 pints", "container": "pint freezer boxes", "headspace": "1/2 in", "keeps": "12 months"},
		[]string{"3 lb strawberries"}, "Pack the strawberries into boxes, label them, and freeze them."},
	{"Apple rings --kind fruit --way drying",
		map[string]string{"yield": "12 oz", "temperature": "140 F", "duration": "6-12 hours", "keeps": "12 months"},
		[]string{"5 lb apples"}, "Slice the apples, and dry them until no moisture shows when one is torn."},
	{"Sauerkraut --produce cabbages",
		map[string]string{"yield": "9 quarts", "salt": "2.4%", "temperature": "70-75 F", "duration": "3-4 weeks", "keeps": "4 months"},
		[]string{"25 lb cabbages", "3/4 cup pickling salt"},
		"Shred the cabbages, mix in the pickling salt, press them until the brine covers them, and weigh them down under it."},
	{"Carrots in sand --kind vegetable --way cool-store",
		map[string]string{"yield": "10 lb", "keeps": "4 months"}, []string{"10 lb carrots"},
		"Lay the carrots into damp sand, and keep them just above freezing."},
}

// What is begun for each way of keeping needs nothing but what only its author
// knows, and is published then.
func TestBegunRecipesAreFinished(t *testing.T) {
	dir := t.TempDir()
	writeTo(t, filepath.Join(dir, "content/site.yaml"), "name: Larder\nauthor: Ada\n")
	for _, b := range begunRecipes {
		name := strings.TrimSpace(printed(t, succeeded, strings.Fields("start recipe --to "+dir+" "+b.typed)...))
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		text := marks.ReplaceAllString(string(data), "")
		text = regexp.MustCompile(`(?m)^ingredients:\n(  - .*\n)*`).ReplaceAllString(text, "ingredients:\n  - "+strings.Join(b.items, "\n  - ")+"\n")
		text = strings.Replace(text, "\nsummary:\nstatus: draft\n", "\nsummary: As it is published.\npublished: 2026-01-01\n", 1)
		for key, value := range b.blank {
			text = regexp.MustCompile(`(?m)^( *)`+key+`:$`).ReplaceAllString(text, "${1}"+key+": "+value)
		}
		writeTo(t, name, text+fmt.Sprintf("2. %s\n", b.steps))
	}
	printed(t, succeeded, "publish", dir)
	pages, _ := filepath.Glob(filepath.Join(dir, "published/recipes/*/index.html"))
	if len(pages) != len(begunRecipes) {
		t.Errorf("%d recipes were begun, and %d published", len(begunRecipes), len(pages))
	}
}

// marks are the lines that say what is still to be done.
var marks = regexp.MustCompile(`(?m)^ *# check:.*\n( *#  .*\n)*|<!-- check:[^>]*-->\n\n`)
