package build

import (
	"slices"

	"stillroom/content"
)

// besides is how many other recipes stand at the foot of a page.
const besides = 6

// beside gives recipes that share the produce of one, and then those of its
// kind, the newest first.
func (e *edition) beside(r *content.Recipe) []*content.Recipe {
	var near []*content.Recipe
	add := func(like []*content.Recipe) {
		for _, other := range like {
			if len(near) == besides {
				return
			}
			if other != r && !slices.Contains(near, other) {
				near = append(near, other)
			}
		}
	}
	for _, p := range r.Produce {
		add(e.harvest(produceAddress(p.V)).recipes)
	}
	add(e.kinds[r.Kind.V])
	return near
}
