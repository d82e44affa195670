package build

import (
	"cmp"
	"maps"
	"slices"
	"time"

	"stillroom/content"
)

// A store holds recipes in every order in which pages want them. Nobody changes
// it once it is there.
type store struct {
	recipes   []*content.Recipe // newest first, without the withdrawn ones
	withdrawn []*content.Recipe // newest first
	recipe    map[string]*content.Recipe
	harvests  []harvest // in order of name
	made      map[time.Month][]*content.Recipe
	kept      map[content.Way][]*content.Recipe
	kinds     map[content.Kind][]*content.Recipe
}

func newStore(recipes []*content.Recipe) *store {
	s := &store{
		recipe: make(map[string]*content.Recipe, len(recipes)),
		made:   make(map[time.Month][]*content.Recipe),
		kept:   make(map[content.Way][]*content.Recipe),
		kinds:  make(map[content.Kind][]*content.Recipe),
	}
	for _, r := range recipes {
		if r.Withdrawn != nil {
			s.withdrawn = append(s.withdrawn, r)
			continue
		}
		s.recipes = append(s.recipes, r)
		s.recipe[r.Slug] = r
	}
	slices.SortFunc(s.recipes, newestFirst)
	slices.SortFunc(s.withdrawn, newestFirst)
	s.gather()
	return s
}

func newestFirst(a, b *content.Recipe) int {
	return cmp.Or(newest(a.Published.V, b.Published.V), cmp.Compare(a.Slug, b.Slug))
}

// gather sorts the recipes into those of a month, a way, a kind and a produce.
// Each recipe is looked at once, so that a site of thousands is no harder.
func (s *store) gather() {
	for _, r := range s.recipes {
		for _, m := range Season(r) {
			s.made[m] = append(s.made[m], r)
		}
		for _, w := range waysOf(r) {
			s.kept[w] = append(s.kept[w], r)
		}
		s.kinds[r.Kind.V] = append(s.kinds[r.Kind.V], r)
	}
	s.harvests = harvestsOf(s.recipes)
}

// fewExchanged is up to how many recipes it is quicker to exchange than to put
// all of them in order again.
const fewExchanged = 16

// exchanged gives the store of other recipes, if they are the same but for a few
// that have been written anew and stand where they stood. A nil store has
// none.
func (s *store) exchanged(before, after []*content.Recipe) (*store, bool) {
	if s == nil || len(before) != len(after) {
		return nil, false
	}
	next, n := s, 0
	for i, old := range before {
		if old == after[i] {
			continue
		}
		if n++; n > fewExchanged || !sameShelves(old, after[i]) {
			return nil, false
		}
		next = next.exchange(old, after[i])
	}
	return next, true
}

// sameShelves reports whether two recipes stand at the same place on all lists.
func sameShelves(a, b *content.Recipe) bool {
	return a.Slug == b.Slug && (a.Withdrawn == nil) == (b.Withdrawn == nil) && a.Published.V == b.Published.V && a.Kind.V == b.Kind.V &&
		slices.EqualFunc(a.Produce, b.Produce, func(a, b content.Field[string]) bool { return a.V == b.V }) &&
		slices.Equal(Season(a), Season(b)) && slices.Equal(waysOf(a), waysOf(b))
}

// exchange puts one recipe in the place of another.
func (s *store) exchange(old, by *content.Recipe) *store {
	next := &store{
		recipes: exchangeIn(s.recipes, old, by), withdrawn: exchangeIn(s.withdrawn, old, by), recipe: s.recipe, harvests: slices.Clone(s.harvests),
		made: exchangeInEach(s.made, old, by), kept: exchangeInEach(s.kept, old, by), kinds: exchangeInEach(s.kinds, old, by),
	}
	if s.recipe[old.Slug] == old {
		next.recipe = maps.Clone(s.recipe)
		next.recipe[old.Slug] = by
	}
	for i := range next.harvests {
		next.harvests[i].recipes = exchangeIn(next.harvests[i].recipes, old, by)
	}
	return next
}

func exchangeInEach[K comparable](lists map[K][]*content.Recipe, old, by *content.Recipe) map[K][]*content.Recipe {
	next := make(map[K][]*content.Recipe, len(lists))
	for key, list := range lists {
		next[key] = exchangeIn(list, old, by)
	}
	return next
}

// exchangeIn gives the list itself if the recipe is not in it.
func exchangeIn(list []*content.Recipe, old, by *content.Recipe) []*content.Recipe {
	i := slices.Index(list, old)
	if i < 0 {
		return list
	}
	list = slices.Clone(list)
	list[i] = by
	return list
}
