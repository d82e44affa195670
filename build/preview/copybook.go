package preview

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strings"

	"stillroom/content"
)

// A copybook holds all that was read of a site, file by file. What it gives
// away is never changed afterwards.
type copybook struct {
	fsys     fs.FS
	settings *text                   // content/site.yaml
	texts    []*text                 // all others, in order of file
	pictures map[string]content.File // by path relative to content/pictures
	media    map[string]content.File // recordings and transcripts, by path
	misnamed map[string]bool         // files that are not read for the ending of their names
	troubles map[string]string       // what stands in the way of reading a file, by path
	links    map[string]bool         // files that are links: what they lead to may change unseen
}

func newCopybook(fsys fs.FS) *copybook {
	return &copybook{
		fsys: fsys, settings: noSettings(),
		pictures: make(map[string]content.File), media: make(map[string]content.File),
		misnamed: make(map[string]bool), troubles: make(map[string]string), links: make(map[string]bool),
	}
}

// An outcome says what came of looking at a file again.
type outcome int

const (
	same    outcome = iota
	changed         // it is another one now, or gone
	unsure          // it is empty or gone and was not so before: an editor may be at it
)

// look reads a file again, if it is a part of the site. Unless it has to be
// sure, it does not believe that a text is empty or gone: many editors empty a
// file, or take it away, before they write it.
func (b *copybook) look(file string, sure bool) outcome {
	sort := content.SortOf(file)
	if sort == content.NoPart {
		return b.strange(file)
	}
	info, err := fs.Stat(b.fsys, file)
	target := b.link(file)
	switch {
	case errors.Is(err, fs.ErrNotExist) && target != "":
		return b.trouble(file, "is a link to "+target+", which is not there")
	case errors.Is(err, fs.ErrNotExist):
		return b.gone(file, sort, sure)
	case err != nil:
		return b.trouble(file, notFollowed(b.fsys, file, err))
	case info.IsDir() && target == "":
		return b.gone(file, sort, sure)
	case info.IsDir():
		return b.folder(file)
	case !info.Mode().IsRegular():
		return b.trouble(file, "is no regular file, and is not read")
	}
	switch sort {
	case content.APicture, content.AMedium:
		f := content.File{Path: file, Size: info.Size(), Changed: info.ModTime().UnixNano()}
		if sort == content.AMedium {
			f.Sound = content.Listen(b.fsys, file)
		}
		return b.put(sort, f)
	case content.Misnamed:
		is := b.misnamed[file]
		b.misnamed[file] = true
		return changedIf(!is)
	}
	return b.read(file, sort, stampOf(info), sure)
}

// link gives what a link leads to; empty if the file is none.
func (b *copybook) link(file string) string {
	target, err := fs.ReadLink(b.fsys, file)
	if err != nil {
		delete(b.links, file)
		return ""
	}
	b.links[file] = true
	return target
}

// linked lists the files that are links, in order.
func (b *copybook) linked() []string { return slices.Sorted(maps.Keys(b.links)) }

// strange looks at what is no part of the site, unless it is a link by which
// its author may want to make it one.
func (b *copybook) strange(file string) outcome {
	if content.SortOf(file+"/x.md") == content.NoPart {
		return same
	}
	info, err := fs.Stat(b.fsys, file)
	switch {
	case err == nil && info.IsDir():
		return b.folder(file)
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return b.trouble(file, notFollowed(b.fsys, file, err))
	}
	return changedIf(b.cure(file))
}

// folder tells of a link to a folder. Read does not follow one.
func (b *copybook) folder(name string) outcome {
	if target, err := fs.ReadLink(b.fsys, name); err == nil {
		return b.trouble(name, fmt.Sprintf("is a link to the folder %s, and is not followed", target))
	}
	return changedIf(b.cure(name))
}

// read reads a text.
func (b *copybook) read(file string, sort content.Sort, stamp stamp, sure bool) outcome {
	old := b.text(file)
	data, err := fs.ReadFile(b.fsys, file)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return b.gone(file, sort, sure)
	case err != nil:
		return b.trouble(file, notFollowed(b.fsys, file, err))
	case len(data) == 0 && !sure && (old == nil || len(old.data) > 0):
		return unsure
	}
	cured := b.cure(file)
	if old != nil && bytes.Equal(old.data, data) {
		again := *old
		again.stamp = stamp
		b.set(&again)
		return changedIf(cured)
	}
	t := newText(file, sort, data)
	t.stamp = stamp
	if t.unread && old != nil {
		t.good = old.legible()
	}
	b.set(t)
	return changed
}

// gone takes a file out of the copybook.
func (b *copybook) gone(file string, sort content.Sort, sure bool) outcome {
	old, list := b.text(file), b.list(sort)
	_, listed := (*list)[name(sort, file)]
	if !sure && (old != nil || listed) {
		return unsure
	}
	is := b.cure(file) || old != nil || listed || b.misnamed[file]
	delete(b.misnamed, file)
	switch {
	case listed:
		*list = maps.Clone(*list)
		delete(*list, name(sort, file))
	case old != nil && sort == content.TheSettings:
		b.settings = noSettings()
	case old != nil:
		b.texts = slices.DeleteFunc(slices.Clone(b.texts), func(t *text) bool { return t == old })
	}
	return changedIf(is)
}

// list is where files of a sort are listed that are used as they are.
func (b *copybook) list(sort content.Sort) *map[string]content.File {
	if sort == content.APicture {
		return &b.pictures
	}
	return &b.media
}

// name is what a file is called in its list.
func name(sort content.Sort, file string) string {
	if sort == content.APicture {
		return strings.TrimPrefix(file, "content/pictures/")
	}
	return file
}

// put lists a file that is used as it is.
func (b *copybook) put(sort content.Sort, f content.File) outcome {
	cured, list := b.cure(f.Path), b.list(sort)
	if (*list)[name(sort, f.Path)] == f {
		return changedIf(cured)
	}
	*list = maps.Clone(*list)
	(*list)[name(sort, f.Path)] = f
	return changed
}

// text finds a text; nil if there is none at that path.
func (b *copybook) text(file string) *text {
	if file == b.settings.file {
		if b.settings.data == nil {
			return nil
		}
		return b.settings
	}
	i, ok := slices.BinarySearchFunc(b.texts, file, byFile)
	if !ok {
		return nil
	}
	return b.texts[i]
}

func byFile(t *text, file string) int { return cmp.Compare(t.file, file) }

func (b *copybook) set(t *text) {
	if t.sort == content.TheSettings {
		b.settings = t
		return
	}
	i, ok := slices.BinarySearchFunc(b.texts, t.file, byFile)
	b.texts = slices.Clone(b.texts)
	if !ok {
		b.texts = slices.Insert(b.texts, i, t)
		return
	}
	b.texts[i] = t
}
