package preview

import (
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"stillroom/build"
	"stillroom/build/internal/unchecked"
	"stillroom/content"
	"stillroom/validate"
)

// A Preview shows one site. It is opened first; then one goroutine may tell it
// of changes, and any number may look.
type Preview struct {
	Built func(Found) // told of each change, if it is set before the first

	fsys   fs.FS
	day    func() content.Date
	book   *copybook
	theme  *dress
	desk   validate.Desk
	plates build.Plates
	notice string // what the watcher has to say
	now    atomic.Pointer[state]
	builds atomic.Int64
	built  []string      // the files of which the site is being made anew
	prints chan printed  // pictures that were printed since
	end    chan struct{} // closed when the preview is over
}

// A printed picture is one that pages can now show as it is published, unless
// printing it has shown that it is broken.
type printed struct {
	file content.File
	err  error
}

// New makes the preview of the site in the folder fsys, which holds content/,
// as of the day that day gives whenever it is asked. cache, which may be nil,
// keeps the prints of pictures.
func New(fsys fs.FS, day func() content.Date, cache build.Cache) *Preview {
	p := &Preview{
		fsys: fsys, day: day, book: newCopybook(fsys), theme: &dress{fsys: fsys},
		prints: make(chan printed, 16), end: make(chan struct{}),
	}
	p.plates.Darkroom = &build.Darkroom{Cache: cache}
	p.plates.Printed = func(file content.File, err error) {
		select {
		case p.prints <- printed{file, err}:
		case <-p.end:
		}
	}
	return p
}

// Close lets go of all browsers that wait for a change.
func (p *Preview) Close() { close(p.end) }

// Open reads and judges the whole site. progress, which may be nil, is told how
// many files are read.
func (p *Preview) Open(progress func(done, total int)) error {
	if err := p.missing(); err != nil {
		return err
	}
	p.book.readAll(found(p.fsys, "content"), progress)
	p.theme.look()
	p.build()
	return nil
}

// missing says that there is no site, if there is none.
func (p *Preview) missing() error {
	if _, err := fs.Stat(p.fsys, "content"); err != nil {
		return fmt.Errorf("find the folder content: %w", err)
	}
	return nil
}

// Builds counts how often the site was made.
func (p *Preview) Builds() int { return int(p.builds.Load()) }

// Change looks again at files that may have changed, by their paths relative to
// the site's folder, and makes the site anew if one has. It gives those that
// are empty or gone all of a sudden: an editor may be about to write them. They
// stay as they were until Change is told of them once more, and to be sure.
func (p *Preview) Change(files []string, sure bool) (unsureOf []string) {
	if p.missing() != nil {
		p.tell("content", "is gone; what is shown is the site as it was")
		return files
	}
	anew := p.book.cure("content")
	for _, file := range slices.Concat(files, p.book.within(files), p.book.linked()) {
		if file == "themes" || strings.HasPrefix(file, "themes/") {
			if p.theme.look() {
				anew = true
				p.built = append(p.built, p.theme.changed...)
			}
			continue
		}
		switch p.book.look(file, sure) {
		case changed:
			anew = true
			p.built = append(p.built, file)
		case unsure:
			unsureOf = append(unsureOf, file)
		}
	}
	if anew || p.day() != p.now.Load().day {
		p.build()
	}
	return unsureOf
}

// Rescan looks at every file that there is, or was, and reads those that were
// changed since.
func (p *Preview) Rescan() (unsureOf []string) {
	there := found(p.fsys, "content")
	files := []string{"themes/"}
	for file, s := range there {
		if t := p.book.text(file); t == nil || t.stamp != s {
			files = append(files, file)
		}
	}
	for _, file := range p.book.known() {
		if _, ok := there[file]; !ok {
			files = append(files, file)
		}
	}
	slices.Sort(files)
	return p.Change(files, false)
}

// tell has the pages tell of trouble.
func (p *Preview) tell(file, text string) {
	if p.book.trouble(file, text) == changed {
		p.build()
	}
}

// build makes the site of what was read, and wakes whoever looks at it.
func (p *Preview) build() {
	day := p.day()
	site, faults := p.book.judged()
	shown := p.book.shown()
	s := newState(p.book, day)
	p.desk.Day = day
	var judging sync.WaitGroup
	judging.Go(func() { s.report = p.desk.Check(site, faults) })
	theme, trouble := p.theme.of(shown.Settings.Theme.V)
	s.proofs = build.NewProofs(unchecked.Site{Content: shown, Day: day}, theme, &p.plates)
	s.troubles = append(p.troubles(), trouble...)
	judging.Wait()
	p.builds.Add(1)
	before := p.now.Swap(s)
	built := p.built
	p.built = nil
	if before == nil {
		return
	}
	close(before.over)
	if p.Built != nil {
		p.Built(Found{built, s.report, fresh(before.troubles, s.troubles)})
	}
}

// show has pages made anew, since pictures were printed.
func (p *Preview) show(pictures ...printed) {
	anew := false
	for _, pic := range pictures {
		if broken, ok := errors.AsType[build.BrokenPictures](pic.err); ok {
			for _, fault := range broken {
				p.desk.Broke(pic.file, fault)
			}
			anew = true
		}
	}
	if anew {
		p.build()
		return
	}
	before := p.now.Load()
	p.now.Store(before.again())
	close(before.over)
}

func (p *Preview) troubles() []Trouble {
	var all []Trouble
	if p.notice != "" {
		all = append(all, Trouble{Text: p.notice})
	}
	for _, file := range slices.Sorted(maps.Keys(p.book.troubles)) {
		all = append(all, Trouble{file, p.book.troubles[file]})
	}
	return all
}
