package validate

import (
	"regexp"
	"slices"
	"strings"
	"sync"

	"stillroom/content"
)

// A Caution is what goes wrong at home however good the recipe is.
type Caution struct {
	Says   string
	Short  string // the same on a card; it leaves out no figure
	Source Source

	ways []content.Way
}

// Cautions gives those of some ways of keeping, in the order of the work, each
// once. They are none for ways without a canner.
func Cautions(ways []content.Way) []Caution {
	var all []Caution
	for _, c := range cautions() {
		if slices.ContainsFunc(c.ways, func(w content.Way) bool { return slices.Contains(ways, w) }) {
			all = append(all, c)
		}
	}
	return all
}

var cautions = sync.OnceValue(func() []Caution {
	var all []Caution
	for _, r := range readTable("cautions.tsv") {
		c := Caution{Says: withLimits(r.text("says")), Short: withLimits(r.text("short")), Source: r.source("publication")}
		for _, w := range r.list("ways") {
			c.ways = append(c.ways, content.Way(w))
		}
		all = append(all, c)
	}
	return all
})

var limitName = regexp.MustCompile(`\{[a-z-]+\}`)

// withLimits writes the figures of the limits that are named in braces.
func withLimits(says string) string {
	return limitName.ReplaceAllStringFunc(says, func(name string) string {
		return strings.TrimSpace(limitText(strings.Trim(name, "{}"), ""))
	})
}
