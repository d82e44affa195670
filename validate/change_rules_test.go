package validate

import (
	"math/big"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"stillroom/content"
)

// An attempt makes a change that readers ask for in a way of keeping. It reports
// false where the recipe has nothing to change.
type attempt func(r *content.Recipe, k *content.Keeping) bool

// attempts are the changes that the rules can judge too, each by the case of its
// answer: "less-salt ferment", or all cases of one change.
var attempts = map[string]attempt{
	"fewer-vegetables":         dropping(func(in Item) bool { return in.role() == RoleLowAcid && in.Class.Produce.Name == "onion" }),
	"more-vegetables":          scaling(3, 1, func(in Item) bool { return in.role() == RoleLowAcid }),
	"more-vegetables tomatoes": adding("6 cups chopped onions"),
	"other-vegetables":         adding("3 cups cauliflower florets"),
	"pepper-kinds":             renaming("jalapeño peppers, chopped", func(in Item) bool { return in.Class.Produce.Group == Peppers }),
	"dried-spices":             scaling(3, 2, func(in Item) bool { return in.Class.Kind == ItemSpice }),
	"fresh-herbs acidified":    adding("3 cups fresh cilantro"),

	"fresh-juice":            renaming("fresh lemon juice", ofItemKind(ItemCitrusJuice)),
	"lemon-for-vinegar":      renaming("bottled lemon juice", ofItemKind(ItemVinegar)),
	"vinegar-for-lemon none": renaming("white vinegar (5%)", ofItemKind(ItemCitrusJuice)),
	"vinegar-for-lemon dose": dosing("4 tbsp white vinegar (5%) per quart"),
	"citric-acid dose":       dosing("1/2 tsp citric acid per quart"),
	"less-acid recipe":       scaling(1, 2, func(in Item) bool { return in.role() == RoleAcid }),
	"less-acid jar":          dosing("1 tsp bottled lemon juice per quart"),
	"more-vinegar":           scaling(3, 2, ofItemKind(ItemVinegar)),
	"other-vinegar":          renaming("cider vinegar (5%)", ofItemKind(ItemVinegar)),

	"less-sugar set": where(func(r *content.Recipe, k *content.Keeping) bool {
		return k.Way.V.Canned() && len(itemsOfKind(r, ItemPectin)) > 0 // without, it cannot be told how much sugar the fruit wants
	}, scaling(1, 2, ofItemKind(ItemSugar))),
	"less-sugar fruit":  dropping(ofItemKind(ItemSugar)),
	"less-sugar pickle": dropping(ofItemKind(ItemSugar)),
	"less-sugar tomato": dropping(ofItemKind(ItemSugar)),
	"more-sugar sharp":  adding("1 cup sugar"),
	"sweetener set":     where(func(_ *content.Recipe, k *content.Keeping) bool { return k.Way.V.Canned() }, renaming("sucralose", ofItemKind(ItemSugar))),
	"less-salt taste":   dropping(ofItemKind(ItemSalt)),
	"less-salt ferment": where(func(_ *content.Recipe, k *content.Keeping) bool { return k.Way.V == content.Fermenting }, scaling(1, 2, ofItemKind(ItemSalt))),

	"smaller-jar":            jarring("quarter-pint"),
	"larger-jar":             jarring("1 gallon"),
	"raw-pack none":          packing(content.Raw),
	"hot-pack none":          packing(content.Hot),
	"thicken none":           adding("1/2 cup cornstarch"),
	"oil none":               adding("1/2 cup olive oil"),
	"steam":                  keepingBy(content.AtmosphericSteam),
	"boiling-water low-acid": keepingBy(content.BoilingWater),
	"boiling-water steam":    keepingBy(content.BoilingWater),
	"pressure-canner none":   keepingBy(content.PressureCanner),
}

// where makes an attempt only of some ways of keeping.
func where(is func(*content.Recipe, *content.Keeping) bool, try attempt) attempt {
	return func(r *content.Recipe, k *content.Keeping) bool { return is(r, k) && try(r, k) }
}

func itemsOfKind(r *content.Recipe, kind ItemKind) []Item {
	return slices.DeleteFunc(itemsOf(r), func(in Item) bool { return in.Class.Kind != kind })
}

func ofItemKind(kind ItemKind) func(Item) bool {
	return func(in Item) bool { return in.Class.Kind == kind }
}

// eachItem runs a change over the ingredients.
func eachItem(r *content.Recipe, change func(in Item) (keep bool)) {
	for i := range r.Ingredients {
		g := &r.Ingredients[i]
		kept := g.Items[:0]
		for j := range g.Items {
			in := g.Items[j]
			if change(Item{Ingredient: &in, Class: ClassifyItem(in.Item, in.Note)}) {
				kept = append(kept, in)
			}
		}
		g.Items = kept
	}
}

func dropping(is func(Item) bool) attempt {
	return func(r *content.Recipe, _ *content.Keeping) (done bool) {
		eachItem(r, func(in Item) bool {
			done = done || is(in)
			return !is(in)
		})
		return done
	}
}

