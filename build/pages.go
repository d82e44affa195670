package build

import (
	"stillroom/themes"
	"stillroom/validate"
)

// Pages gives every page of a site that readers open, in order of path: those
// of the contract's addresses, and 404.html. What is a draft, or scheduled for
// a day after the one that was checked for, is left out, and nothing leads to
// it.
func Pages(c validate.Checked, t *themes.Theme, a *Assets) ([]File, error) {
	return pages(newEdition(c.Site(), c.Day(), a), t)
}

func pages(e *edition, t *themes.Theme) ([]File, error) {
	var files []File
	for s := range e.sheets {
		files = append(files, s.file(t))
	}
	return arrange(files)
}
