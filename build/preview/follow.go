package preview

import (
	"context"
	"maps"
	"path"
	"slices"
	"time"

	"stillroom/build/preview/watch"
)

// patience is how long a text may be empty or gone before that is believed. An
// editor that empties a file before it writes it takes far less.
const patience = 150 * time.Millisecond

// Follow makes the site anew after each batch of changes, until the context is
// done or the batches end.
func (p *Preview) Follow(ctx context.Context, batches <-chan watch.Batch) {
	doubt := make(doubts)
	minute := time.NewTicker(time.Minute) // the day may be over, or the trouble
	defer minute.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case b, ok := <-batches:
			if !ok {
				return
			}
			doubt.note(b.Files, p.take(b))
		case pic := <-p.prints:
			p.show(append(p.printed(), pic)...)
		case <-minute.C:
			p.again()
		case <-doubt.over():
			due := doubt.due()
			doubt.note(due, p.Change(due, true))
		}
	}
}

// again looks at what could not be read. Nobody tells when a disk is sound again.
func (p *Preview) again() {
	files := slices.Collect(maps.Keys(p.book.troubles))
	if p.theme.files == nil {
		files = append(files, "themes")
	}
	p.Change(files, false)
}

// printed gives what else was printed by now.
func (p *Preview) printed() (more []printed) {
	for {
		select {
		case pic := <-p.prints:
			more = append(more, pic)
		default:
			return more
		}
	}
}

// take looks at what a batch names. What the watcher has to say is shown along
// with what has changed, so that nothing is made twice.
func (p *Preview) take(b watch.Batch) (unsureOf []string) {
	other, builds := b.Why != p.notice, p.Builds()
	p.notice = b.Why
	if b.All {
		unsureOf = p.Rescan()
	} else {
		unsureOf = p.Change(b.Files, false)
	}
	if other && p.Builds() == builds {
		p.build()
	}
	return unsureOf
}

// doubts say since when each of some files is empty or gone.
type doubts map[string]time.Time

// note takes note of files that were looked at, and of those among them of
// which it is not sure what they are.
func (d doubts) note(looked, unsure []string) {
	for _, file := range looked {
		if !slices.Contains(unsure, file) {
			delete(d, file)
		}
	}
	for _, file := range unsure {
		if _, ok := d[file]; !ok {
			d[file] = time.Now()
		}
	}
}

// over is told when there has been doubt of a file for long enough; never, if
// there is none.
func (d doubts) over() <-chan time.Time {
	if len(d) == 0 {
		return nil
	}
	first := slices.MinFunc(slices.Collect(maps.Values(d)), time.Time.Compare)
	return time.After(patience - time.Since(first))
}

func (d doubts) due() []string {
	var due []string
	for file, since := range d {
		if time.Since(since) >= patience {
			due = append(due, file)
		}
	}
	slices.Sort(due)
	return due
}

// within gives the files that some names hold which may be folders that are
// gone.
func (b *copybook) within(names []string) []string {
	folders := make(map[string]bool)
	for _, name := range names {
		if b.text(name) == nil {
			folders[name] = true
		}
	}
	if len(folders) == 0 {
		return nil
	}
	var files []string
	for _, file := range b.known() {
		for folder := path.Dir(file); folder != "."; folder = path.Dir(folder) {
			if folders[folder] {
				files = append(files, file)
				break
			}
		}
	}
	return files
}
