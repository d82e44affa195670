package preview

import (
	"io/fs"
	"strings"

	"stillroom/content"
)

// A stamp tells two versions of a file apart.
type stamp struct{ size, changed int64 }

func stampOf(info fs.FileInfo) stamp { return stamp{info.Size(), info.ModTime().UnixNano()} }

// found lists the files below a folder, links among them, each with its stamp.
// What cannot be listed is passed over: there is nothing to look at.
func found(fsys fs.FS, folder string) map[string]stamp {
	files := make(map[string]stamp)
	fs.WalkDir(fsys, folder, func(name string, e fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return nil
		case e.IsDir() && Ignores(name):
			return fs.SkipDir
		case e.IsDir():
			return nil
		}
		if e.Type()&fs.ModeSymlink != 0 {
			files[name] = stamp{} // what it leads to is looked at every time
		} else if info, err := e.Info(); err == nil {
			files[name] = stampOf(info)
		}
		return nil
	})
	return files
}

// Ignores reports whether nothing below a folder matters, by its path relative
// to the site's.
func Ignores(folder string) bool {
	switch {
	case folder == "." || folder == "content" || folder == "themes":
		return false
	case strings.HasPrefix(folder, "themes/"):
		return hidden(folder)
	}
	return content.SortOf(folder+"/x.md") == content.NoPart
}

// hidden reports whether a name, or that of a folder above it, begins with a
// dot.
func hidden(name string) bool { return strings.Contains("/"+name, "/.") }
