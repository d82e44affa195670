package main

import (
	"bytes"
	"cmp"
	"crypto/sha256"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"stillroom/build"
)

// A diskCache keeps the prints of pictures in the folder in which the system
// lets programs keep what they can make again. All sites share it. Each file
// holds a hash and what is kept, so that one that was damaged is as good as
// none.
type diskCache struct {
	dir string
}

// What a cache may hold: nothing that was not used for a season, and no more
// than this in all.
const (
	keptFor    = 90 * 24 * time.Hour
	mostKept   = 1 << 30
	halfMadeIs = time.Hour      // after which an unfinished file is nobody's
	touchEvery = 24 * time.Hour // how exactly it is known when a file was used
)

const halfMade = ".part"

// openCache gives the user's own cache; nil where there is no home for it.
func openCache() build.Cache {
	if c, ok := cacheOf("prints"); ok {
		return c
	}
	return nil
}

// cacheOf gives a part of the user's cache, if there is a home for it.
func cacheOf(what string) (c diskCache, ok bool) {
	dir, err := os.UserCacheDir()
	if err != nil {
		return diskCache{}, false
	}
	if _, err := os.Stat(filepath.Dir(dir)); err != nil { // no home is made for it
		return diskCache{}, false
	}
	return diskCache{filepath.Join(dir, "stillroom", what)}, true
}

// Get reads what is kept, and notes that it was used.
func (c diskCache) Get(key string) ([]byte, bool) {
	name := c.name(key)
	data, err := os.ReadFile(name)
	if err != nil || len(data) < sha256.Size {
		return nil, false
	}
	sum := sha256.Sum256(data[sha256.Size:])
	if !bytes.Equal(sum[:], data[:sha256.Size]) {
		return nil, false
	}
	now := time.Now()
	if info, err := os.Stat(name); err == nil && now.Sub(info.ModTime()) > touchEvery {
		_ = os.Chtimes(name, now, now)
	}
	return data[sha256.Size:], true
}

// Put writes a file beside its place and moves it there, so that another
// process meets the whole of it or nothing.
func (c diskCache) Put(key string, data []byte) error {
	name := c.name(key)
	if err := os.MkdirAll(filepath.Dir(name), 0o700); err != nil {
		return err
	}
	f, err := os.CreateTemp(filepath.Dir(name), "*"+halfMade)
	if err != nil {
		return err
	}
	sum := sha256.Sum256(data)
	_, err1 := f.Write(sum[:])
	_, err2 := f.Write(data)
	if err := errors.Join(err1, err2, f.Close()); err != nil {
		os.Remove(f.Name())
		return err
	}
	if err := os.Rename(f.Name(), name); err != nil {
		os.Remove(f.Name())
		return err
	}
	return nil
}

// name spreads the files over folders, which some systems are slow to list
// when they are large.
func (c diskCache) name(key string) string {
	return filepath.Join(c.dir, key[len(key)-2:], key)
}

// A keptFile is one file of a cache.
type keptFile struct {
	name string
	size int64
	used time.Time
}

// tidy forgets what was not used for long, and of the rest what was used least
// lately, until no more is left than most bytes.
func (c diskCache) tidy(now time.Time, most int64) {
	files := c.files()
	slices.SortFunc(files, func(a, b keptFile) int {
		return cmp.Or(b.used.Compare(a.used), strings.Compare(a.name, b.name))
	})
	var total int64
	for _, f := range files { // the last used comes first
		age := now.Sub(f.used)
		total += f.size
		if total > most || age > keptFor || strings.HasSuffix(f.name, halfMade) && age > halfMadeIs {
			_ = os.Remove(f.name)
			total -= f.size
		}
	}
}

func (c diskCache) files() []keptFile {
	var files []keptFile
	_ = filepath.WalkDir(c.dir, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return nil // another process may be tidying
		}
		if info, err := d.Info(); err == nil {
			files = append(files, keptFile{name, info.Size(), info.ModTime()})
		}
		return nil
	})
	return files
}
