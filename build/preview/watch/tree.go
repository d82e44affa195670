package watch

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/fsnotify/fsnotify"
)

// A tree is a folder and those below it that are watched, each by itself: the
// system tells of what lies in a folder, and of nothing deeper.
type tree struct {
	Folder
	system  *fsnotify.Watcher
	root    os.FileInfo     // of the folder as it was when it was watched; nil if it is gone
	known   map[string]bool // the folders that are watched
	targets map[string]bool // files outside of those folders that links in them lead to
	moved   bool            // a folder was moved, and the system may have lost sight of it
}

// plant watches the folder from the beginning.
func (t *tree) plant() error {
	info, err := os.Stat(t.Dir)
	if err != nil {
		return err
	}
	system, err := fsnotify.NewWatcher()
	if err != nil {
		return err
	}
	if t.system != nil {
		t.system.Close()
	}
	t.system, t.root = system, info
	t.known, t.targets = make(map[string]bool), make(map[string]bool)
	if _, err := t.grow("."); err != nil {
		system.Close()
		return err
	}
	return nil
}

// grow watches a folder and those below it, and gives the files in those that
// were not watched before. A folder is watched before it is read, so that
// nothing comes into it unseen. What is no folder is passed over.
func (t *tree) grow(name string) (files []string, err error) {
	if t.Ignores(name) {
		return nil, nil
	}
	isNew := !t.known[name]
	info, err := os.Lstat(t.path(name))
	switch {
	case err == nil && info.Mode()&fs.ModeSymlink != 0:
		return nil, t.follow(name)
	case err != nil || !info.IsDir():
		return nil, ignoreGone(err)
	}
	if err := t.system.Add(t.path(name)); err != nil {
		return nil, ignoreGone(err)
	}
	t.known[name] = true
	entries, err := os.ReadDir(t.path(name))
	if err != nil {
		return nil, ignoreGone(err)
	}
	for _, e := range entries {
		below := join(name, e.Name())
		if isNew && !isPassing(below) {
			files = append(files, below)
		}
		if e.IsDir() || e.Type()&fs.ModeSymlink != 0 {
			more, err := t.grow(below)
			if err != nil {
				return files, err
			}
			files = append(files, more...)
		}
	}
	return files, nil
}

// follow watches the folder of the file that a link leads to, if it lies within
// the tree.
func (t *tree) follow(link string) error {
	target, err := filepath.EvalSymlinks(t.path(link))
	if err != nil {
		return nil // to nothing, or in a circle
	}
	dir, err := filepath.EvalSymlinks(t.Dir)
	if err != nil {
		return ignoreGone(err)
	}
	name, err := filepath.Rel(dir, target)
	if err != nil || !filepath.IsLocal(name) {
		return nil
	}
	t.targets[filepath.ToSlash(name)] = true
	folder := filepath.Dir(target)
	if rel, err := filepath.Rel(dir, folder); err == nil {
		folder = filepath.Join(t.Dir, rel) // events bear the name that was added
	}
	return ignoreGone(t.system.Add(folder))
}

// cut forgets a folder that is gone, and those below it.
func (t *tree) cut(name string) {
	for folder := range t.known {
		if folder == name || strings.HasPrefix(folder, name+"/") {
			t.system.Remove(t.path(folder)) // the error says that it is not watched any more
			delete(t.known, folder)
		}
	}
	t.moved = true
}

// dismisses reports whether a file does not matter: it lies in a folder that is
// watched for the sake of others.
func (t *tree) dismisses(name string) bool {
	if t.targets[name] || t.known[name] {
		return false
	}
	folder := filepath.ToSlash(filepath.Dir(name))
	return !t.known[folder] || folder == "." && t.Ignores(name)
}

func (t *tree) path(name string) string { return filepath.Join(t.Dir, filepath.FromSlash(name)) }

// relative gives the path from the root, as Batch has it.
func (t *tree) relative(name string) (string, bool) {
	rel, err := filepath.Rel(t.Dir, name)
	return filepath.ToSlash(rel), err == nil && filepath.IsLocal(rel)
}

func join(folder, name string) string {
	if folder == "." {
		return name
	}
	return folder + "/" + name
}

// isPassing reports whether a file is there for a moment only: editors hide
// such files, or give them a last letter that no text has.
func isPassing(name string) bool {
	base := name[strings.LastIndexByte(name, '/')+1:]
	return strings.HasPrefix(base, ".") || strings.HasSuffix(base, "~")
}

// ignoreGone takes it for no error that something is gone by now.
func ignoreGone(err error) error {
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	return err
}
