package build

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"path"
	"regexp"
	"slices"
	"strings"

	"stillroom/content"
	"stillroom/themes"
	"stillroom/validate"
)

// Assets are the pictures and the theme's files under the addresses at which
// they are published. An address holds a hash of the bytes that it stands for,
// so that a browser may keep it for ever.
type Assets struct {
	pictures map[string]Image  // by name relative to content/pictures
	urls     map[string]string // by the theme's name for the file: style.css
	own      map[string][]byte // the theme's files that are not published as they are, by name
	media    map[string]string // by path in the site's folder
	files    []File
	look     func(name string) (Image, bool) // finds a picture that is not among pictures; nil if all are
}

// NewAssets makes the assets of what readers get to see: the theme's files,
// the pictures that something published shows, and the recordings of published
// episodes. What belongs to a draft is held back with it.
//
// If pictures are broken, the error is [BrokenPictures].
func NewAssets(c validate.Checked, t *themes.Theme, d *Darkroom) (*Assets, error) {
	a := &Assets{pictures: make(map[string]Image), urls: make(map[string]string), media: make(map[string]string)}
	if err := checkTheme(t.Files); err != nil {
		return nil, err
	}
	a.addTheme(t.Files)
	e := newEdition(c.Site(), c.Day(), a)
	if err := a.addPictures(c.Site(), shown(e), d); err != nil {
		return nil, err
	}
	for _, ep := range slices.Backward(e.episodes) { // the first that names a recording keeps it
		a.addMedia(c.Site(), ep)
	}
	return a, nil
}

// Picture finds a picture by its name relative to content/pictures.
func (a *Assets) Picture(file string) (Image, bool) {
	i, ok := a.pictures[file]
	if !ok && a.look != nil {
		return a.look(file)
	}
	return i, ok
}

// URL gives the address of one of the theme's files by its name there, or
// nothing if the theme has no such file.
func (a *Assets) URL(name string) string { return a.urls[name] }

// Files gives the files that stand at the addresses, each once.
func (a *Assets) Files() []File {
	files := slices.Clone(a.files)
	slices.SortFunc(files, func(a, b File) int { return strings.Compare(a.Path, b.Path) })
	return slices.CompactFunc(files, func(a, b File) bool { return a.Path == b.Path })
}

// checkTheme refuses a theme whose drawings are more than that: each can be
// opened as a page of the site, which no policy of ours would hold back.
func checkTheme(files []themes.File) error {
	for _, f := range files {
		if path.Ext(f.Name) != ".svg" {
			continue
		}
		if err := content.CheckDrawing(f.Data); err != nil {
			return fmt.Errorf("files/%s of the theme %w", f.Name, err)
		}
	}
	return nil
}

// addTheme gives addresses to what styles refer to before it does to the
// styles, whose own hash must cover the addresses within.
func (a *Assets) addTheme(files []themes.File) {
	a.own = make(map[string][]byte)
	for _, f := range files {
		switch {
		case slices.Contains(ownFiles, f.Name):
			a.own[f.Name] = f.Data
		case f.Name == "scheme.js" && a.keepsCopies():
			a.urls[f.Name] = a.add(f.Name, slices.Concat(f.Data, []byte(";"), a.own["keep.js"]))
		case path.Ext(f.Name) != ".css":
			a.urls[f.Name] = a.add(f.Name, f.Data)
		}
	}
	for _, f := range files {
		if path.Ext(f.Name) == ".css" {
			a.urls[f.Name] = a.add(f.Name, a.pointed(f.Data))
		}
	}
}

// ownFiles of a theme stand at the root of the site, or are a part of another
// file.
var ownFiles = []string{"goodbye.js", "keep.js", "manifest.json", "offline.js"}

// add publishes bytes under their hashed name.
func (a *Assets) add(name string, data []byte) string {
	address := hashed(name, data)
	a.files = append(a.files, NewFile(address[1:], data))
	return address
}

// hashed is the address of bytes: /assets/NAME.HASH.ext. Sixteen hexadecimal
// digits keep any two of 100,000 files apart but for one chance in a thousand
// million.
func hashed(name string, data []byte) string {
	sum := sha256.Sum256(data)
	return addressed(name, strings.ToLower(path.Ext(name)), hex.EncodeToString(sum[:]))
}

// addressed is the address of bytes of which the hash is known.
func addressed(name, ext, sum string) string { return "/assets/" + stem(name) + "." + sum[:16] + ext }

// stem is what of a file's name stands in its address: no more than a disk can
// hold together with the hash.
func stem(name string) string {
	const longest = 200
	s := portable(slug(strings.TrimSuffix(path.Base(name), path.Ext(name))))
	return s[:min(len(s), longest)]
}

// references are the url(NAME) of a style, NAME being a file of the theme.
var references = regexp.MustCompile(`url\(\s*["']?([^"'()\s]+)["']?\s*\)`)

// pointed puts the addresses of files into a style that names them.
func (a *Assets) pointed(css []byte) []byte {
	return references.ReplaceAllFunc(css, func(m []byte) []byte {
		if url, ok := a.urls[string(references.FindSubmatch(m)[1])]; ok {
			return []byte("url(" + url + ")")
		}
		return m
	})
}
