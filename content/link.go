package content

import (
	"fmt"
	"io/fs"
	"path"
	"strings"
)

// mostLinks is how many links may lead on to one another: as many as Linux
// follows.
const mostLinks = 40

// leadsOut reports whether a file lies outside the site once all links on the
// way to it are followed. What cannot be looked at leads nowhere.
func leadsOut(fsys fs.FS, file string) bool {
	at, links := ".", 0
	for rest := file; rest != ""; {
		var name string
		name, rest, _ = strings.Cut(rest, "/")
		switch name {
		case "", ".":
			continue
		case "..":
			if at == "." {
				return true
			}
			at = path.Dir(at)
			continue
		}
		next := path.Join(at, name)
		target, err := fs.ReadLink(fsys, next)
		if err != nil { // no link
			at = next
			continue
		}
		if links++; links > mostLinks || strings.HasPrefix(target, "/") || strings.ContainsAny(target, `\:`) {
			return true
		}
		rest = target + "/" + rest
	}
	return false
}

// follow reports whether a file or folder may be read: a link that leads out of
// the site would publish what its author never put there, and a pipe or a
// device never ends.
func (w *walk) follow(file string, kind fs.FileMode) bool {
	switch {
	case kind&fs.ModeSymlink == 0 && (kind.IsRegular() || kind.IsDir()):
		return true
	case kind&fs.ModeSymlink == 0:
		w.refuse(file, "this is no regular file, and is not read", "take it away")
		return false
	case leadsOut(w.fsys, file):
		w.refuse(file, "this is a link that leads out of the site", "put what it leads to here itself")
		return false
	}
	info, err := fs.Stat(w.fsys, file)
	switch {
	case err != nil:
		w.refuse(file, "this is a link to a file that is not there", "put the file itself here")
	case !info.Mode().IsRegular():
		w.refuse(file, "this is a link to no regular file, and is not followed", "put the files themselves here")
	default:
		return true
	}
	return false
}

func (w *walk) refuse(file, message, advice string) {
	w.faults = append(w.faults, Fault{Pos: Pos{File: file}, Kind: BadFileName, Message: message, Advice: advice})
}

// tooLarge reports a file of more than so many bytes, which is not read.
func (w *walk) tooLarge(file string, size, most int64) bool {
	if size > most {
		w.refuse(file, fmt.Sprintf("the file holds %d MB, and no more than %d MB are read", size>>20, most>>20), "save it smaller")
	}
	return size > most
}