func scaling(by, of int64, is func(Item) bool) attempt {
	factor := big.NewRat(by, of)
	times := func(q content.Quantity) content.Quantity {
		if q.Low != nil {
			q.Low, q.High = new(big.Rat).Mul(q.Low, factor), new(big.Rat).Mul(q.High, factor)
		}
		return q
	}
	return func(r *content.Recipe, _ *content.Keeping) (done bool) {
		eachItem(r, func(in Item) bool {
			if is(in) && in.Amount.Low != nil {
				done = true
				in.Amount = times(in.Amount)
				for i := range in.Same {
					in.Same[i] = times(in.Same[i])
				}
			}
			return true
		})
		return done
	}
}

func renaming(to string, is func(Item) bool) attempt {
	return func(r *content.Recipe, k *content.Keeping) (done bool) {
		eachItem(r, func(in Item) bool {
			if is(in) {
				done = true
				in.Item, in.Note, _ = strings.Cut(to, ", ")
			}
			return true
		})
		if added := k.Acid.V.Added; k.Acid.V.Source == content.AcidPerJar && is(Item{Ingredient: &added, Class: ClassifyItem(added.Item, added.Note)}) {
			done = true
			k.Acid.V.Added.Item, k.Acid.V.Added.Note = to, ""
		}
		return done
	}
}

func adding(line string) attempt {
	return func(r *content.Recipe, _ *content.Keeping) bool {
		in := content.ParseIngredient(line)
		last := &r.Ingredients[len(r.Ingredients)-1]
		in.Pos = last.Items[len(last.Items)-1].Pos
		last.Items = append(last.Items, in)
		return true
	}
}

func dosing(acid string) attempt {
	return func(_ *content.Recipe, k *content.Keeping) bool {
		a, err := content.ParseAcid(acid)
		k.Acid.V = a
		return err == nil
	}
}

func jarring(size string) attempt {
	return func(_ *content.Recipe, k *content.Keeping) bool {
		for i := range k.Processing {
			if i == 0 {
				k.Processing[i].Jar.V, _ = content.ParseJar(size)
			}
		}
		return len(k.Processing) > 0
	}
}

func packing(p content.Pack) attempt {
	return func(_ *content.Recipe, k *content.Keeping) bool {
		k.Pack.V = p
		return k.Pack.Set()
	}
}

func keepingBy(w content.Way) attempt {
	return func(_ *content.Recipe, k *content.Keeping) bool {
		k.Way.V = w
		return true
	}
}

// What may be changed brings no error by the rules; what may not brings an
// error or a warning that was not there.
func TestChangesAgreeWithRules(t *testing.T) {
	tried := map[string]int{}
	for _, pattern := range []string{"../content/recipes/*.md", "testdata/changes/*.md"} {
		names, _ := filepath.Glob(pattern)
		for _, name := range names {
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			r, _ := content.ReadRecipe("a.md", text)
			if r.Withdrawn != nil {
				continue // nothing is told of it
			}
			for i := range r.Keeping {
				a := &asking{recipe: r, Match: match(&r.Keeping[i], itemsOf(r))}
				if a.Process == nil && a.canned() || a.Keeping.TestedBy != nil {
					continue
				}
				for _, q := range allQuestions() {
					tryChange(t, text, i, q, q.pick(a), tried)
				}
			}
		}
	}
	for id := range attempts {
		if tried[id] == 0 {
			t.Errorf("%s was never tried", id)
		}
	}
}

func tryChange(t *testing.T, text []byte, way int, q question, p picked, tried map[string]int) {
	id := q.id + " " + p.which
	try, ok := attempts[id]
	if !ok {
		id = q.id
		try, ok = attempts[id]
	}
	verdict := answers()[q.id+" "+p.which].verdict
	if p.which == "" || !ok || verdict == Unknown {
		return
	}
	r, _ := content.ReadRecipe("a.md", text)
	before := saidOfWay(r, way, Advice)
	if !try(r, &r.Keeping[way]) {
		return
	}
	tried[id]++
	least := Warning
	if verdict == May {
		least = Error
	}
	added := slices.DeleteFunc(saidOfWay(r, way, least), func(s string) bool { return slices.Contains(before, s) })
	switch {
	case verdict == May && p.which == "some":
		return // only up to an altitude
	case verdict == May && len(added) > 0:
		t.Errorf("%s, %s: it may be done, and the rules say %q", r.Name.V, id, added)
	case verdict == MayNot && len(added) == 0:
		t.Errorf("%s, %s: it may not be done, and no rule says so", r.Name.V, id)
	}
}

// saidOfWay is what the rules that read the front matter say of one way of
// keeping, from a severity up.
func saidOfWay(r *content.Recipe, way int, least Severity) []string {
	one := *r
	one.Keeping = r.Keeping[way : way+1]
	one.Body = content.Body{}
	var said []string
	for _, f := range checkRecipe(&one, Rules) {
		if f.Severity >= least {
			said = append(said, f.Rule+": "+f.Message)
		}
	}
	return said
}

func allQuestions() []question {
	var all []question
	for _, t := range topics {
		all = append(all, t.questions...)
	}
	return all
}
