package preview

import (
	"errors"
	"fmt"
	"io/fs"
)

// A Trouble is something that stands in the way of the preview itself, and is
// not the recipes' fault.
type Trouble struct {
	File string `json:"file"` // or folder, relative to the site's; empty if it is none in particular
	Text string `json:"text"` // what is wrong, to follow on the name
}

// trouble notes what stands in the way of reading a file. What was read of it
// before stays.
func (b *copybook) trouble(file, what string) outcome {
	is := b.troubles[file]
	b.troubles[file] = what
	return changedIf(is != what)
}

// cure reports whether there was trouble, and there is no more.
func (b *copybook) cure(file string) bool {
	_, was := b.troubles[file]
	delete(b.troubles, file)
	return was
}

func changedIf(is bool) outcome {
	if is {
		return changed
	}
	return same
}

// notFollowed says why a file cannot be read.
func notFollowed(fsys fs.FS, file string, err error) string {
	if target, linkErr := fs.ReadLink(fsys, file); linkErr == nil {
		return fmt.Sprintf("is a link out of the site, to %s, and is not followed", target)
	}
	if path, ok := errors.AsType[*fs.PathError](err); ok {
		err = path.Err
	}
	return "cannot be read: " + err.Error()
}
