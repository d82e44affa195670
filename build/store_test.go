package build

import (
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"stillroom/content"
)

// A store with recipes exchanged is the one that would be made of them from the
// beginning, and there is one whenever none of them moves.
func TestStoreExchanged(t *testing.T) {
	site := exampleChecked(t).Site()
	random := rand.New(rand.NewPCG(7, 8))
	before, s := site.Recipes, newStore(site.Recipes)
	changes := []func(r *content.Recipe) (moves bool){
		func(r *content.Recipe) bool { r.Name.V += " again"; return false },
		func(r *content.Recipe) bool { r.Summary.V = "Another."; return false },
		func(r *content.Recipe) bool { r.Published.V.Year--; return true },
		func(r *content.Recipe) bool { r.Kind.V = "other"; return true },
		func(r *content.Recipe) bool {
			r.Produce = append(slices.Clip(r.Produce), content.Field[string]{V: "sloes"})
			return true
		},
		func(r *content.Recipe) bool { r.Season = []content.Field[time.Month]{{V: time.February}}; return true },
		func(r *content.Recipe) bool { r.Keeping = nil; return true },
		func(r *content.Recipe) bool { r.Slug += "-again"; return true },
	}
	for i := range 300 {
		after, moves := slices.Clone(before), false
		for range random.IntN(3) {
			at := random.IntN(len(after))
			r := *after[at]
			after[at] = &r
			moves = changes[random.IntN(len(changes))](&r) || moves
		}
		next, ok := s.exchanged(before, after)
		if !ok && !moves {
			t.Fatalf("change %d: nothing moves, and all is put in order again", i)
		}
		want := newStore(after)
		if ok && !same(next, want) {
			t.Fatalf("change %d: the store is another than one from the beginning", i)
		}
		before, s = after, want
	}
	if _, ok := s.exchanged(before, before[1:]); ok {
		t.Error("a recipe less is taken for the same recipes")
	}
}

// lists are all that a store holds, by name.
func (s *store) lists() map[string][]*content.Recipe {
	all := map[string][]*content.Recipe{"": s.recipes}
	for m, list := range s.made {
		all[m.String()] = list
	}
	for w, list := range s.kept {
		all["way "+string(w)] = list
	}
	for k, list := range s.kinds {
		all["kind "+string(k)] = list
	}
	for _, h := range s.harvests {
		all[h.address+" "+h.name] = h.recipes
	}
	for slug, r := range s.recipe {
		all["slug "+slug] = []*content.Recipe{r}
	}
	return all
}

// same reports whether the very same recipes stand on the lists of both.
func same(a, b *store) bool {
	return cmp.Equal(a.lists(), b.lists(), cmp.Comparer(func(a, b *content.Recipe) bool { return a == b }))
}
