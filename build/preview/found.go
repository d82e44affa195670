package preview

import (
	"slices"

	"stillroom/validate"
)

// Found is what was found in a site.
type Found struct {
	Changed  []string // the files that were changed, in order
	Report   validate.Report
	Troubles []Trouble
}

// In gives what was found in one file.
func (f Found) In(file string) []validate.Finding {
	return f.Report.In(file)
}

// fresh are the troubles that were not there before.
func fresh(before, now []Trouble) []Trouble {
	return slices.DeleteFunc(slices.Clone(now), func(t Trouble) bool { return slices.Contains(before, t) })
}

// Now is what is found in the site as it stands.
func (p *Preview) Now() Found {
	s := p.now.Load()
	return Found{Report: s.report, Troubles: s.troubles}
}
