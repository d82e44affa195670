package preview

import (
	"bytes"
	"fmt"
	"io"
	"net/http"
	"runtime/debug"
	"slices"
	"strings"
	"sync"

	"stillroom/build"
	"stillroom/content"
	"stillroom/validate"
)

// A view is a page as somebody looks at it.
type view struct {
	status  int
	html    []byte // to the byte what would be published, or a page of the preview's own
	version string // of html
	notes   []byte // in JSON
	noted   string // the version of notes
}

// view gives the page of an address. If it shows a file that cannot be read
// now, it says so, unless the page as it was last is asked for.
func (s *state) view(address string, last bool) *view {
	key := address
	if last {
		key += "?last"
	}
	s.mu.Lock()
	make, ok := s.views[key]
	if !ok {
		make = sync.OnceValue(func() *view { return s.look(address, last) })
		s.views[key] = make
	}
	s.mu.Unlock()
	return make()
}

func (s *state) look(address string, last bool) *view {
	v, n := &view{status: http.StatusOK}, s.newNotes()
	unread := s.unreadAt(address)
	proof, html, ok, err := s.page(strings.TrimPrefix(address, "/"))
	switch {
	case unread != nil && !(last && ok):
		v.status, v.html = http.StatusServiceUnavailable, s.unreadPage(unread, ok)
		n.File = unread.file
	case err != nil:
		v.status, v.html = http.StatusInternalServerError, s.failedPage(address, err)
		n.File = proof.Source
		n.Marks = s.marks(proof.Source, nil)
	case !ok:
		v.status = http.StatusNotFound
		proof, html, _, err = s.page("404.html")
		if v.html = html; err != nil {
			v.html = s.failedPage(address, err)
		}
	default:
		v.html = html
		n.File, n.Old = proof.Source, unread != nil
		s.note(&n, proof, address)
	}
	n.Links = s.heldLinks(v.html)
	v.version, v.notes = sum(v.html), inJSON(n)
	v.noted = sum(v.notes)
	return v
}

func (s *state) newNotes() notes {
	return notes{Marks: []mark{}, Counts: s.report.Counts, Troubles: s.troubles}
}

// note adds what concerns the file that a page is made of.
func (s *state) note(n *notes, proof build.Proof, address string) {
	if h, ok := s.proofs.Held()[address]; ok {
		n.Held = heldUntil(h.Until)
	}
	if t := s.text(proof.Source); t != nil && t.address() == address {
		n.Marks = s.marks(t.file, chartOf(t))
		if t.episode != nil && t.episode.Transcript.Set() {
			file := beside(t.file, t.episode.Transcript.V)
			n.Marks = append(n.Marks, s.marksAt(file, spot{at("#transcript h2", 0)})...)
		}
	}
	if address == "/" || s.settings.unread {
		n.Marks = append(s.marks(s.settings.file, chartOf(s.settings)), n.Marks...)
	}
}

// marks gives the findings of a file, each at its part of the page.
func (s *state) marks(file string, c *chart) []mark {
	all := []mark{}
	for _, f := range s.findings()[file] {
		if f.Accepted != "" {
			continue
		}
		m := s.mark(f)
		if c != nil {
			m.Spot = c.find(s.meant(f.Pos))
		}
		all = append(all, m)
	}
	slices.SortStableFunc(all, heavier)
	return all
}

// meant is the place that is spoken of at another: what is said of a comment in
// a line of its own is said of what follows it.
func (s *state) meant(p content.Pos) content.Pos {
	lines := bytes.Split(s.source(p.File), []byte("\n"))
	if p.Line < 1 || p.Line > len(lines) || !isComment(lines[p.Line-1]) {
		return p
	}
	for n := p.Line; n < len(lines); n++ {
		if !isComment(lines[n]) {
			indent := len(lines[n]) - len(bytes.TrimLeft(lines[n], " "))
			return content.Pos{File: p.File, Line: n + 1, Col: indent + 1}
		}
	}
	return p
}

func isComment(line []byte) bool { return bytes.HasPrefix(bytes.TrimLeft(line, " "), []byte("#")) }

// heavier orders errors before warnings, and those before advice.
func heavier(a, b mark) int { return weight(b.Severity) - weight(a.Severity) }

func (s *state) marksAt(file string, at spot) []mark {
	all := s.marks(file, nil)
	for i := range all {
		all[i].Spot = at
	}
	return all
}

func weight(severity string) int {
	for _, s := range []validate.Severity{validate.Error, validate.Warning, validate.Advice} {
		if s.String() == severity {
			return int(s)
		}
	}
	return 0
}

// page finds a page and makes it.
func (s *state) page(name string) (proof build.Proof, html []byte, ok bool, err error) {
	proof, ok, err = s.find(name)
	if ok {
		html, err = proof.Bytes()
	}
	return proof, html, ok && err == nil, err
}

// find finds the file of an address without its stroke. One that cannot be made
// is our fault or that of a theme, and stops no other.
func (s *state) find(name string) (proof build.Proof, ok bool, err error) {
	defer caught(name, &err)
	if name == "" || strings.HasSuffix(name, "/") {
		name += "index.html"
	}
	proof, ok, err = s.proofs.Find(name)
	open := proof.Open
	proof.Open = func() (r io.ReadSeekCloser, err error) {
		defer caught(name, &err)
		return open()
	}
	return proof, ok, err
}

func caught(name string, err *error) {
	if r := recover(); r != nil {
		*err = fmt.Errorf("make %s: %v\n\n%s", name, r, debug.Stack())
	}
}

// text finds a text of the state; nil if there is none at that path.
func (s *state) text(file string) *text {
	i, ok := slices.BinarySearchFunc(s.texts, file, byFile)
	if !ok {
		return nil
	}
	return s.texts[i]
}

// unreadAt finds the file that cannot be read and whose page stands at an
// address; nil if there is none.
func (s *state) unreadAt(address string) *text {
	for _, t := range s.texts {
		if t.unread && t.address() == address {
			return t
		}
	}
	return nil
}
