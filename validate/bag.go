package validate

import (
	"slices"
	"strings"
)

// isBag reports whether a freezer container is soft, and so needs no
// headspace.
func isBag(container string) bool {
	return slices.ContainsFunc(strings.Fields(strings.ToLower(container)), func(w string) bool {
		w = strings.Trim(w, ",.;()")
		return w == "bag" || w == "bags" || w == "foil" || w == "paper" || w == "wrap"
	})
}
