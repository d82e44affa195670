package build

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// ListName is the file in a published folder that lists what Stillroom
// has put there.
const ListName = ".stillroom"

// ListHead is the first line of the list.
const ListHead = "# Stillroom made the files that are listed here, and replaces them. Keep your own elsewhere.\n"

// movingSuffix ends the name of a file that is on its way to its place.
const movingSuffix = ".stillroom-moving"

// A tree is a published folder as it lies on disk.
type tree struct {
	dir    string
	exists bool
	made   map[string]bool // the paths that its manifest lists
}

// readTree reads a folder's manifest. It is an error if the folder holds a file
// that is not listed. A folder that does not exist is an empty tree.
func readTree(dir string) (*tree, error) {
	t := &tree{dir: dir, made: make(map[string]bool)}
	info, err := os.Stat(dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return t, nil
	case err != nil:
		return nil, err
	case !info.IsDir():
		return nil, fmt.Errorf("%s is a file, not a folder to publish into", dir)
	}
	t.exists = true
	list, err := os.ReadFile(filepath.Join(dir, ListName))
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return nil, err
	}
	for line := range strings.Lines(string(list)) {
		if line != ListHead {
			line = strings.TrimRight(line, "\r\n")
			t.made[line[strings.LastIndexByte(line, '\t')+1:]] = true // a list that was shipped tells more before the path
		}
	}
	foreign, err := t.foreign()
	if err != nil {
		return nil, err
	}
	if len(foreign) > 0 {
		return nil, fmt.Errorf("%s holds files that Stillroom did not make and that would be lost: %s", dir, some(foreign))
	}
	return t, nil
}

// manifest is the text that lists files.
func manifest(paths []string) []byte {
	return []byte(ListHead + strings.Join(paths, "\n") + "\n")
}

// droppings are files that desktops leave in any folder that is looked at.
var droppings = []string{".DS_Store", "Thumbs.db", "desktop.ini"}

// foreign lists the files of the folder that are not of our making.
func (t *tree) foreign() ([]string, error) {
	var found []string
	err := filepath.WalkDir(t.dir, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		rel, err := filepath.Rel(t.dir, name)
		if err != nil {
			return err
		}
		rel = filepath.ToSlash(rel)
		ours := rel == ListName || t.made[rel] ||
			strings.HasSuffix(rel, movingSuffix) || slices.Contains(droppings, d.Name())
		if !ours || !d.Type().IsRegular() {
			found = append(found, rel)
		}
		return nil
	})
	return found, err
}

// some names the first few of many.
func some(names []string) string {
	const few = 5
	if len(names) <= few {
		return strings.Join(names, ", ")
	}
	return fmt.Sprintf("%s and %d more", strings.Join(names[:few], ", "), len(names)-few)
}

// differs reports whether the tree lacks a file, or has one with other bytes.
func (t *tree) differs(f File) (bool, error) {
	r, err := f.Open()
	if err != nil {
		return false, err
	}
	defer r.Close()
	return !t.made[f.Path] || !unchanged(filepath.Join(t.dir, filepath.FromSlash(f.Path)), r), nil
}

// without lists what the tree has and a new site has not, in order.
func (t *tree) without(files []File) []string {
	gone := make(map[string]bool, len(t.made))
	for p := range t.made {
		gone[p] = true
	}
	for _, f := range files {
		delete(gone, f.Path)
	}
	paths := make([]string, 0, len(gone))
	for p := range gone {
		paths = append(paths, p)
	}
	slices.Sort(paths)
	return paths
}

// remove takes the folder away, its manifest last: what is left of it when the
// program is killed must still be known as ours.
func (t *tree) remove() error {
	entries, err := os.ReadDir(t.dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	for _, e := range entries {
		if e.Name() == ListName {
			continue
		}
		if err := os.RemoveAll(filepath.Join(t.dir, e.Name())); err != nil {
			return err
		}
	}
	return os.RemoveAll(t.dir)
}
