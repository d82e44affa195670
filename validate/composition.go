package validate

import (
	"fmt"
	"strings"
	"sync"

	"stillroom/content"
)

// A Composition is the recipe that a process was published with, as far as it
// is known: what its proportions are compared with. Nobody may change it.
type Composition struct {
	Batch    string // "7 quarts", where the publication prints the recipe for more than one; else empty
	Portions []Portion
	shares   []shared // its low-acid foods
	roles    map[Role][]Item
}

// A Portion is one ingredient of a published recipe.
type Portion struct {
	Item
	Role     Role
	Foods    []string // what it stands for where that is more than its own food: celery or peppers
	Source   Source
	Evidence string // address of a published copy, or "memory"
}

// A Role says what an ingredient does in a published recipe.
type Role string

// The roles.
const (
	RoleAcid      Role = "acid"
	RoleTomato    Role = "tomato"   // tomatoes and tomatillos, which bring some acid themselves
	RoleFruit     Role = "fruit"    // acid by nature
	RoleLowAcid   Role = "low-acid" // vegetables, legumes, mushrooms, meat, melon
	RoleWater     Role = "water"    // in the jar; not what is soaked in
	RoleSugar     Role = "sugar"
	RoleSweetener Role = "sweetener"
	RoleSalt      Role = "salt"
	RoleSpice     Role = "spice" // dried
	RoleHerb      Role = "herb"  // fresh herbs, garlic, ginger
	RoleStarch    Role = "starch"
	RoleOil       Role = "oil"
	RoleButter    Role = "butter"
	RoleEgg       Role = "egg"
	RoleLime      Role = "lime" // pickling lime
	RolePectin    Role = "pectin"
	RoleOther     Role = "other"
)

// CompositionsOf gives the published recipes of a process: mostly one, none
// where it is that of a plain food, or is not in the tables. Nobody may change
// them.
func CompositionsOf(process string) []Composition { return compositions()[process] }

var compositions = sync.OnceValue(func() map[string][]Composition {
	m := map[string][]Composition{}
	for _, r := range readTable("compositions.tsv") {
		p := portionOf(r)
		for _, id := range r.list("processes") {
			cs := m[id]
			if n := len(cs); n == 0 || cs[n-1].Batch != r.text("batch") {
				cs = append(cs, Composition{Batch: r.text("batch")})
			}
			last := &cs[len(cs)-1]
			last.Portions = append(last.Portions, p)
			m[id] = cs
		}
	}
	for _, cs := range m {
		for i := range cs {
			cs[i].shares = sharesOf(cs[i].Portions)
			cs[i].roles = rolesOf(cs[i].Portions)
		}
	}
	return m
})

func rolesOf(portions []Portion) map[Role][]Item {
	roles := map[Role][]Item{}
	for _, p := range portions {
		roles[p.Role] = append(roles[p.Role], p.Item)
	}
	return roles
}

func portionOf(r row) Portion {
	in := &content.Ingredient{
		Item:     r.text("ingredient"),
		Amount:   r.quantity(r.text("amount") + " " + r.text("unit")),
		Optional: r.text("optional") == "yes",
	}
	if s := r.text("same"); s != "" {
		in.Same = []content.Quantity{r.quantity(s)}
	}
	return Portion{
		Item:     Item{Ingredient: in, Class: ClassifyItem(in.Item, "")},
		Role:     Role(r.text("role")),
		Foods:    r.list("foods"),
		Source:   r.source("publication"),
		Evidence: evidence(r.text("evidence")),
	}
}

// quantity reads an amount of the table: 4 1/2 cup, 2 1/2-3 lb, 6.
func (r row) quantity(s string) content.Quantity {
	q, err := content.ParseQuantity(strings.TrimSpace(s))
	if err != nil {
		panic(fmt.Sprintf("%s: %v", r.place, err))
	}
	return q
}
