package validate

import "stillroom/content"

// unsettled reports what somebody wrote down to be checked.
var unsettled = &Rule{
	ID:       "unsettled",
	Severity: Warning,
	Summary:  "a mark that something is still to be checked",
	Doc: `A comment "# check: ..." in the front matter, or "<!-- check: ... -->" below it, marks
what its writer was not sure of. "stillroom import" leaves such marks at whatever it
guessed or could not read; you may leave some for yourself.

Look at the place, put it right, and take the mark away.`,
	Source:       contract,
	Check:        func(r *content.Recipe) []Finding { return marked(r.Marks) },
	CheckEpisode: func(e *content.Episode, _ *content.Site) []Finding { return marked(e.Marks) },
}

func marked(marks []content.Field[string]) []Finding {
	var fs []Finding
	for _, m := range marks {
		fs = append(fs, Finding{
			Pos:     m.Pos,
			Message: "still to be checked: " + m.V,
			Advice:  "Put it right if it has to be, and take the mark away.",
		})
	}
	return fs
}
