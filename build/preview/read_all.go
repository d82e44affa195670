package preview

import (
	"io/fs"
	"maps"
	"slices"
	"sync"
	"sync/atomic"

	"stillroom/content"
)

// readAll reads the files of a site of which nothing is known yet.
func (b *copybook) readAll(files map[string]stamp, progress func(done, total int)) {
	names := slices.Sorted(maps.Keys(files))
	read := make([]*text, len(names))
	next := make(chan int)
	var group sync.WaitGroup
	var done atomic.Int64
	for range workers {
		group.Go(func() {
			for i := range next {
				if files[names[i]] != (stamp{}) { // no link
					read[i] = b.first(names[i], files[names[i]])
				}
				if n := int(done.Add(1)); progress != nil {
					progress(n, len(names))
				}
			}
		})
	}
	for i := range names {
		next <- i
	}
	close(next)
	group.Wait()
	for i, t := range read {
		switch {
		case t == nil:
			b.look(names[i], true)
		case t.sort == content.TheSettings:
			b.settings = t
		default:
			b.texts = append(b.texts, t)
		}
	}
}

// workers is how many files are read at a time.
const workers = 2

// first reads a text for the first time; nil if it is none, or cannot be read.
func (b *copybook) first(file string, stamp stamp) *text {
	switch sort := content.SortOf(file); sort {
	case content.TheSettings, content.ARecipe, content.AnEpisode, content.APage:
		info, err := fs.Stat(b.fsys, file)
		if err != nil || !info.Mode().IsRegular() {
			return nil
		}
		data, err := fs.ReadFile(b.fsys, file)
		if err != nil {
			return nil
		}
		t := newText(file, sort, data)
		t.stamp = stamp
		return t
	}
	return nil
}

// known lists the files that the copybook knows.
func (b *copybook) known() []string {
	var all []string
	if b.settings.data != nil {
		all = append(all, b.settings.file)
	}
	for _, t := range b.texts {
		all = append(all, t.file)
	}
	for _, f := range b.pictures {
		all = append(all, f.Path)
	}
	for _, f := range b.media {
		all = append(all, f.Path)
	}
	all = slices.AppendSeq(all, maps.Keys(b.misnamed))
	return slices.AppendSeq(all, maps.Keys(b.troubles))
}
