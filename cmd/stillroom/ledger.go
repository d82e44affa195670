package main

import (
	"bytes"
	"crypto/sha256"
	"encoding/gob"
	"encoding/hex"
	"fmt"
	"path/filepath"
	"time"

	"stillroom/build"
	"stillroom/build/ship"
	"stillroom/validate"
)

// A ledger tells of the last time that a site was published into a folder: from
// what, and what came of it. While both are the same, publishing again would
// change nothing, and what it would say is known. Whatever is in doubt is
// published again from nothing.
//
// It lies in the user's cache, so that it may be lost at any time.
type ledger struct {
	cache diskCache
	key   string
	began time.Time
	made  string // what the site is made of, as it was when this run began
	seen  string // the marks of that
	next  publishing
}

// A publishing is an entry of a ledger. What it says of findings and of what was held
// back is said again as long as it is true.
type publishing struct {
	Began       time.Time // before anything was read
	Made        string    // what the site was made of, guids included
	Destination string    // of site.yaml
	Output      build.Seal
	Files       int
	Pages       int
	Report      validate.Report // without advice
	LeftOut     []string
}

// openLedger finds the ledger of a site and its output; nil if none can be
// kept, or this run is not to write into a folder of this machine.
func (c *publishCommand) openLedger() *ledger {
	cache, ok := cacheOf("published")
	site, err1 := filepath.Abs(c.Site)
	to, err2 := filepath.Abs(c.To)
	if !ok || err1 != nil || err2 != nil || c.DryRun || c.TakeOver || ship.IsAddress(c.To) {
		return nil
	}
	sum := sha256.Sum256(fmt.Appendf(nil, "%q %q %q", site, c.To, to))
	return &ledger{cache: cache, key: "site-" + hex.EncodeToString(sum[:]), began: time.Now()}
}

// unchanged gives the last entry if nothing has changed since. If something
// has, it takes down what the site is made of now, before anything is read.
func (l *ledger) unchanged(c *publishCommand) (e publishing, ok bool) {
	if l == nil {
		return publishing{}, false
	}
	if e, ok = l.last(); ok {
		if c.isMadeOf(e) && (build.Output{Dir: c.folder(e.Destination)}).Holds(e.Output) {
			return e, true
		}
	}
	var err1, err2 error
	l.seen, err1 = c.marksOf(l.began)
	l.made, err2 = c.madeOf(l.began)
	if err1 != nil || err2 != nil {
		l.made = ""
	}
	return publishing{}, false
}

// isMadeOf reports whether the site is what it was.
func (c *publishCommand) isMadeOf(e publishing) bool {
	made, err := c.madeOf(e.Began)
	if err != nil {
		return false
	}
	made, err = c.withGUIDs(made)
	return err == nil && made == e.Made
}

func (l *ledger) last() (e publishing, ok bool) {
	data, ok := l.cache.Get(l.key)
	return e, ok && gob.NewDecoder(bytes.NewReader(data)).Decode(&e) == nil
}

// note takes down what was written.
func (l *ledger) note(w build.Written, pages int) {
	if l != nil {
		l.next = publishing{Began: l.began, Output: w.Seal, Files: w.Files, Pages: pages}
	}
}

// still reports whether nothing was changed while the site was made: what was
// read first and what later belong together.
func (l *ledger) still(c *publishCommand) bool {
	if l == nil || l.made == "" || l.next.Output.Sum == "" {
		return false
	}
	seen, err := c.marksOf(l.began)
	return err == nil && seen == l.seen
}

// enter puts the publishing into the ledger.
func (l *ledger) enter(c *publishCommand, destination string, rep validate.Report, leftOut []string) {
	made, err := c.withGUIDs(l.made)
	if err != nil {
		return
	}
	l.next.Made, l.next.Destination, l.next.Report, l.next.LeftOut = made, destination, rep, leftOut
	var b bytes.Buffer
	if gob.NewEncoder(&b).Encode(l.next) == nil {
		_ = l.cache.Put(l.key, b.Bytes()) // without it, the site is made anew the next time
	}
	l.cache.tidy(l.began, mostKept)
}

// sayEntry says what publishing would say, were it done again.
func (p *program) sayEntry(c *publishCommand, e publishing) {
	writeText(p.err, e.Report, colourFor(p.err))
	p.sayPublished(c.folder(e.Destination), e.Pages, build.Written{Files: e.Files, Same: e.Files, OneStep: true})
	p.sayEach(e.LeftOut)
	p.sayWhatNext(c)
}
