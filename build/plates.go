package build

import (
	"io"
	"io/fs"
	"path"
	"strings"
	"sync"

	"stillroom/content"
	"stillroom/themes"
)

// Plates remember the pictures of a site, the files of its theme and the order of
// its recipes from one proof to the next: a picture is printed when a page first shows it, and again
// only when it was changed. The zero Plates are ready.
type Plates struct {
	Darkroom *Darkroom // makes what is shown of the pictures; nil is the zero Darkroom

	// Printed is told of each picture that has been printed, or why it cannot be.
	// If it is set, no page waits for that: until then it shows the picture as
	// it lies in the site.
	Printed func(content.File, error)

	mu     sync.Mutex
	theme  *themes.Theme
	of     *Assets // the theme's files
	plates map[negative]plate
	known  map[string]File   // all files, by path
	store  *store            // nil if there was no proof before
	stored []*content.Recipe // what it holds, as the site has it
	press  sync.Mutex        // prints one picture at a time: the author's pages come first

	ordered *content.Site           // the last site
	orders  func() map[string]order // its orders
}

// A negative is a picture as it is now, and what it is to be printed for.
type negative struct {
	file  content.File
	order order
}

// A plate is a picture as it is published, and until it is printed as it lies
// in the site. A broken one is not shown; its author is told so.
type plate struct {
	image Image
	sound bool
}

// assets gives the assets of a site, of which each picture is looked up when a
// page asks for it.
func (p *Plates) assets(site *content.Site, t *themes.Theme) *Assets {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.known == nil {
		p.known, p.plates = make(map[string]File), make(map[negative]plate)
	}
	if p.theme != t {
		p.theme, p.of = t, &Assets{urls: make(map[string]string)}
		p.of.addTheme(t.Files)
		p.know(p.of.files)
	}
	orders := p.ordersOf(site)
	return &Assets{
		urls:  p.of.urls,
		own:   p.of.own,
		media: make(map[string]string),
		look:  func(name string) (Image, bool) { return p.look(site, name, orders()[name]|forPages) },
	}
}

// ordersOf gives the orders of a site. They are those of the last one if each
// file names the picture that it named before.
func (p *Plates) ordersOf(site *content.Site) func() map[string]order {
	if p.ordered == nil || !sameOrders(p.ordered, site) {
		p.orders = sync.OnceValue(func() map[string]order { return orders(site) })
	}
	p.ordered = site
	return p.orders
}

// storeOf puts the recipes of a site in order. Most often they are those of the
// last site but for one.
func (p *Plates) storeOf(site *content.Site) *store {
	p.mu.Lock()
	defer p.mu.Unlock()
	next, ok := p.store.exchanged(p.stored, site.Recipes)
	if !ok {
		next = newStore(site.Recipes)
	}
	p.store, p.stored = next, site.Recipes
	return next
}

// look finds a picture by its name relative to content/pictures.
func (p *Plates) look(site *content.Site, name string, o order) (Image, bool) {
	file, ok := site.Pictures[name]
	if !ok {
		return Image{}, false
	}
	key := negative{file, o}
	p.mu.Lock()
	pl, ok := p.plates[key]
	p.mu.Unlock()
	switch {
	case ok:
	case p.Printed == nil, strings.EqualFold(path.Ext(name), ".svg"):
		pl, _ = p.print(site, name, key)
	default:
		pl = p.lay(site, name, key)
	}
	return pl.image, pl.sound
}

// print makes a picture as it is published.
func (p *Plates) print(site *content.Site, name string, key negative) (plate, error) {
	a := &Assets{pictures: make(map[string]Image)}
	err := a.addPictures(site, []job{{name, key.file.Path, key.order}}, p.Darkroom)
	pl := plate{image: a.pictures[name], sound: err == nil}
	p.mu.Lock()
	defer p.mu.Unlock()
	p.plates[key] = pl
	p.know(a.files)
	return pl, err
}

// lay shows a picture as it lies in the site, and has it printed after those
// that wait already.
func (p *Plates) lay(site *content.Site, name string, key negative) plate {
	var pl plate
	pl.image, pl.sound = p.unprinted(site.FS, name, key.file)
	p.mu.Lock()
	defer p.mu.Unlock()
	if other, ok := p.plates[key]; ok {
		return other
	}
	p.plates[key] = pl
	go func() {
		p.press.Lock()
		defer p.press.Unlock()
		_, err := p.print(site, name, key)
		p.Printed(key.file, err)
	}()
	return pl
}

// unprinted publishes a picture as it lies in the site.
func (p *Plates) unprinted(fsys fs.FS, name string, file content.File) (Image, bool) {
	data, err := fs.ReadFile(fsys, file.Path)
	if err != nil {
		return Image{}, false
	}
	img, err := content.ReadImage(file.Path, data)
	if err != nil {
		return Image{}, false
	}
	src := hashed(name, data)
	p.mu.Lock()
	defer p.mu.Unlock()
	p.know([]File{{src[1:], func() (io.ReadSeekCloser, error) { return openIn(fsys, file.Path) }}})
	return Image{Print: Print{Src: src, Width: img.Width, Height: img.Height}}, true
}

func (p *Plates) know(files []File) {
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
