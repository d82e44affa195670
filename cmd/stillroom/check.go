package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"stillroom/validate"
)

const checkHelp = `Judge the recipes, episodes and pages of a site, and write nothing.

    stillroom check [SITE] [--only PATH...] [--format text|json|sarif]
                           [--strict] [--changes]

    --only PATH...   report on these files and folders alone
    --format json    give the findings to another program; sarif is the form
                     that code hosts and editors read (SARIF 2.1.0)
    --changes        with json: what readers may change in each recipe, what
                     they may not, and what nobody has tested
    --strict         let warnings count as errors
    --day DATE       judge as of that day and not of today: 2026-07-31

For example, before putting one recipe out:

    stillroom check --only content/recipes/damson-preserves.md

It ends with 0 if there is no error, 1 if there are errors, 2 if it could not
run. It does not say that a recipe is safe: it says whether the recipe agrees
with the tested process that it cites.
`

type checkCommand struct {
	Site    string   `arg:"" optional:"" default:"."`
	Format  string   `enum:"text,json,sarif" default:"text"`
	Only    []string `sep:"none"`
	Strict  bool
	Changes bool
	Day     day
}

func (c *checkCommand) run(p *program) int {
	if c.Changes && c.Format != "json" {
		return p.fail(errors.New("--changes goes with --format json"))
	}
	progress := p.startProgress()
	j, err := p.judge(c.Site, c.Day, progress)
	progress.end()
	if err != nil {
		return p.fail(err)
	}
	if len(c.Only) > 0 {
		only, err := inSite(c.Site, c.Only)
		if err != nil {
			return p.fail(err)
		}
		j.narrow(only)
	}
	if err := c.write(p, j); err != nil {
		return p.fail(fmt.Errorf("write the findings: %w", err))
	}
	return verdict(j.report.Counts, c.Strict)
}

func (c *checkCommand) write(p *program, j judged) error {
	switch c.Format {
	case "json":
		return writeJSON(p.out, j.report, c.changes(j))
	case "sarif":
		return writeSARIF(p.out, j.report, j.site.FS)
	}
	return writeText(p.out, j.report, colourFor(p.out))
}

func verdict(c validate.Counts, strict bool) int {
	if c.Errors > 0 || strict && c.Warnings > 0 {
		return refused
	}
	return succeeded
}

// inSite gives paths as findings have them, relative to the site. A path may be
// written from the current folder, as a shell completes it, or from the site.
func inSite(site string, paths []string) ([]string, error) {
	var inside []string
	for _, p := range paths {
		rel, ok := relativeTo(site, p)
		if !ok {
			rel = path.Clean(filepath.ToSlash(p))
		}
		if _, err := fs.Stat(os.DirFS(site), rel); err != nil {
			return nil, fmt.Errorf("%s is no file or folder of %s", p, show(site))
		}
		inside = append(inside, rel)
	}
	return inside, nil
}

// relativeTo gives the path from a site to a file that exists within it.
func relativeTo(site, file string) (rel string, ok bool) {
	if _, err := os.Stat(file); err != nil {
		return "", false
	}
	from, err1 := filepath.Abs(site)
	to, err2 := filepath.Abs(file)
	if err1 != nil || err2 != nil {
		return "", false
	}
	rel, err := filepath.Rel(from, to)
	if err != nil || !filepath.IsLocal(rel) {
		return "", false
	}
	return filepath.ToSlash(rel), true
}

// narrow keeps what concerns the given files and folders.
func (j *judged) narrow(only []string) {
	j.only = only
	j.report.Findings = slices.DeleteFunc(slices.Clone(j.report.Findings), func(f validate.Finding) bool {
		return !j.within(f.Pos.File)
	})
	j.report.Counts = validate.Counts{}
	c := &j.report.Counts
	for _, r := range j.site.Recipes {
		c.Recipes += one(j.within(r.File))
	}
	for _, e := range j.site.Episodes {
		c.Episodes += one(j.within(e.File))
	}
	for _, p := range j.site.Pages {
		c.Pages += one(j.within(p.File))
	}
	for _, f := range j.report.Findings {
		open := f.Accepted == ""
		c.Errors += one(open && f.Severity == validate.Error)
		c.Warnings += one(open && f.Severity == validate.Warning)
		c.Advice += one(open && f.Severity == validate.Advice)
	}
}

// within reports whether a file is one of those that are looked at.
func (j judged) within(file string) bool {
	return len(j.only) == 0 || slices.ContainsFunc(j.only, func(p string) bool {
		return p == "." || file == p || strings.HasPrefix(file, p+"/")
	})
}

func one(yes bool) int {
	if yes {
		return 1
	}
	return 0
}
