package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"syscall"

	"github.com/google/uuid"

	"stillroom/content"
)

const startHelp = `Begin a site, a recipe or an episode.

    stillroom start DIR
    stillroom start recipe NAME...
    stillroom start episode NAME...

start DIR writes the starter site into a new or empty folder: a small blog to
look at and to replace. For example:

    stillroom start ~/larder
    stillroom preview ~/larder

start recipe and start episode write a draft into the site of the current folder.
What is left for you is blank or marked "# check: ...", and check and preview tell
of it until it is done. For example:

    stillroom start recipe Pickled green beans --process dilled-beans-raw

    --to SITE          the site to write into, if it is not the current folder
    --kind KIND        jam, pickle, ...; guessed from the name if left out
    --produce A,B      the main produce; guessed from the name if left out
    --way WAY          how it keeps: boiling-water, freezer, fermenting, ...
    --process ID       the tested process that it follows: its values are written
                       as fill writes them

Without --process no process is taken: those that were tested for such food are
listed in the draft, to choose from.

It ends with 2, and writes nothing, if DIR holds any file, or if the recipe or
episode is there already.
`

type startCommand struct {
	Dir  string   `arg:"" name:"DIR"`
	Name []string `arg:"" optional:"" name:"NAME"`
	startFlags
}

// startFlags say more of a recipe or an episode that is begun.
type startFlags struct {
	To      string
	Kind    string
	Produce []string
	Way     string
	Process string
}

func (c *startCommand) run(p *program) int {
	if is := c.Dir == "recipe" || c.Dir == "episode"; is || len(c.Name) > 0 || !reflect.ValueOf(c.startFlags).IsZero() {
		return c.startText(p)
	}
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
	err = os.CopyFS(ready, starter)
	if err == nil {
		err = renewFeedID(ready)
	}
	if err == nil {
		err = moveUp(ready, dir)
	}
	if err != nil {
		return 0, fmt.Errorf("write the starter site to %s: %w", show(dir), plain(err))
	}
	return countFiles(starter)
}

// renewFeedID gives a new site's programme an ID of its own: by the starter's,
// players would take all that began with it for one programme.
func renewFeedID(dir string) error {
	name := filepath.Join(dir, "content", "site.yaml")
	text, err := os.ReadFile(name)
	if err != nil {
		return err
	}
	return os.WriteFile(name, feedID.ReplaceAll(text, []byte("${1}"+uuid.NewString())), 0o666)
}

var feedID = regexp.MustCompile(`(?m)^( *feed_id: )[0-9a-f-]{36}`)

// plain is what the system says, without the files that it was said of: nobody
// knows those that are made ready.
func plain(err error) error {
	if no, ok := errors.AsType[syscall.Errno](err); ok {
		return no
	}
	return err
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
