package build

import (
	"maps"
	"slices"
	"strings"
)

// BrokenPictures say what is wrong with pictures that looked sound from
// outside, by name relative to content/pictures.
type BrokenPictures map[string]string

func (b BrokenPictures) Error() string {
	var all []string
	for _, name := range slices.Sorted(maps.Keys(b)) {
		all = append(all, "the picture "+b[name])
	}
	return strings.Join(all, "; ")
}

// gathered is the first error that is not the fault of a picture, or else all
// that are.
func gathered(errs []error) error {
	all := make(BrokenPictures)
	for _, err := range errs {
		broken, ok := err.(BrokenPictures)
		if err != nil && !ok {
			return err
		}
		maps.Copy(all, broken)
	}
	if len(all) == 0 {
		return nil
	}
	return all
}

// unsigned is what an image package says, without the name that it signs with.
func unsigned(err error) string {
	_, what, ok := strings.Cut(err.Error(), ": ")
	if !ok {
		return err.Error()
	}
	return what
}
