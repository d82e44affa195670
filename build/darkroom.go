package build

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io/fs"
	"path"
	"runtime"
	"sync"

	"stillroom/build/webp"
	"stillroom/content"
)

// A Darkroom makes the prints of a site's pictures: the sizes, shapes and
// formats in which they are published. The zero Darkroom keeps them in memory.
type Darkroom struct {
	Cache    Cache                 // where prints are kept from one build to the next; may be nil
	Progress func(done, total int) // told of each picture, by one goroutine at a time; may be nil
}

// A Cache keeps bytes by a key. It may lose them at any time, but gives back
// nothing else than what was put. Several builds may use it at once.
type Cache interface {
	Get(key string) (data []byte, ok bool) // nobody may change the data
	Put(key string, data []byte) error     // an error means that the data is not kept
}

// An exposure is one print of a picture.
type exposure struct {
	Use           use
	Format        format
	Width, Height int
	Sum           string // SHA-256 of its bytes, in hexadecimal
	data          []byte // nil if the cache has it
}

// A job is a picture to be printed.
type job struct {
	name  string // relative to content/pictures
	file  string // in the site's folder
	order order
}

// all prints the pictures of a list, some side by side. It gives their prints
// in the order of the list. If any are broken, the error is BrokenPictures.
func (d *Darkroom) all(fsys fs.FS, jobs []job) ([][]exposure, error) {
	prints, errs := make([][]exposure, len(jobs)), make([]error, len(jobs))
	room := newBench(benchPixels)
	var mu sync.Mutex
	done := 0
	SideBySide(len(jobs), func(i int) {
		prints[i], errs[i] = d.one(fsys, jobs[i], room)
		mu.Lock()
		defer mu.Unlock()
		if done++; d.Progress != nil {
			d.Progress(done, len(jobs))
		}
	})
	return prints, gathered(errs)
}

// one gives the prints of one picture, from the cache if it has them.
func (d *Darkroom) one(fsys fs.FS, j job, room *bench) ([]exposure, error) {
	data, err := fs.ReadFile(fsys, j.file)
	if err != nil {
		return nil, fmt.Errorf("read a picture: %w", err)
	}
	img, err := content.ReadImage(j.file, data)
	if err != nil {
		return nil, BrokenPictures{j.name: err.Error()}
	}
	key := sheetKey(img.Format, data, j.order)
	if prints, ok := d.recall(key); ok {
		return prints, nil
	}
	room.take(img.Width * img.Height)
	defer room.give(img.Width * img.Height)
	prints, err := develops(img.Format, data, j.order)
	if err != nil {
		return nil, BrokenPictures{j.name: fmt.Sprintf("%s is broken within: %s", path.Base(j.name), unsigned(err))}
	}
	return prints, d.keep(key, prints)
}

// develops makes all prints of a picture.
func develops(format string, data []byte, o order) ([]exposure, error) {
	m, err := develop(format, data, o.widest())
	if err != nil {
		return nil, err
	}
	var prints []exposure
	for _, c := range o.cuts(m.Rect.Size(), m.Opaque()) {
		part := c.from(m)
		for _, f := range c.formats {
			data, err := f.encode(part)
			if err != nil {
				return nil, err
			}
			sum := sha256.Sum256(data)
			prints = append(prints, exposure{c.use, f, c.w, c.h, hex.EncodeToString(sum[:]), data})
		}
	}
	return prints, nil
}

// printing is raised whenever the same picture gives other prints than before.
const printing = 5

// sheetKey is under what the list of a picture's prints is kept. It changes
// with all that the prints depend on.
func sheetKey(format string, data []byte, o order) string {
	h := sha256.New()
	fmt.Fprintln(h, printing, runtime.Version(), webp.Version, format, o)
	h.Write(data)
	return "sheet-" + hex.EncodeToString(h.Sum(nil))
}

func printKey(p exposure) string { return "print-" + p.Sum }

// recall finds the list of a picture's prints.
func (d *Darkroom) recall(key string) (prints []exposure, ok bool) {
	if d.Cache == nil {
		return nil, false
	}
	data, ok := d.Cache.Get(key)
	return prints, ok && json.Unmarshal(data, &prints) == nil
}

// keep puts prints into the cache. Those that it does not take stay in memory.
func (d *Darkroom) keep(key string, prints []exposure) error {
	if d.Cache == nil {
		return nil
	}
	for i, p := range prints {
		if d.Cache.Put(printKey(p), p.data) == nil {
			prints[i].data = nil
		}
	}
	list, err := json.Marshal(prints)
	if err != nil {
		return err
	}
	_ = d.Cache.Put(key, list) // without it, they are made again the next time
	return nil
}

// bytes gives a print, which is made again if the cache has lost it.
func (d *Darkroom) bytes(fsys fs.FS, j job, p exposure) ([]byte, error) {
	if p.data != nil {
		return p.data, nil
	}
	if data, ok := d.Cache.Get(printKey(p)); ok {
		return data, nil
	}
	again := Darkroom{}
	prints, err := again.one(fsys, j, newBench(benchPixels))
	if err != nil {
		return nil, err
	}
	for _, q := range prints {
		if q.Sum == p.Sum {
			_ = d.Cache.Put(printKey(q), q.data)
			return q.data, nil
		}
	}
	return nil, fmt.Errorf("the picture %s was changed while it was being published", j.name)
}
