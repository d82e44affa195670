package build

import (
	"stillroom/content"
	"stillroom/validate"
)

// cautionsFor gives the usual cautions for some ways of keeping, each once.
func cautionsFor(ways []content.Way) []string {
	var texts []string
	for _, c := range validate.Cautions(ways) {
		texts = append(texts, typeset(c.Says))
	}
	return texts
}

// shortCautions are the same in short.
func shortCautions(ways []content.Way) []string {
	var texts []string
	for _, c := range validate.Cautions(ways) {
		texts = append(texts, typeset(c.Short))
	}
	return texts
}
