package validate

import "stillroom/content"

// saltSubstitute reports a salt substitute in a ferment.
var saltSubstitute = &Rule{
	ID:       "salt-substitute",
	Severity: Error,
	Summary:  "a salt substitute in a ferment",
	Doc: `In a ferment salt decides which bacteria grow; potassium chloride and reduced-sodium
salt were not tested for that. In quick pickles, tomatoes and meat salt is for the
taste, and a substitute does no harm.`,
	Source: Source{
		Title:   "Pickling and fermenting, North Carolina State University",
		Address: "https://vdocument.in/pickling-and-fermenting-ncsu.html",
	},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		if m.Keeping.Way.V != content.Fermenting {
			return nil
		}
		var fs []Finding
		for _, in := range m.ofKind(ItemSaltSubst) {
			fs = append(fs, Finding{
				Pos:     in.Pos,
				Message: in.Item + ": no ferment was tested with it",
				Advice:  "Use canning or pickling salt.",
				Notes:   []Note{{Pos: m.Keeping.Way.Pos, Message: "fermented here"}},
			})
		}
		return fs
	},
}
