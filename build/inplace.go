package build

import (
	"cmp"
	"errors"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// moveIn puts the files of a finished folder one by one into the old site,
// where the two cannot be exchanged. What pages point at comes before them,
// and what is no more goes last, so that a reader meets no broken page.
func moveIn(next string, old *tree, files []File) error {
	made := maps.Clone(old.made)
	for _, f := range files {
		made[f.Path] = true
	}
	list := filepath.Join(old.dir, ListName)
	if err := writeSynced(list, manifest(slices.Sorted(maps.Keys(made)))); err != nil {
		return err
	}
	inTurn := slices.Clone(files)
	slices.SortStableFunc(inTurn, func(a, b File) int { return cmp.Compare(turn(a.Path), turn(b.Path)) })
	for _, f := range inTurn {
		if err := moveFile(next, old.dir, f.Path); err != nil {
			return err
		}
	}
	for _, p := range old.without(files) {
		if err := removeFile(old.dir, p); err != nil {
			return err
		}
	}
	return moveFile(next, old.dir, ListName)
}

// turn says when a file is moved: assets, pages, lists of pages, feeds.
func turn(p string) int {
	switch depth := strings.Count(p, "/"); {
	case !strings.HasSuffix(p, "/index.html") && depth > 0:
		return 0
	case depth > 1:
		return 1
	case strings.HasSuffix(p, ".html"):
		return 2
	}
	return 3
}

// moveFile moves one file from folder to folder. Between two disks it is
// copied beside its place first.
func moveFile(from, to, p string) error {
	src, dst := filepath.Join(from, filepath.FromSlash(p)), filepath.Join(to, filepath.FromSlash(p))
	if err := os.MkdirAll(filepath.Dir(dst), 0o777); err != nil {
		return err
	}
	if os.Rename(src, dst) == nil {
		return nil
	}
	data, err := os.Open(src)
	if err != nil {
		return err
	}
	defer data.Close()
	moving, err := os.Create(dst + movingSuffix)
	if err != nil {
		return err
	}
	_, err = moving.ReadFrom(data)
	if err := errors.Join(err, moving.Sync(), moving.Close()); err != nil {
		return err
	}
	return os.Rename(moving.Name(), dst)
}

// removeFile removes a file, and the folders that are empty without it.
func removeFile(dir, p string) error {
	err := os.Remove(filepath.Join(dir, filepath.FromSlash(p)))
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	for up := filepath.Dir(filepath.FromSlash(p)); up != "."; up = filepath.Dir(up) {
		if os.Remove(filepath.Join(dir, up)) != nil {
			break // not empty
		}
	}
	return nil
}
