package main

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"hash"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"time"

	"stillroom/build/seal"
	"stillroom/content"
)

// smallInput is up to how many bytes a file of a site is read to tell whether
// it has changed: all texts, and pictures made for the web. A recording is
// known by its marks.
const smallInput = 1 << 20

// madeOf stands for all that the files of the published site depend on but the
// guids: the program with its tables and its theme, the flags and the day, and
// whatever lies in the site's folders. Began is as in [seal.Look].
func (c *publishCommand) madeOf(began time.Time) (string, error) {
	return c.lookedAt(seal.Look{Began: began, Small: smallInput})
}

// marksOf stands for the same, and changes if a file is written at all.
func (c *publishCommand) marksOf(began time.Time) (string, error) {
	return c.lookedAt(seal.Look{Began: began})
}

func (c *publishCommand) lookedAt(l seal.Look) (string, error) {
	h := sha256.New()
	fmt.Fprintln(h, versionName(), released, c.Day, c.Precompress)
	l.Pass = c.guidsFile()
	err := errors.Join(
		itself(l, h),
		l.Folder(h, filepath.Join(c.Site, "content")),
		l.Folder(h, filepath.Join(c.Site, "themes")),
	)
	return hex.EncodeToString(h.Sum(nil)), err
}

// itself puts in the running program. Linux tells which file that is even if
// another has taken its name since: proc_pid_exe(5).
func itself(l seal.Look, h hash.Hash) error {
	const running = "/proc/self/exe"
	if l.File(h, running) == nil {
		return nil
	}
	name, err := os.Executable()
	if err != nil {
		return err
	}
	return l.File(h, name)
}

func (c *publishCommand) guidsFile() string {
	return filepath.Join(c.Site, filepath.FromSlash(content.GUIDsFile))
}

// withGUIDs adds the guids as they are now. Publishing itself writes them, and
// the site is the same with those that it wrote as with none.
func (c *publishCommand) withGUIDs(made string) (string, error) {
	h := sha256.New()
	f, err := os.Open(c.guidsFile())
	fmt.Fprintln(h, made, err == nil)
	switch {
	case err == nil:
		defer f.Close()
		_, err = io.Copy(h, f)
	case errors.Is(err, fs.ErrNotExist):
		err = nil
	}
	return hex.EncodeToString(h.Sum(nil)), err
}
