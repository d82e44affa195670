package themes

import (
	"errors"
	"fmt"
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

// gather adds the files of a folder, which may be missing. Folders and foreign
// files are passed over.
func gather(byName map[string]File, fsys fs.FS, folder string) error {
	entries, err := fs.ReadDir(fsys, folder)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	for _, e := range entries {
		if e.IsDir() || IsForeign(e.Name()) || folder != "files" && path.Ext(e.Name()) != ".html" {
			continue
		}
		data, err := read(fsys, path.Join(folder, e.Name()))
		if err != nil {
			return err
		}
		byName[e.Name()] = File{Name: e.Name(), Data: data}
	}
	return nil
}

// IsForeign reports whether a file of a name is no part of a theme: it is hidden,
// or one that a text editor or a browser keeps beside what it is about to write.
// A number is what Vim calls a file by which it finds out whether it may write.
func IsForeign(name string) bool {
	isNumber := strings.Trim(name, "0123456789") == ""
	return isNumber || strings.HasPrefix(name, ".") || strings.HasSuffix(name, "~") ||
		strings.HasPrefix(name, "#") && strings.HasSuffix(name, "#") ||
		slices.Contains([]string{".swp", ".swo", ".bak", ".orig", ".part", ".crdownload"}, path.Ext(name)) ||
		strings.Contains(name, ".tmp") || strings.Contains(name, "___jb_")
}

// maxFile is the most that is read of a file of a theme: typefaces have some
// hundred thousand bytes.
const maxFile = 20 << 20

// read reads a file that is one, and not too long. Others may never end.
func read(fsys fs.FS, name string) ([]byte, error) {
	info, err := fs.Stat(fsys, name)
	switch {
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular():
		return nil, fmt.Errorf("%s of the theme is no regular file", name)
	case info.Size() > maxFile:
		return nil, fmt.Errorf("%s of the theme holds %d MB, and no more than %d MB are read", name, info.Size()>>20, maxFile>>20)
	}
	return fs.ReadFile(fsys, name)
}

func sorted(byName map[string]File) []File {
	files := make([]File, 0, len(byName))
	for _, f := range byName {
		files = append(files, f)
	}
	slices.SortFunc(files, func(a, b File) int { return strings.Compare(a.Name, b.Name) })
	return files
}
