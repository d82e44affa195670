package content

import (
	"errors"
	"fmt"
	"io/fs"
	"math"
	"path"
	"slices"
	"strings"
	"unicode/utf8"
)

// A walk lists files, until the first error.
type walk struct {
	fsys   fs.FS
	faults []Fault
	err    error
}

// each gives every file in and below a folder, which may be missing.
func (w *walk) each(folder string, found func(file string, kind fs.FileMode) error) {
	if leadsOut(w.fsys, folder) {
		w.refuse(folder, "this is a link that leads out of the site", "put the folder itself here")
		return
	}
	if _, err := fs.Stat(w.fsys, folder); w.err != nil || errors.Is(err, fs.ErrNotExist) {
		return
	}
	w.err = fs.WalkDir(w.fsys, folder, func(file string, e fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return fmt.Errorf("read %s: %w", file, err)
		case isForeign(e.Name()) && e.IsDir():
			return fs.SkipDir
		case isForeign(e.Name()) || e.IsDir():
			return nil
		case !utf8.ValidString(file):
			w.refuse(strings.ToValidUTF8(file, "\uFFFD"), "the name of this file is not UTF-8", "name it anew")
			return nil
		case strings.ContainsFunc(file, isUnwritten):
			w.refuse(strings.Map(replaceUnwritten, file), "the name of this file holds a character that is not seen", "name it anew")
			return nil
		}
		return found(file, e.Type())
	})
}

// isUnwritten reports whether a character of a name would be obeyed, or hide the
// name, where it is printed.
func isUnwritten(r rune) bool { return r == '\t' || isControl(r) || isHidden(r) }

func replaceUnwritten(r rune) rune {
	if isUnwritten(r) {
		return utf8.RuneError
	}
	return r
}

// has reports whether there is a file at a path, and it may be read.
func (w *walk) has(file string) bool {
	info, err := fs.Lstat(w.fsys, file)
	return !errors.Is(err, fs.ErrNotExist) && (err != nil || w.follow(file, info.Mode().Type()))
}

// texts lists the Markdown files of a folder, in order of their paths.
func (w *walk) texts(folder string) (list []string) {
	w.each(folder, func(file string, kind fs.FileMode) error {
		switch sortOfText(file, ARecipe) {
		case ARecipe:
			if w.follow(file, kind) {
				list = append(list, file)
			}
		case Misnamed:
			w.faults = append(w.faults, MisnamedFault(file))
		}
		return nil
	})
	slices.Sort(list)
	return list
}

// files lists the files of a folder that are used as they are, by their paths
// without prefix.
func (w *walk) files(folder, prefix string, wanted func(name string) bool) map[string]File {
	list := make(map[string]File)
	w.each(folder, func(file string, kind fs.FileMode) error {
		if !wanted(file) || !w.follow(file, kind) {
			return nil
		}
		info, err := fs.Stat(w.fsys, file) // not that of the entry, which may be a link
		if err != nil {
			return fmt.Errorf("read %s: %w", file, err)
		}
		if w.tooLarge(file, info.Size(), mostOf(file)) {
			return nil
		}
		list[strings.TrimPrefix(file, prefix)] = File{Path: file, Size: info.Size(), Changed: info.ModTime().UnixNano()}
		return nil
	})
	return list
}

// mostOf is the most bytes that a file used as it is may have. A recording is
// read a little at a time, and has no limit.
func mostOf(file string) int64 {
	const (
		maxPicture = 100 << 20 // what a camera of 60 megapixels writes without compression
		maxDrawing = 4 << 20
	)
	switch {
	case SoundFormatOf(file) != "":
		return math.MaxInt64
	case isMedia(file):
		return maxFile // a transcript: ten hours of talk
	case strings.EqualFold(path.Ext(file), ".svg"):
		return maxDrawing
	}
	return maxPicture
}

// isForeign reports whether a file is not the cook's: hidden, or something
// that an editor or the Go tools keep beside the text.
func isForeign(name string) bool {
	return strings.HasPrefix(name, ".") || strings.HasSuffix(name, "~") || strings.HasPrefix(name, "#") && strings.HasSuffix(name, "#") ||
		slices.Contains([]string{".swp", ".swo", ".tmp", ".go"}, path.Ext(name))
}

// isPicture takes every file: what is no picture is told to the one who shows it.
func isPicture(string) bool { return true }

// isMedia reports whether a file beside the show notes is a recording or a
// transcript.
func isMedia(name string) bool {
	return SoundFormatOf(name) != "" || slices.Contains([]string{".vtt", ".srt"}, strings.ToLower(path.Ext(name)))
}
