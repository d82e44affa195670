package build

import (
	"maps"
	"path"
	"slices"
	"strings"
	"sync"

	"stillroom/build/internal/unchecked"
	"stillroom/content"
	"stillroom/themes"
)

// Proofs are the files of a site that is being written: to the byte those that Site would make if nothing were held back.
// They may show a recipe that breaks every rule, and so they are for its
// author's eyes. Several goroutines may ask at a time.
type Proofs struct {
	edition *edition
	theme   *themes.Theme
	plates  *Plates
	media   map[string]File                 // recordings and transcripts, by path
	moved   func() map[string]File          // small pages at old paths, by path
	rest    func() (map[string]File, error) // what is for other programs, by path
	held    func() map[string]Held          // by address
	pages   func() map[string]string        // addresses, by file of content
}

// A Proof is one file of a site.
type Proof struct {
	File
	Source string // the file of content that it is the page of; empty if it is none
	Page   bool   // for people to read
}

// NewProofs makes the proofs of a site, which nobody may change from then on.
func NewProofs(s unchecked.Site, t *themes.Theme, plates *Plates) *Proofs {
	a := plates.assets(s.Content, t)
	everything := func(content.Status, content.Date) bool { return true }
	e := newEditionOf(s.Content, s.Day, a, plates.storeOf(s.Content), everything)
	for _, ep := range slices.Backward(e.episodes) { // as NewAssets does
		a.addMedia(s.Content, ep)
	}
	p := &Proofs{edition: e, theme: t, plates: plates, media: byPath(a.files)}
	p.moved = sync.OnceValue(func() map[string]File { return byPath(e.redirects()) })
	p.rest = sync.OnceValues(p.others)
	p.held = sync.OnceValue(p.holds)
	p.pages = sync.OnceValue(p.addresses)
	return p
}

// Find gives the file at a path. It reports false if the site has none there.
func (p *Proofs) Find(name string) (Proof, bool, error) {
	if strings.HasPrefix(name, "assets/") {
		f, ok := p.plates.find(name)
		if !ok {
			p.lookFor(name)
			f, ok = p.plates.find(name)
		}
		return Proof{File: f}, ok, nil
	}
	if s, ok := p.edition.sheetAt(name); ok {
		return Proof{s.file(p.theme), s.of, true}, true, nil
	}
	if f, ok := p.media[name]; ok {
		return Proof{File: f}, true, nil
	}
	if f, ok := p.moved()[name]; ok || path.Ext(name) == ".html" {
		return Proof{File: f}, ok, nil
	}
	files, err := p.rest()
	f, ok := files[name]
	return Proof{File: f}, ok, err
}

// lookFor looks up the pictures that may stand at an address which no page has
// asked for: the browser has kept it from an earlier preview.
func (p *Proofs) lookFor(asset string) {
	for name := range p.edition.site.Pictures {
		if strings.HasPrefix(asset, "assets/"+stem(name)+".") {
			p.edition.assets.Picture(name)
		}
	}
}

// others gives what is neither a page nor an asset, all at once: it is seldom
// looked at.
func (p *Proofs) others() (map[string]File, error) {
	pages, err := pages(p.edition, p.theme)
	if err != nil {
		return nil, err
	}
	files, err := p.edition.products(pages)
	return byPath(files), err
}

// Paths gives the path of every file that the site has but its assets, in
// order.
func (p *Proofs) Paths() ([]string, error) {
	files, err := p.rest()
	if err != nil {
		return nil, err
	}
	all := slices.Concat(slices.Collect(maps.Keys(files)), slices.Collect(maps.Keys(p.media)))
	for s := range p.edition.sheets {
		all = append(all, s.path)
	}
	slices.Sort(all)
	return all, nil
}

// Held gives what readers do not get to see yet, by the address of its page.
func (p *Proofs) Held() map[string]Held { return p.held() }

func (p *Proofs) holds() map[string]Held {
	held := make(map[string]Held)
	for _, h := range HeldOn(p.edition.site, p.edition.day) {
		held[p.Address(h.File)] = h
	}
	return held
}

// Address gives the address of the page of a file of content; empty if it has
// none.
func (p *Proofs) Address(file string) string { return p.pages()[file] }

func (p *Proofs) addresses() map[string]string {
	addresses := make(map[string]string)
	for s := range p.edition.sheets {
		if s.of != "" && addresses[s.of] == "" { // a recipe's own page comes before its card
			addresses[s.of] = "/" + strings.TrimSuffix(s.path, "index.html")
		}
	}
	return addresses
}

// Asset gives the address of one of the theme's files, as Assets.URL does.
func (p *Proofs) Asset(name string) string { return p.edition.assets.URL(name) }

func byPath(files []File) map[string]File {
	m := make(map[string]File, len(files))
	for _, f := range files {
		m[f.Path] = f
	}
	return m
}
