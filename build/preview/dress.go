package preview

import (
	"cmp"
	"errors"
	"io/fs"
	"maps"
	"path"
	"slices"

	"stillroom/themes"
)

// A dress is the theme that the pages are made with.
type dress struct {
	fsys    fs.FS
	files   map[string]stamp // of all the site's own themes
	changed []string         // those that changed last, in order
	worn    *themes.Theme
	name    string
	stale   bool
	faults  []Trouble
}

// look looks whether a file of the site's own themes has changed.
func (d *dress) look() bool {
	files := found(d.fsys, "themes")
	maps.DeleteFunc(files, func(name string, _ stamp) bool { return themes.IsForeign(path.Base(name)) })
	if maps.Equal(files, d.files) {
		return false
	}
	d.changed = nil
	for name, s := range files {
		if d.files[name] != s {
			d.changed = append(d.changed, name)
		}
	}
	for name := range d.files {
		if _, ok := files[name]; !ok {
			d.changed = append(d.changed, name)
		}
	}
	slices.Sort(d.changed)
	d.files, d.stale = files, true
	return true
}

// of gives the theme of a name, and what is wrong with it: the theme as it was
// before, or the built-in one, stands in for one that cannot be used.
func (d *dress) of(name string) (*themes.Theme, []Trouble) {
	name = cmp.Or(name, themes.BuiltIn)
	if d.worn != nil && d.name == name && !d.stale {
		return d.worn, d.faults
	}
	d.name, d.stale, d.faults = name, false, nil
	folder := "themes/" + name
	t, err := load(d.fsys, folder, name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		d.faults = []Trouble{{folder, "is the site's theme, but there is no such folder; the pages wear the built-in theme"}}
		d.worn = nil
	case err != nil:
		d.faults = []Trouble{{folder, "cannot be used: " + err.Error()}}
		if _, ok := errors.AsType[*fs.PathError](err); ok { // the disk is at fault, and may be sound the next time
			d.files = nil
		}
	default:
		d.worn = t
	}
	if d.worn == nil {
		d.worn, _ = themes.Load(nil)
	}
	return d.worn, d.faults
}

// load reads a theme of the site's own, which may be missing if it is the
// built-in one.
func load(fsys fs.FS, folder, name string) (*themes.Theme, error) {
	info, err := fs.Stat(fsys, folder)
	if errors.Is(err, fs.ErrNotExist) && name == themes.BuiltIn {
		return themes.Load(nil)
	}
	if err != nil {
		return nil, err
	}
	if !info.IsDir() {
		return nil, fs.ErrNotExist
	}
	own, err := fs.Sub(fsys, folder)
	if err != nil {
		return nil, err
	}
	return themes.Load(own)
}
