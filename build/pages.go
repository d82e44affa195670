package build

import (
	"cmp"
	"slices"

	"stillroom/themes"
	"stillroom/validate"
)

// Pages writes every page of a site that readers open, in order of path: those
// of the contract's addresses, and 404.html. What is a draft, or scheduled for
// a day after the one that was checked for, is left out, and nothing leads to
// it.
func Pages(c validate.Checked, t *themes.Theme, a *Assets) ([]File, error) {
	return pages(newEdition(c.Site(), c.Day(), a), t)
}

// pages writes them on every processor. A page that is written is let go, with
// what it was made of.
func pages(e *edition, t *themes.Theme) ([]File, error) {
	sheets := slices.Collect(e.sheets)
	files := make([]File, len(sheets))
	errs := make([]error, len(sheets))
	SideBySide(len(sheets), func(i int) {
		files[i].Path = sheets[i].path
		files[i].Data, errs[i] = sheets[i].write(t)
		sheets[i] = sheet{}
	})
	if err := cmp.Or(errs...); err != nil {
		return nil, err
	}
	return arrange(files)
}
