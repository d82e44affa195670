package build

import (
	"cmp"
	"slices"

	"stillroom/content"
)

// A Jar is a recipe as it stands on a shelf.
type Jar struct {
	Name    string
	Address string
	Vessel  string // the drawing: small, pint, quart, bottle, crock, tub, packet
	Fill    string // the colour of what is in it
	Kind    string // Jam
	Keeps   string // Boiling water, 12 months
	Summary string
}

func jar(r *content.Recipe) Jar {
	j := Jar{
		Name:    r.Name.V,
		Address: recipeAddress(r),
		Vessel:  vessel(r),
		Fill:    fill(r),
		Kind:    nameKind(r.Kind.V).one,
		Summary: r.Summary.V,
	}
	if len(r.Keeping) > 0 {
		k := r.Keeping[0]
		j.Keeps = nameWay(k.Way.V).name
		if k.Keeps.Set() {
			j.Keeps += ", " + typeset(k.Keeps.V.Text)
		}
	}
	return j
}

func jars(recipes []*content.Recipe) []Jar {
	all := make([]Jar, len(recipes))
	for i, r := range recipes {
		all[i] = jar(r)
	}
	return all
}

// A Shelf is a row of jars with a name on its edge.
type Shelf struct {
	ID   string // its anchor on the page
	Name string
	Jars []Jar
}

// A Larder is all the shelves of a page.
type Larder struct {
	Shelves []Shelf
	Close   bool // so many jars that they stand close, each one small
	Tabs    bool // so many that a list of the shelves helps
}

// How many jars a larder holds before a reader needs to be led, and before they
// have to stand close.
const (
	oneLook = 16
	roomy   = 60
)

// larder puts recipes that are in the order of shelved on a shelf for each kind.
func larder(recipes []*content.Recipe) Larder {
	l := Larder{Close: len(recipes) > roomy, Tabs: len(recipes) > oneLook}
	for i, r := range recipes {
		if i == 0 || r.Kind.V != recipes[i-1].Kind.V {
			l.Shelves = append(l.Shelves, Shelf{ID: string(r.Kind.V), Name: nameKind(r.Kind.V).many})
		}
		s := &l.Shelves[len(l.Shelves)-1]
		s.Jars = append(s.Jars, jar(r))
	}
	return l
}

// jars are all that stand in the larder.
func (l Larder) jars() []Jar {
	var all []Jar
	for _, s := range l.Shelves {
		all = append(all, s.Jars...)
	}
	return all
}

// shelved sorts recipes by kind, and those of a kind by name.
func shelved(recipes []*content.Recipe) []*content.Recipe {
	sorted := slices.Clone(recipes)
	sortBy(sorted, func(r *content.Recipe) string {
		return string(rune(kindPlace(r.Kind.V)+1)) + sortKey(r.Name.V) + "\x00" + r.Slug
	})
	return sorted
}

// sortBy puts a list in the order of keys, each of which is made once.
func sortBy[T any](list []T, key func(T) string) {
	type keyed struct {
		key string
		T   T
	}
	all := make([]keyed, len(list))
	for i, v := range list {
		all[i] = keyed{key(v), v}
	}
	slices.SortFunc(all, func(a, b keyed) int { return cmp.Compare(a.key, b.key) })
	for i := range all {
		list[i] = all[i].T
	}
}

// kindPlace is where a kind stands in the larder.
func kindPlace(k content.Kind) int {
	return slices.IndexFunc(kindNames, func(n kindName) bool { return n.kind == k })
}
