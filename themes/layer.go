package themes

import (
	"errors"
	"io/fs"
	"path"
	"slices"
	"strings"
)

// layer gathers the files of each folder, in order of name: the built-in ones,
// and over them those of the site's own theme.
func layer(base, over fs.FS) (map[string][]File, error) {
	gathered := make(map[string][]File, 3)
	for _, folder := range []string{"files", "parts", "pages"} {
		byName := make(map[string]File)
		if err := gather(byName, base, folder); err != nil {
			return nil, err
		}
		if over != nil {
			if err := gather(byName, over, folder); err != nil {
				return nil, err
			}
		}
		gathered[folder] = sorted(byName)
	}
	return gathered, nil
}

// gather adds the files of a folder, which may be missing. Hidden files and
// folders are passed over: editors and file managers leave them behind.
func gather(byName map[string]File, fsys fs.FS, folder string) error {
	entries, err := fs.ReadDir(fsys, folder)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	for _, e := range entries {
		if e.IsDir() || strings.HasPrefix(e.Name(), ".") {
			continue
		}
		data, err := fs.ReadFile(fsys, path.Join(folder, e.Name()))
		if err != nil {
			return err
		}
		byName[e.Name()] = File{Name: e.Name(), Data: data}
	}
	return nil
}

func sorted(byName map[string]File) []File {
	files := make([]File, 0, len(byName))
	for _, f := range byName {
		files = append(files, f)
	}
	slices.SortFunc(files, func(a, b File) int { return strings.Compare(a.Name, b.Name) })
	return files
}
