package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"stillroom/content/intake"
	"stillroom/validate"
)

const importHelp = `Move recipes and episodes into a site: from saved web pages that carry recipes in
the words of schema.org (JSON-LD or microdata), and from the RSS feed of an audio
programme.

    stillroom import FILE... [--to SITE]

    --to SITE    the site to write into; the current folder if left out

For example, with pages that a browser saved whole, and a feed:

    stillroom import saved/damson-jam.html saved/kraut.html feed.xml --to larder

A recipe becomes a draft in content/recipes, and its picture is taken along if it
was saved with the page. An episode becomes a file in content/episodes and keeps
its guid, so that listeners are not sent it again. Nothing is fetched, and no file
that is there is written over.

Whatever is not sure is marked "# check: ..." at its place, and stillroom check
tells of it until you take the mark away. How food is kept is never taken from a
page: no process, no minutes, no time of keeping.

It ends with 0, and with 2 if one of the files gave nothing; the others are
written all the same.
`

type importCommand struct {
	Files []string `arg:"" name:"FILE"`
	To    string   `default:"."`
}

func (c *importCommand) run(p *program) int {
	if err := isSite(c.To); err != nil {
		return p.fail(err)
	}
	progress := p.startProgress()
	progress.begin("reading")
	in := intoSite{dir: c.To}
	for i, name := range c.Files {
		progress.step(i, len(c.Files))
		in.file(name)
	}
	progress.end()
	for _, t := range in.troubles {
		p.say("%s: %s", t.Pos, t.Says)
	}
	for _, line := range in.lines {
		fmt.Fprintln(p.out, visible(line))
	}
	p.say("Wrote %s and %s; %s to check. See stillroom check.",
		count(in.texts, "text"), count(in.pictures, "picture"), count(in.checks, "place"))
	if in.barren > 0 {
		p.say("%s gave nothing.", count(in.barren, "file"))
		return failed
	}
	return succeeded
}

// An intoSite writes what arrives into a site, and keeps account of it.
type intoSite struct {
	dir                             string
	texts, pictures, checks, barren int
	lines                           []string // what was written
	troubles                        []intake.Trouble
}

func (s *intoSite) file(name string) {
	arrivals, troubles, err := readForeign(name)
	if err != nil {
		troubles = append(troubles, troubleOf(name, err))
	}
	s.troubles = append(s.troubles, troubles...)
	if len(arrivals) == 0 {
		s.barren++
	}
	for _, a := range arrivals {
		if err := s.write(name, a); err != nil {
			s.troubles = append(s.troubles, troubleOf(name, err))
		}
	}
}

func troubleOf(name string, err error) intake.Trouble {
	t := intake.Trouble{Says: strings.TrimPrefix(err.Error(), name+": ")}
	t.Pos.File = name
	return t
}

// readForeign reads a page or a feed.
func readForeign(name string) ([]intake.Arrival, []intake.Trouble, error) {
	info, err := os.Stat(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, nil, errors.New("there is no such file")
	case err != nil:
		return nil, nil, err
	case !info.Mode().IsRegular():
		return nil, nil, errors.New("is no file")
	case info.Size() > intake.MaxPage:
		return nil, nil, fmt.Errorf("holds %d MB, and no more than %d are read", info.Size()>>20, intake.MaxPage>>20)
	}
	data, err := os.ReadFile(name)
	if err != nil {
		return nil, nil, err
	}
	if intake.IsFeed(data) {
		return intake.ReadFeed(name, data)
	}
	beside, err := os.OpenRoot(filepath.Dir(name)) // no link leads out of it
	if err != nil {
		return nil, nil, err
	}
	defer beside.Close()
	return intake.ReadPage(intake.Page{Name: name, Data: data, Beside: beside.FS(), Produce: produceIn})
}

// produceIn finds produce that a season brings.
func produceIn(words string) (string, bool) {
	p, ok := validate.LookUpProduce(words)
	return p.Plural, ok && len(p.Season) > 0
}

// write writes a recipe or an episode and its pictures: all of it, or nothing if
// a file of one of those names is there.
func (s *intoSite) write(from string, a intake.Arrival) error {
	if _, err := os.Lstat(s.onDisk(a.Text)); err == nil {
		return fmt.Errorf("%s is there already and was left as it is: %q was not taken over", a.Text.Path, a.Name)
	}
	var made []string
	for _, f := range append(slices.Clone(a.Extra), a.Text) {
		if s.same(f) {
			continue // a picture that was taken over before
		}
		err := s.create(f)
		if err == nil {
			made = append(made, s.onDisk(f))
			continue
		}
		for _, name := range made {
			os.Remove(name)
		}
		if errors.Is(err, fs.ErrExist) {
			err = errors.New("another file of that name is there")
		}
		return fmt.Errorf("%s could not be written, so %q was not taken over: %w", f.Path, a.Name, err)
	}
	s.texts++
	s.pictures += len(made) - 1
	s.checks += len(a.Checks)
	s.lines = append(s.lines, fmt.Sprintf("%s: %s, from %s %s; %s to check",
		a.Text.Path, a.Name, a.From, filepath.Base(from), count(len(a.Checks), "place")))
	return nil
}

func (s *intoSite) onDisk(f intake.File) string {
	return filepath.Join(s.dir, filepath.FromSlash(f.Path))
}

// create writes a new file.
func (s *intoSite) create(f intake.File) error {
	if err := os.MkdirAll(filepath.Dir(s.onDisk(f)), 0o777); err != nil {
		return err
	}
	w, err := os.OpenFile(s.onDisk(f), os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	_, err = w.Write(f.Data)
	if err := errors.Join(err, w.Close()); err != nil {
		os.Remove(w.Name())
		return err
	}
	return nil
}

// same reports whether a file is there with the same bytes.
func (s *intoSite) same(f intake.File) bool {
	data, err := os.ReadFile(s.onDisk(f))
	return err == nil && bytes.Equal(data, f.Data)
}
