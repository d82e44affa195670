package build

import (
	"cmp"
	"fmt"
	"io/fs"
	"path"
	"strings"

	"stillroom/content"
)

// An Image is a picture as it is published.
type Image struct {
	Print         // the largest, in a format that everything can show
	Plain []Print // the same in several widths, the narrowest first
	WebP  []Print // and in WebP; none of a drawing
	Crops []Print // the middle of it in the shapes of search results
	Share *Print  // in the shape of previews elsewhere; nil if none was asked for
	Cover *Print  // a square for listeners' programs; nil if none was asked for
}

// A Print is one file of a picture.
type Print struct {
	Src           string // address, from the root: /assets/damson-jam.HASH.jpg
	Type          string // image/jpeg
	Width, Height int    // in pixels
}

// addPictures publishes pictures. What is drawn in lines is published as it is,
// and the others as prints.
func (a *Assets) addPictures(site *content.Site, jobs []job, d *Darkroom) error {
	d = cmp.Or(d, new(Darkroom))
	var photos []job
	var errs []error
	for _, j := range jobs {
		if strings.EqualFold(path.Ext(j.name), ".svg") {
			errs = append(errs, a.addDrawing(site.FS, j))
		} else {
			photos = append(photos, j)
		}
	}
	prints, err := d.all(site.FS, photos)
	if err := gathered(append(errs, err)); err != nil {
		return err
	}
	for i, j := range photos {
		a.addPhoto(site.FS, j, prints[i], d)
	}
	return nil
}

func (a *Assets) addPhoto(fsys fs.FS, j job, prints []exposure, d *Darkroom) {
	var img Image
	for _, e := range prints {
		p := Print{addressed(j.name, string(e.Format), e.Sum), mediaTypes[e.Format], e.Width, e.Height}
		img.take(e, p)
		a.files = append(a.files, madeLater(p.Src[1:], func() ([]byte, error) { return d.bytes(fsys, j, e) }))
	}
	a.pictures[j.name] = img
}

// take puts a print where it is found again.
func (i *Image) take(e exposure, p Print) {
	switch {
	case e.Use == aCrop:
		i.Crops = append(i.Crops, p)
	case e.Use == aShare:
		i.Share = &p
	case e.Use == aCover:
		i.Cover = &p
	case e.Format == asWebP:
		i.WebP = append(i.WebP, p)
	default:
		i.Plain = append(i.Plain, p)
		i.Print = p
	}
}

// addDrawing publishes a drawing, which has every size in one file. Its bytes
// are read again when it is written.
func (a *Assets) addDrawing(fsys fs.FS, j job) error {
	img, data, err := readDrawing(fsys, j)
	if err != nil {
		return err
	}
	p := Print{hashed(j.name, data), "image/svg+xml", img.Width, img.Height}
	a.pictures[j.name] = Image{Print: p}
	a.files = append(a.files, madeLater(p.Src[1:], func() ([]byte, error) {
		_, data, err := readDrawing(fsys, j)
		return data, err
	}))
	return nil
}

func readDrawing(fsys fs.FS, j job) (content.Image, []byte, error) {
	data, err := fs.ReadFile(fsys, j.file)
	if err != nil {
		return content.Image{}, nil, fmt.Errorf("read a picture: %w", err)
	}
	img, err := content.ReadImage(j.file, data)
	if err != nil {
		return content.Image{}, nil, BrokenPictures{j.name: err.Error()}
	}
	return img, data, nil
}

// srcset lists prints for a browser to choose from: HTML Living Standard, 4.8.4.3.
func srcset(prints []Print) string {
	var all []string
	for _, p := range prints {
		all = append(all, fmt.Sprintf("%s %dw", p.Src, p.Width))
	}
	return strings.Join(all, ", ")
}
