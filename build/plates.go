package build

import (
	"sync"

	"stillroom/content"
	"stillroom/themes"
)

// Plates remember the pictures of a site, and the files of its theme, from one
// proof to the next: a picture is read and hashed when a page first shows it,
// and again only when it was changed. The zero Plates are ready.
type Plates struct {
	Darkroom *Darkroom // makes what is shown of the pictures; nil is the zero Darkroom

	mu       sync.Mutex
	theme    *themes.Theme
	of       *Assets // the theme's files
	pictures map[content.File]plate
	known    map[string]File // all files, by path
}

// A plate is a picture as it would be published.
type plate struct {
	image Image
	sound bool
}

// assets gives the assets of a site, of which each picture is looked up when a
// page asks for it.
func (p *Plates) assets(site *content.Site, t *themes.Theme) *Assets {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.theme != t {
		p.theme, p.of = t, &Assets{urls: make(map[string]string)}
		p.of.addTheme(t.Files)
		p.know(p.of.files)
	}
	orders := sync.OnceValue(func() map[string]order { return orders(site) })
	return &Assets{
		urls:  p.of.urls,
		media: make(map[string]string),
		look:  func(name string) (Image, bool) { return p.look(site, name, orders()[name]) },
	}
}

// look finds a picture. One that is broken is not shown; the rules tell its
// author so.
func (p *Plates) look(site *content.Site, name string, o order) (Image, bool) {
	file, ok := site.Pictures[name]
	if !ok {
		return Image{}, false
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	pl, ok := p.pictures[file]
	if !ok {
		a := &Assets{pictures: make(map[string]Image)}
		err := a.addPictures(site, []job{{name, file.Path, o | forPages}}, p.Darkroom)
		pl = plate{a.pictures[name], err == nil}
		p.know(a.files)
		if p.pictures == nil {
			p.pictures = make(map[content.File]plate)
		}
		p.pictures[file] = pl
	}
	return pl.image, pl.sound
}

func (p *Plates) know(files []File) {
	if p.known == nil {
		p.known = make(map[string]File)
	}
	for _, f := range files {
		p.known[f.Path] = f
	}
}

func (p *Plates) find(name string) (File, bool) {
	p.mu.Lock()
	defer p.mu.Unlock()
	f, ok := p.known[name]
	return f, ok
}
