package validate

import (
	"strings"

	"stillroom/content"
)

// stepsSay reports whether one of some words stands in the method, in a
// heading above its steps, or in the list of ingredients.
func stepsSay(r *content.Recipe, words ...string) bool {
	for _, part := range r.Body.Method {
		if saysAny(strings.ToLower(part.Heading), words) {
			return true
		}
		for _, step := range part.Steps {
			if saysAny(strings.ToLower(step.Text), words) {
				return true
			}
		}
	}
	for _, g := range r.Ingredients {
		for i := range g.Items {
			if saysAny(strings.ToLower(g.Items[i].Text), words) {
				return true
			}
		}
	}
	return false
}
