package content

import (
	"embed"
	"io"
	"io/fs"
	"strings"
	"time"
)

//go:embed site.yaml recipes episodes pages pictures
var example embed.FS

// Starter is the example site, shaped as a site's folder: it holds content/
// and nothing else.
var Starter fs.FS = starter{example}

// A starter puts a file system below a folder named content.
type starter struct{ below fs.FS }

const starterFolder = "content"

// Open opens a file or a folder, as fs.FS asks.
func (s starter) Open(name string) (fs.File, error) {
	switch {
	case !fs.ValidPath(name):
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrInvalid}
	case name == ".":
		return &folder{info: folderInfo("."), entries: []fs.DirEntry{fs.FileInfoToDirEntry(folderInfo(starterFolder))}}, nil
	case name == starterFolder:
		entries, err := fs.ReadDir(s.below, ".")
		return &folder{info: folderInfo(starterFolder), entries: entries}, err
	}
	below, ok := strings.CutPrefix(name, starterFolder+"/")
	if !ok {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrNotExist}
	}
	return s.below.Open(below)
}

// A folder is an open folder.
type folder struct {
	info    folderInfo
	entries []fs.DirEntry // those that were not read yet
}

func (f *folder) Stat() (fs.FileInfo, error) { return f.info, nil }
func (f *folder) Close() error               { return nil }
func (f *folder) Read([]byte) (int, error) {
	return 0, &fs.PathError{Op: "read", Path: string(f.info), Err: fs.ErrInvalid}
}

// ReadDir gives the next n entries, or all that are left, as fs.ReadDirFile
// asks.
func (f *folder) ReadDir(n int) ([]fs.DirEntry, error) {
	if n <= 0 || n > len(f.entries) {
		if n > 0 && len(f.entries) == 0 {
			return nil, io.EOF
		}
		n = len(f.entries)
	}
	next := f.entries[:n:n]
	f.entries = f.entries[n:]
	return next, nil
}

// folderInfo describes a folder by its name, as an embedded one is described.
type folderInfo string

func (i folderInfo) Name() string     { return string(i) }
func (folderInfo) Size() int64        { return 0 }
func (folderInfo) Mode() fs.FileMode  { return fs.ModeDir | 0o555 }
func (folderInfo) ModTime() time.Time { return time.Time{} }
func (folderInfo) IsDir() bool        { return true }
func (folderInfo) Sys() any           { return nil }
