package main

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"stillroom/build"
	"stillroom/build/preview"
	"stillroom/themes"
	"stillroom/validate"
)

const publishHelp = `Check a site, then write all of it. With one error nothing is written, and what
was published stays as it was.

    stillroom publish [SITE] [--to DIR]

    --to DIR      where to write; SITE/published if neither this nor the
                  destination of content/site.yaml says otherwise
    --day DATE    publish as of that day and not of today: 2026-07-31

For example:

    stillroom publish ~/larder --to /srv/www/larder

The folder is exchanged for the new one in one step. It must hold nothing that
Stillroom did not put there.
`

type publishCommand struct {
	Site string `arg:"" optional:"" default:"."`
	To   string
	Day  day
}

func (c *publishCommand) run(p *program) int {
	progress := p.startProgress()
	j, err := p.judge(c.Site, c.Day, progress)
	if err != nil || !j.ok {
		progress.end()
		return p.refuse(j, err)
	}
	dir, files, written, err := c.publish(j, progress)
	progress.end()
	var broken build.BrokenPictures
	if errors.As(err, &broken) {
		j.report = validate.BrokenWithin(j.site, broken)
		return p.refuse(j, nil)
	}
	if err != nil {
		return p.fail(err)
	}
	writeText(p.err, withoutAdvice(j.report), colourFor(p.err))
	p.sayPublished(dir, files, written)
	p.sayLeftOut(j.checked)
	if err := c.remember(p, j.checked); err != nil {
		return p.fail(fmt.Errorf("the site is published, but not by which guids: %w", err))
	}
	p.say("To look at it while you write: stillroom preview %s", c.Site)
	return succeeded
}

// refuse says why nothing is published.
func (p *program) refuse(j judged, err error) int {
	if err != nil {
		return p.fail(err)
	}
	writeText(p.err, withoutAdvice(j.report), colourFor(p.err))
	p.say("Nothing was written.")
	return refused
}

// withoutAdvice leaves to check what can wait.
func withoutAdvice(rep validate.Report) validate.Report {
	rep.Findings = slices.DeleteFunc(slices.Clone(rep.Findings), func(f validate.Finding) bool {
		return f.Severity == validate.Advice || f.Accepted != ""
	})
	return rep
}

// publish builds the site and puts it on disk.
func (c *publishCommand) publish(j judged, progress *progress) (dir string, files []build.File, w build.Written, err error) {
	if dir, err = c.destination(j.site.Settings.Destination.V); err != nil {
		return dir, nil, w, err
	}
	theme, err := c.theme(j.site.Settings.Theme.V)
	if err != nil {
		return dir, nil, w, err
	}
	progress.begin("building")
	cache := openCache()
	darkroom := &build.Darkroom{Cache: cache, Progress: progress.stepOf("printing pictures:", "building")}
	if files, err = build.Site(j.checked, theme, darkroom); err != nil {
		return dir, nil, w, err
	}
	progress.begin("writing")
	w, err = build.Output{Dir: dir, Progress: progress.step}.Write(files)
	if disk, ok := cache.(diskCache); ok {
		disk.tidy(time.Now(), mostKept)
	}
	return dir, files, w, err
}

// destination is the folder to write to. It may not lie where the site is read
// from.
func (c *publishCommand) destination(fromSettings string) (string, error) {
	dir := c.To
	if dir == "" {
		dir = filepath.FromSlash(cmp.Or(fromSettings, "published"))
		if !filepath.IsAbs(dir) {
			dir = filepath.Join(c.Site, dir)
		}
	}
	for _, source := range []string{"content", "themes"} {
		if within(filepath.Join(c.Site, source), dir) {
			return "", fmt.Errorf("%s lies in the site's %s folder, which is read and never written", dir, source)
		}
	}
	return dir, nil
}

// within reports whether a path is a folder or lies in it.
func within(folder, name string) bool {
	from, err1 := filepath.Abs(folder)
	to, err2 := filepath.Abs(name)
	rel, err3 := filepath.Rel(from, to)
	return errors.Join(err1, err2, err3) == nil && filepath.IsLocal(rel)
}

// theme is the built-in theme, under the files of the site's own.
func (c *publishCommand) theme(name string) (*themes.Theme, error) {
	name = cmp.Or(name, themes.BuiltIn)
	dir := filepath.Join(c.Site, "themes", name)
	info, err := os.Stat(dir)
	switch {
	case err == nil && info.IsDir():
		files, err := fs.Sub(preview.Folder(c.Site), path.Join("themes", name))
		if err != nil {
			return nil, err
		}
		return themes.Load(files)
	case name == themes.BuiltIn && errors.Is(err, fs.ErrNotExist):
		return themes.Load(nil)
	}
	return nil, fmt.Errorf("the site's theme is %s, but there is no folder %s", name, dir)
}

func (p *program) sayPublished(dir string, files []build.File, w build.Written) {
	pages := 0
	for _, f := range files {
		pages += one(strings.HasSuffix(f.Path, ".html"))
	}
	p.say("Published %s to %s: %s, %d of them new or changed; %d gone.",
		count(pages, "page"), dir, count(w.Files, "file"), w.Files-w.Same, w.Gone)
	if !w.OneStep {
		p.say("This disk cannot exchange folders, so the files were put in place one by one.")
	}
}

// sayLeftOut says what readers do not get, and why.
func (p *program) sayLeftOut(c validate.Checked) {
	if c.Site().Settings.Address.V == "" {
		p.say("Left out for want of an address in content/site.yaml: feeds, sitemap and structured data.")
	}
	const few = 5
	held := build.HeldBack(c)
	for i, h := range held {
		switch {
		case i == few:
			p.say("Held back: %d more.", len(held)-few)
			return
		case h.Until.IsZero():
			p.say("Held back: %s, a draft.", h.File)
		default:
			p.say("Held back: %s, until %s.", h.File, h.Until)
		}
	}
}
