package preview

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"maps"
	"slices"
	"time"

	"stillroom/content"
	"stillroom/validate"
)

// A Manuscript is a site as its author has it before the eyes: the files of a
// folder, and in place of some of them a text that is not saved yet. It writes
// nothing. One goroutine at a time may use it.
type Manuscript struct {
	day    func() content.Date
	papers *papers
	book   *copybook
	desk   validate.Desk
}

// NewManuscript makes the manuscript of the site in the folder fsys, which holds
// content/, as of the day that day gives whenever it is asked.
func NewManuscript(fsys fs.FS, day func() content.Date) *Manuscript {
	p := &papers{FS: fsys, drafts: make(map[string]draft)}
	return &Manuscript{day: day, papers: p, book: newCopybook(p)}
}

// Open reads the whole site. progress, which may be nil, is told how many files
// are read.
func (m *Manuscript) Open(progress func(done, total int)) error {
	if _, err := fs.Stat(m.papers.FS, "content"); err != nil {
		return err
	}
	m.book.readAll(found(m.papers, "content"), progress)
	return nil
}

// Write puts a text in the place of a file, by its path relative to the site's
// folder, until Drop is called. The file need not be there.
func (m *Manuscript) Write(file string, text []byte) {
	m.papers.drafts[file] = draft{text, time.Now()}
	m.Look(file)
}

// Drop goes back to the file as it is on disk.
func (m *Manuscript) Drop(file string) {
	delete(m.papers.drafts, file)
	m.Look(file)
}

// Look looks again at files that may have changed on disk, at what is within
// them if they are folders, and at all files if none is named.
func (m *Manuscript) Look(files ...string) {
	if len(files) == 0 {
		files = append(slices.Collect(maps.Keys(found(m.papers, "content"))), m.book.known()...)
	}
	for _, file := range slices.Concat(files, m.book.within(files)) {
		m.book.look(file, true)
	}
}

// Text gives what stands in a file as its author sees it; nil if there is none.
func (m *Manuscript) Text(file string) []byte {
	data, err := fs.ReadFile(m.papers, file)
	if err != nil {
		return nil
	}
	return data
}

// Site gives the site as it could last be read, for looking things up.
func (m *Manuscript) Site() *content.Site { return m.book.shown() }

// Judge gives what is found in the site. Accepted findings are among it.
func (m *Manuscript) Judge() validate.Report {
	site, faults := m.book.judged()
	m.desk.Day = m.day()
	return m.desk.Check(site, faults)
}

// Papers are a folder on which texts lie that were not filed yet.
type papers struct {
	fs.FS
	drafts map[string]draft
}

type draft struct {
	text    []byte
	written time.Time
}

// Open opens a text, or else the file of its name.
func (p *papers) Open(name string) (fs.File, error) {
	if d, ok := p.drafts[name]; ok {
		return &openDraft{bytes.NewReader(d.text), paper{name, d}}, nil
	}
	return p.FS.Open(name)
}

// Stat describes a text, or else the file of its name.
func (p *papers) Stat(name string) (fs.FileInfo, error) {
	if d, ok := p.drafts[name]; ok {
		return paper{name, d}, nil
	}
	return fs.Stat(p.FS, name)
}

// ReadLink tells of the links of the folder.
func (p *papers) ReadLink(name string) (string, error) {
	if _, ok := p.drafts[name]; ok {
		return "", &fs.PathError{Op: "readlink", Path: name, Err: errors.ErrUnsupported}
	}
	return fs.ReadLink(p.FS, name)
}

// Lstat describes a text, or else the file or the link of its name.
func (p *papers) Lstat(name string) (fs.FileInfo, error) {
	if d, ok := p.drafts[name]; ok {
		return paper{name, d}, nil
	}
	return fs.Lstat(p.FS, name)
}

// An openDraft is read as a file is.
type openDraft struct {
	*bytes.Reader
	paper paper
}

func (f *openDraft) Stat() (fs.FileInfo, error) { return f.paper, nil }
func (f *openDraft) Close() error               { return nil }

var _ io.ReadSeeker = (*openDraft)(nil)

// A paper describes a draft as a file.
type paper struct {
	name  string
	draft draft
}

func (p paper) Name() string       { return p.name }
func (p paper) Size() int64        { return int64(len(p.draft.text)) }
func (p paper) Mode() fs.FileMode  { return 0o444 }
func (p paper) ModTime() time.Time { return p.draft.written }
func (p paper) IsDir() bool        { return false }
func (p paper) Sys() any           { return nil }
