package main

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"

	"stillroom/content"
	"stillroom/content/intake"
)

// startText begins a recipe or an episode.
func (c *startCommand) startText(p *program) int {
	err := c.understood()
	site := cmp.Or(c.To, ".")
	if err == nil {
		err = isSite(site)
	}
	if err == nil && c.Dir == "recipe" {
		err = c.startRecipe(p, site)
	} else if err == nil {
		err = c.startEpisode(p, site)
	}
	if err != nil {
		return p.fail(err)
	}
	return succeeded
}

// understood reports what else may have been meant.
func (c *startCommand) understood() error {
	name := strings.TrimSpace(strings.Join(c.Name, " "))
	onlyOfRecipes := c.Kind + c.Way + c.Process + strings.Join(c.Produce, "")
	switch {
	case c.Dir != "recipe" && c.Dir != "episode":
		return fmt.Errorf("start takes one folder, or else: stillroom start recipe %s", strings.Join(append([]string{c.Dir}, c.Name...), " "))
	case name == "":
		return fmt.Errorf("give the %s a name, as in stillroom start %[1]s Damson jam; for a folder named %[1]s, stillroom start .%[2]c%[1]s", c.Dir, filepath.Separator)
	case content.Slug(name) == "":
		return fmt.Errorf("no address can be made of the name %q: it needs a letter or a digit", name)
	case c.Dir == "episode" && onlyOfRecipes != "":
		return errors.New("an episode has a name and --to; all else is for recipes")
	}
	return nil
}

// begin writes a new text into a site, unless its address is taken.
func begin(site string, text intake.File) error {
	slug := path.Base(text.Path)
	err := fs.WalkDir(os.DirFS(site), path.Dir(text.Path), func(name string, e fs.DirEntry, err error) error {
		if err == nil && strings.EqualFold(path.Base(name), slug) {
			return fmt.Errorf("%s is there already, and was left as it is; give the new one another name", name)
		}
		return nil
	})
	if err != nil {
		return err
	}
	name := filepath.Join(site, filepath.FromSlash(text.Path))
	if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
		return err
	}
	return create(name, text.Data)
}

// create writes a new file in one step. What is there stays as it is.
func create(name string, text []byte) error {
	next, err := os.CreateTemp(filepath.Dir(name), ".stillroom-start-*")
	if err == nil {
		defer os.Remove(next.Name())
		err = writeAll(next, text, 0o644)
	}
	if err != nil {
		if path, ok := errors.AsType[*fs.PathError](err); ok {
			err = path.Err // without the name of the file beside it
		}
		return fmt.Errorf("write %s: %w", name, err)
	}
	err = os.Link(next.Name(), name)
	if errors.Is(err, fs.ErrExist) {
		return fmt.Errorf("%s is there already, and was left as it is", name)
	}
	if err != nil { // a disk without links, which cannot do it in one step
		return createInPlace(name, text)
	}
	return nil
}

func createInPlace(name string, text []byte) error {
	w, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	if err := writeAll(w, text, 0o644); err != nil {
		os.Remove(name)
		return fmt.Errorf("write %s: %w", name, err)
	}
	return nil
}
