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
	"stillroom/build/ship"
	"stillroom/themes"
	"stillroom/validate"
)

const publishHelp = `Check a site, then write all of it. With one error nothing is written, and what
was published stays as it was.

    stillroom publish [SITE] [--to PLACE]

    --to PLACE    a folder, sftp://[USER@]HOST[:PORT]/PATH or s3://BUCKET/PREFIX;
                  SITE/published if neither this nor the destination of
                  content/site.yaml says otherwise
    --day DATE    publish as of that day and not of today: 2026-07-31
    --dry-run     list what would be sent and removed, and change nothing
    --precompress  put a .gz and a .br copy beside each text, for servers that
                  hand out such copies
    --take-over   replace files that are in the way on a server or in a store,
                  though no list of Stillroom's names them

For example:

    stillroom publish ~/larder --to /srv/www/larder
    stillroom publish ~/larder --to sftp://ada@larder.example/srv/www --dry-run

A folder is exchanged for the new one in one step. It must hold nothing that
Stillroom did not put there.

To a server or a store go only files that have changed: pages after what they
point at, and what is no more is removed last. If the connection breaks, a
working site is there, and the next run goes on. Files that Stillroom did not
put there are left alone. Keys come from the agent or ~/.ssh, and the host must
be in ~/.ssh/known_hosts; for a store they come from AWS_ACCESS_KEY_ID and
AWS_SECRET_ACCESS_KEY or ~/.aws, and AWS_ENDPOINT_URL_S3 says where it answers.
`

type publishCommand struct {
	Site        string `arg:"" optional:"" default:"."`
	To          string
	Day         day
	DryRun      bool
	Precompress bool
	TakeOver    bool
}

func (c *publishCommand) run(p *program) int {
	progress := p.startProgress()
	c.Day = day{c.Day.orToday()} // which stays the same past midnight
	ledger := c.openLedger()
	progress.begin("comparing")
	if e, ok := ledger.unchanged(c); ok {
		progress.end()
		p.sayEntry(c, e)
		return succeeded
	}
	j, err := p.judge(c.Site, c.Day, progress)
	if err != nil || !j.ok {
		progress.end()
		return p.refuse(j, err)
	}
	said, err := c.publish(p, j, ledger, progress)
	progress.end()
	var broken build.BrokenPictures
	if errors.As(err, &broken) {
		j.report = validate.BrokenWithin(j.site, broken)
		return p.refuse(j, nil)
	}
	if err != nil {
		return p.fail(err)
	}
	report, left := withoutAdvice(j.report), leftOut(j.checked)
	writeText(p.err, report, colourFor(p.err))
	said()
	p.sayEach(left)
	if c.DryRun {
		return succeeded
	}
	still := ledger.still(c)
	if err := c.remember(p, j.checked); err != nil {
		return p.fail(fmt.Errorf("the site is published, but not by which guids: %w", err))
	}
	if still {
		ledger.enter(c, j.site.Settings.Destination.V, report, left)
	}
	p.sayWhatNext(c)
	return succeeded
}

func (p *program) sayWhatNext(c *publishCommand) {
	p.say("To look at it while you write: stillroom preview %s", c.Site)
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

// publish builds the site and puts it where it belongs. What came of that is
// said by said.
func (c *publishCommand) publish(p *program, j judged, ledger *ledger, progress *progress) (said func(), err error) {
	deliver, err := c.destination(j.site.Settings.Destination.V, ledger)
	if err != nil {
		return nil, err
	}
	theme, err := c.theme(j.site.Settings.Theme.V)
	if err != nil {
		return nil, err
	}
	progress.begin("building")
	cache := openCache()
	darkroom := &build.Darkroom{Cache: cache, Progress: progress.stepOf("printing pictures:", "building")}
	files, err := build.Site(j.checked, theme, darkroom)
	if err != nil {
		return nil, err
	}
	if c.Precompress {
		progress.begin("compressing")
		if files, err = build.Compressed(files); err != nil {
			return nil, err
		}
	}
	said, err = deliver(p, files, progress)
	if disk, ok := cache.(diskCache); ok {
		disk.tidy(time.Now(), mostKept)
	}
	return said, err
}

// A delivery puts a finished site where it belongs, or lists what that would do.
type delivery func(*program, []build.File, *progress) (said func(), err error)

// destination says where to put the site. That may not lie where it is read
// from.
func (c *publishCommand) destination(fromSettings string, ledger *ledger) (delivery, error) {
	to := cmp.Or(c.To, fromSettings, "published")
	if ship.IsAddress(to) {
		address, err := ship.ParseAddress(to)
		return func(p *program, files []build.File, pr *progress) (func(), error) {
			return c.ship(p, address, files, pr)
		}, err
	}
	dir := c.folder(fromSettings)
	for _, source := range []string{"content", "themes"} {
		if within(filepath.Join(c.Site, source), dir) {
			return nil, fmt.Errorf("%s lies in the site's %s folder, which is read and never written", dir, source)
		}
	}
	if c.TakeOver {
		return nil, fmt.Errorf("--take-over is for servers and stores; the folder %s must hold nothing that Stillroom did not put there", dir)
	}
	if c.DryRun {
		return func(p *program, files []build.File, _ *progress) (func(), error) { return p.lookInto(dir, files) }, nil
	}
	return func(p *program, files []build.File, pr *progress) (func(), error) {
		return p.write(dir, files, ledger, pr)
	}, nil
}

// folder is where the site goes if that is a folder.
func (c *publishCommand) folder(fromSettings string) string {
	dir := filepath.FromSlash(cmp.Or(c.To, fromSettings, "published"))
	if c.To == "" && !filepath.IsAbs(dir) {
		dir = filepath.Join(c.Site, dir)
	}
	return dir
}

func (p *program) write(dir string, files []build.File, ledger *ledger, progress *progress) (said func(), err error) {
	progress.begin("writing")
	w, err := build.Output{Dir: dir, Progress: progress.step}.Write(files)
	pages := pagesOf(files)
	ledger.note(w, pages)
	return func() { p.sayPublished(dir, pages, w) }, err
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

func (p *program) sayPublished(dir string, pages int, w build.Written) {
	p.say("Published %s to %s: %s, %d of them new or changed; %d gone.",
		count(pages, "page"), dir, count(w.Files, "file"), w.Files-w.Same, w.Gone)
	if !w.OneStep {
		p.say("This disk cannot exchange folders, so the files were put in place one by one.")
	}
}

func pagesOf(files []build.File) int {
	pages := 0
	for _, f := range files {
		pages += one(strings.HasSuffix(f.Path, ".html"))
	}
	return pages
}

// leftOut says what readers do not get, and why, in a line each.
func leftOut(c validate.Checked) (lines []string) {
	if c.Site().Settings.Address.V == "" {
		lines = append(lines, "Left out for want of an address in content/site.yaml: feeds, sitemap and structured data.")
	}
	const few = 5
	held := build.HeldBack(c)
	for i, h := range held {
		switch {
		case i == few:
			return append(lines, fmt.Sprintf("Held back: %d more.", len(held)-few))
		case h.Until.IsZero():
			lines = append(lines, fmt.Sprintf("Held back: %s, a draft.", h.File))
		default:
			lines = append(lines, fmt.Sprintf("Held back: %s, until %s.", h.File, h.Until))
		}
	}
	return lines
}

func (p *program) sayEach(lines []string) {
	for _, l := range lines {
		p.say("%s", l)
	}
}
