package build

import (
	"stillroom/content"
	"stillroom/validate"
)

// A Why tells what a figure is for.
type Why struct {
	Name string // Headspace
	Sourced
}

func whys(r *content.Recipe, k *content.Keeping) []Why {
	var all []Why
	if m, ok := validate.WhyHeadspace(k); ok {
		all = append(all, Why{"Headspace", sourced(m.Says, m.Source)})
	}
	if m, ok := validate.WhyAcid(r, k); ok {
		all = append(all, Why{"Acid", sourced(m.Says, m.Source)})
	}
	return all
}
