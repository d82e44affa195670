package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"

	"stillroom/content"
	"stillroom/validate"
)

const fillHelp = `Write into a recipe the canning values of the process that it cites.

    stillroom fill FILE

    --day DATE    the day of the check, if it is not today: 2026-07-31

Pack, headspace, acid to each jar, and for each size of jar the times or the
pressures by altitude are written where they are missing or fall short, and the
edition and the day of the check. What agrees with the process stays as it is
written, and so does every other byte of the file. Without a size of jar all
tested ones are written. Times under 10 minutes are written for sterilised jars
only: jars_sterilised is yours to set.

For example, when a recipe says no more than its process:

    stillroom fill content/recipes/damson-preserves.md

It ends with 0 if the recipe agrees with its process now, 1 if it does not or
it is not plain what to write, and then nothing is written, 2 if it could not
run. It does not say that a recipe is safe.
`

type fillCommand struct {
	File string `arg:"" name:"FILE"`
	Day  day
}

func (c *fillCommand) run(p *program) int {
	if err := c.isForRecipe(); err != nil {
		return p.fail(err)
	}
	before, err := os.ReadFile(c.File)
	if err != nil {
		return p.fail(err)
	}
	r, _ := content.ReadRecipe(filepath.ToSlash(c.File), before)
	if r.Withdrawn != nil {
		return p.refuseWithdrawn(r)
	}
	filled, why := validate.Fill(filepath.ToSlash(c.File), before, c.Day.orToday())
	if len(why) > 0 {
		p.show(why)
		p.say("Nothing was written.")
		return refused
	}
	if err := save(c.File, before, filled.Data); err != nil {
		return p.fail(err)
	}
	for _, w := range filled.Written {
		fmt.Fprintf(p.out, "%s: %s\n", c.File, w)
	}
	for _, r := range filled.Remarks {
		p.say("%s", r)
	}
	return p.sayLeft(r, filled)
}

// isForRecipe refuses what is there, but is no recipe of the site in which it
// lies. A recipe may lie elsewhere while it is written.
func (c *fillCommand) isForRecipe() error {
	if err := isFile(c.File); err != nil {
		return err
	}
	site, err := siteOf(c.File)
	if err != nil {
		return nil
	}
	if file, ok := relativeTo(site, c.File); ok && content.SortOf(file) != content.ARecipe {
		return noRecipe(file)
	}
	return nil
}

// show prints findings without their counts.
func (p *program) show(fs []validate.Finding) {
	for _, f := range fs {
		writeFinding(p.out, f, colourFor(p.out))
	}
}

// sayLeft says what fill could not put right, or that there was nothing to do.
func (p *program) sayLeft(r *content.Recipe, filled validate.Filled) int {
	if len(filled.Left) > 0 {
		p.show(filled.Left)
		p.say("These are yours to put right. Until then the recipe is not said to be checked.")
		return refused
	}
	cites := slices.ContainsFunc(r.Keeping, func(k content.Keeping) bool { return k.Process.Set() })
	switch {
	case len(filled.Written) > 0:
	case !cites:
		p.say("It cites no process, so there are no values to write in. stillroom processes lists those that there are.")
	default:
		p.say("Nothing had to be written.")
	}
	return succeeded
}

// save puts a text in the place of a file in one step, unless it holds the same
// or was changed by somebody else in the meantime.
func save(name string, before, after []byte) error {
	if bytes.Equal(before, after) {
		return nil
	}
	target, err := filepath.EvalSymlinks(name)
	if err != nil {
		return err
	}
	info, err := os.Stat(target)
	if err != nil {
		return err
	}
	if f, err := os.OpenFile(target, os.O_WRONLY, 0); err != nil {
		return err // a file that may not be written to is not put aside either
	} else if err := f.Close(); err != nil {
		return err
	}
	next, err := os.CreateTemp(filepath.Dir(target), ".stillroom-fill-*")
	if err != nil {
		return err
	}
	defer os.Remove(next.Name())
	if err := writeAll(next, after, info.Mode()); err != nil {
		return fmt.Errorf("write %s: %w", name, err)
	}
	if now, err := os.ReadFile(target); err != nil || !bytes.Equal(now, before) {
		return fmt.Errorf("%s was changed by another program; nothing was written", name)
	}
	return os.Rename(next.Name(), target)
}

// writeAll writes a file to the disk and closes it.
func writeAll(f *os.File, text []byte, mode os.FileMode) error {
	_, err := f.Write(text)
	if err == nil {
		err = f.Chmod(mode)
	}
	if err == nil {
		err = f.Sync()
	}
	if e := f.Close(); err == nil {
		err = e
	}
	return err
}
