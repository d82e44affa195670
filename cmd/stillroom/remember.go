package main

import (
	"bytes"
	"errors"
	"io/fs"
	"os"

	"stillroom/build"
	"stillroom/validate"
)

// remember writes down by which guids episodes were published, if that is not
// known yet. The list is replaced in one step, so that it is never half there.
func (c *publishCommand) remember(p *program, published validate.Checked) error {
	guids := build.GUIDs(published)
	name := c.guidsFile()
	old, err := os.ReadFile(name)
	isNew := errors.Is(err, fs.ErrNotExist)
	switch {
	case err != nil && !isNew:
		return err
	case len(guids) == 0 && isNew, bytes.Equal(old, guids.Text()):
		return nil
	}
	if err := replaceFile(name, guids.Text()); err != nil {
		return err
	}
	if isNew {
		p.say("Wrote %s, by which players and feed readers know what is published: keep it with the site.", name)
	}
	return nil
}
