package build

import (
	"bytes"
	"fmt"
	"io"
	"slices"
	"strings"
)

// A File is a finished file of the published site.
type File struct {
	Path string // slash-separated, without a stroke at its beginning: recipes/damson-jam/index.html
	Data []byte

	// Open gives the bytes of a recording or a picture, which is too large to
	// be held in memory; Data is then nil. It may be called more than once.
	Open func() (io.ReadCloser, error)
}

// Reader gives the bytes of a file wherever they are.
func (f File) Reader() (io.ReadCloser, error) {
	if f.Open != nil {
		return f.Open()
	}
	return io.NopCloser(bytes.NewReader(f.Data)), nil
}

// arrange puts files in order of path. Two files that claim one path are our
// mistake, or a theme's; so are two paths that differ only in their case,
// which many disks take for one.
func arrange(files []File) ([]File, error) {
	files = slices.Clone(files)
	slices.SortFunc(files, func(a, b File) int { return strings.Compare(a.Path, b.Path) })
	seen := make(map[string]string, len(files))
	for _, f := range files {
		folded := strings.ToLower(f.Path)
		if other, ok := seen[folded]; ok {
			return nil, fmt.Errorf("two files of the site would be %s and %s, which is one place", other, f.Path)
		}
		seen[folded] = f.Path
	}
	return files, nil
}
