package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"stillroom/content"
)

const startHelp = `Write the starter site into a new or empty folder.

    stillroom start DIR

The starter is a small blog with recipes, episodes and pages to look at and to
replace. For example:

    stillroom start ~/larder
    stillroom preview ~/larder
    stillroom check ~/larder
    stillroom publish ~/larder

It ends with 2, and writes nothing, if DIR holds any file.
`

type startCommand struct {
	Dir string `arg:"" name:"DIR"`
}

func (c *startCommand) run(p *program) int {
	n, err := start(c.Dir, content.Starter)
	if err != nil {
		return p.fail(err)
	}
	p.say("Wrote %s to %s. What to do next:", count(n, "file"), show(c.Dir))
	p.say("    stillroom preview %s", c.Dir)
	p.say("    stillroom check %s", c.Dir)
	p.say("    stillroom publish %s", c.Dir)
	return succeeded
}

// unfinished is where the starter site is made ready, so that a folder never
// holds half of it.
const unfinished = ".stillroom-start"

// start writes the starter site into a folder, all of it or nothing, and says
// how many files it has.
func start(dir string, starter fs.FS) (files int, err error) {
	isNew, err := claim(dir)
	if err != nil {
		return 0, err
	}
	ready := filepath.Join(dir, unfinished)
	defer func() {
		os.RemoveAll(ready)
		if err != nil && isNew {
			os.Remove(dir)
		}
	}()
	if err := os.RemoveAll(ready); err != nil {
		return 0, err
	}
	if err := os.CopyFS(ready, starter); err != nil {
		return 0, fmt.Errorf("write the starter site: %w", err)
	}
	if err := moveUp(ready, dir); err != nil {
		return 0, fmt.Errorf("write the starter site: %w", err)
	}
	return countFiles(starter)
}

// claim makes the folder unless it is there and empty.
func claim(dir string) (isNew bool, err error) {
	entries, err := os.ReadDir(dir)
	if errors.Is(err, fs.ErrNotExist) {
		return true, os.MkdirAll(dir, 0o777)
	}
	if err != nil {
		return false, err
	}
	for _, e := range entries {
		if e.Name() != unfinished { // left behind when a start was killed
			return false, fmt.Errorf("%s holds %s; the starter site goes into a new or empty folder", show(dir), e.Name())
		}
	}
	return false, nil
}

// moveUp moves what is in a folder to the folder above it, or nothing.
func moveUp(from, to string) error {
	entries, err := os.ReadDir(from)
	if err != nil {
		return err
	}
	for i, e := range entries {
		if err := os.Rename(filepath.Join(from, e.Name()), filepath.Join(to, e.Name())); err != nil {
			for _, e := range entries[:i] {
				os.RemoveAll(filepath.Join(to, e.Name()))
			}
			return err
		}
	}
	return nil
}

func countFiles(fsys fs.FS) (n int, err error) {
	err = fs.WalkDir(fsys, ".", func(_ string, d fs.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			n++
		}
		return err
	})
	return n, err
}
