package intake

import (
	"strings"
)

// A thing is something that a page describes: a recipe, a step, a picture.
type thing struct {
	types []string // without the address of the vocabulary: Recipe
	id    string
	props map[string][]value
}

// A value is a text or a thing.
type value struct {
	text  string
	thing *thing // nil if it is a text
}

// is reports whether a thing is of a type.
func (t *thing) is(name string) bool {
	for _, n := range t.types {
		if strings.EqualFold(n, name) {
			return true
		}
	}
	return false
}

// add appends values of a property.
func (t *thing) add(name string, vs ...value) {
	if t.props == nil {
		t.props = make(map[string][]value)
	}
	t.props[name] = append(t.props[name], vs...)
}

// all gives the values of the first of some properties that has any.
func (t *thing) all(names ...string) []value {
	for _, n := range names {
		if vs := t.props[n]; len(vs) > 0 {
			return vs
		}
	}
	return nil
}

// line gives the first text of the first property that has one, in one line.
func (t *thing) line(names ...string) string {
	for _, n := range names {
		for _, v := range t.props[n] {
			if s := oneLine(v.words()); s != "" {
				return s
			}
		}
	}
	return ""
}

// words gives a text, or what a thing is called.
func (v value) words() string {
	if v.thing == nil {
		return v.text
	}
	for _, name := range []string{"name", "text", "url", "contentUrl"} {
		for _, inner := range v.thing.props[name] {
			if inner.thing == nil && inner.text != "" {
				return inner.text
			}
		}
	}
	return ""
}

// shortType cuts the vocabulary off the name of a type or a property:
// https://schema.org/Recipe, schema:Recipe.
func shortType(name string) string {
	name = strings.TrimRight(strings.TrimSpace(name), "/#")
	if i := strings.LastIndexAny(name, "/#:"); i >= 0 && strings.Contains(strings.ToLower(name[:i]), "schema") {
		return name[i+1:]
	}
	return name
}

// maxDepth is how deep things may lie in one another; real pages need ten.
const maxDepth = 64

// recipesIn gives the recipes among things and what lies in them, each once.
func recipesIn(things []*thing) []*thing {
	var found []*thing
	seen := make(map[*thing]bool)
	var walk func(t *thing, depth int)
	walk = func(t *thing, depth int) {
		if t == nil || seen[t] || depth > maxDepth {
			return
		}
		seen[t] = true
		if t.is("Recipe") && len(t.all("recipeIngredient", "ingredients", "recipeInstructions")) > 0 {
			found = append(found, t)
			return
		}
		for _, name := range sortedKeys(t.props) {
			for _, v := range t.props[name] {
				walk(v.thing, depth+1)
			}
		}
	}
	for _, t := range things {
		walk(t, 0)
	}
	return found
}
