package validate

import (
	"math"
	"math/big"
	"strings"
	"testing"

	"stillroom/content"
)

func TestJamVolume(t *testing.T) {
	tests := []struct {
		name                 string
		mass, solids, finish int64
		want                 string // ml
	}{
		{"boiled down: 1,000 g with half of it solids, to 65 per cent", 1000, 500, 65, "583"},
		{"strong enough already: nothing boils away", 1000, 700, 65, "758"},
		{"just strong enough", 1000, 650, 65, "758"},
	}
	for _, tt := range tests {
		got := JamVolume(big.NewRat(tt.mass, 1), big.NewRat(tt.solids, 1), big.NewRat(tt.finish, 1))
		if got.FloatString(0) != tt.want {
			t.Errorf("%s: %s ml, want %s", tt.name, got.FloatString(0), tt.want)
		}
	}
}

// impossible are the rows of the guide's table of jellies without added
// pectin whose jars hold more than the juice and the sugar that went in.
var impossible = map[string]bool{
	"blackberry jelly, no added pectin (guide table)": true,
	"grape jelly, no added pectin (guide table)":      true,
	"plum jelly, no added pectin (guide table)":       true,
}

// Reckoned from fruit and sugar, the published jams and jellies come within a
// third of their printed yields. Three rows cannot be right, and no other.
func TestPublishedYields(t *testing.T) {
	var sum, square float64
	n := 0
	for _, p := range PublishedRecipes() {
		items, ok := fruitAndSugar(p)
		if !ok {
			continue
		}
		reckoned := jamJars(items)
		y, err := content.ParseYield(firstYield(p.Yield))
		if err != nil {
			t.Fatal(err)
		}
		if reckoned == nil {
			t.Logf("%-50s not reckoned: %s", p.Name, p.Fruit)
			continue
		}
		printed := new(big.Rat).Mul(middle(y.Quantity), y.Jar.Millilitres())
		off, _ := new(big.Rat).Sub(new(big.Rat).Quo(reckoned, printed), big.NewRat(1, 1)).Float64()
		t.Logf("%-50s reckoned %5s half-pints, printed %-16s %+5.0f%%", p.Name, halfPints(reckoned), p.Yield, 100*off)
		if impossible[p.Name] != holdsMoreThanPot(items, y) {
			t.Errorf("%s: holds more than went in: %v", p.Name, !impossible[p.Name])
		}
		if impossible[p.Name] {
			continue
		}
		n++
		sum += off
		square += off * off
	}
	t.Logf("%d rows without those three: mean %+.0f%%, root mean square %.0f%%", n, 100*sum/float64(n), 100*math.Sqrt(square/float64(n)))
	if n < 15 || math.Sqrt(square/float64(n)) > 0.25 {
		t.Errorf("%d rows are reckoned, want 15, a quarter off at most", n)
	}
}

// fruitAndSugar gives the ingredients of a published jam or jelly.
func fruitAndSugar(p PublishedRecipe) ([]Item, bool) {
	kind := strings.Fields(strings.TrimRight(strings.SplitN(p.Name, ",", 2)[0], " "))
	if !map[string]bool{"jam": true, "jelly": true, "preserves": true, "marmalade": true}[kind[len(kind)-1]] {
		return nil, false
	}
	name := strings.Join(kind[:len(kind)-1], " ")
	var items []Item
	add := func(line string) {
		in := content.ParseIngredient(line)
		items = append(items, Item{Ingredient: &in, Class: ClassifyItem(in.Item, in.Note)})
	}
	for part := range strings.SplitSeq(p.Fruit, " + ") {
		part, _, _ = strings.Cut(part, " (")
		if _, ok := LookUpProduce(part); !ok && !strings.Contains(part, "water") {
			part += " " + name // 4 cups crushed; 4 cups juice
			if strings.Contains(p.Fruit, "juice") {
				part += " juice"
			}
		}
		add(part)
	}
	sugar, _, _ := strings.Cut(p.Sugar, " (")
	add(sugar + " sugar")
	return items, true
}

// holdsMoreThanPot reports whether the smallest printed yield is more than all
// that went in: a cup of sugar takes up half a cup of syrup and a little, here
// two thirds.
func holdsMoreThanPot(items []Item, y content.Yield) bool {
	wet, _ := cupsOf(ofRole(items, RoleFruit))
	water, _ := cupsOf(ofRole(items, RoleWater))
	sugar, _ := cupsOf(ofRole(items, RoleSugar))
	in := new(big.Rat).Add(wet, water)
	in.Add(in, sugar.Mul(sugar, big.NewRat(2, 3)))
	cups := new(big.Rat).Mul(y.Low, y.Jar.Millilitres())
	cup, _ := content.ParseJar("half-pint")
	return cups.Quo(cups, cup.Millilitres()).Cmp(in) > 0
}
