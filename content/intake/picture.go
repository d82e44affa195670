package intake

import (
	"encoding/base64"
	"io/fs"
	"net/url"
	"path"
	"strings"

	"stillroom/content"
)

// An image is an element of the page.
type image struct {
	src, alt string
	name     string // of its file
}

const (
	maxPicture    = 32 << 20 // bytes of the largest picture that is taken
	mostAddresses = 20       // of pictures of a recipe, the first of which is taken that is there
)

// writePicture writes the picture of a recipe, and gives its file. It is taken
// from the page itself or from beside it, and never fetched: where it cannot be
// found, the author learns its address.
func (r *reader) writePicture(f *front, t *thing, slug string) []File {
	remote := ""
	addresses := addressesOf(t.all("image", "thumbnailUrl", "photo"), 0)
	for _, address := range addresses[:min(len(addresses), mostAddresses)] {
		data, alt := r.picture(address)
		ext := pictureEnding(data)
		if ext == "" {
			if remote == "" && !strings.HasPrefix(address, "data:") {
				remote = address
			}
			continue
		}
		f.WriteString("picture:\n  file: " + slug + ext + "\n")
		if alt != "" {
			f.key("  ", "alt", alt, "say what the picture shows; these are the words of the page")
		} else {
			f.check("  ", "write alt: what the picture shows; the page does not say")
		}
		return []File{{"content/pictures/" + slug + ext, data}}
	}
	if remote != "" {
		f.check("", "the picture was not saved with the page; it lay at "+remote)
	}
	return nil
}

// addressesOf gives the addresses of pictures, which may be things.
func addressesOf(vs []value, depth int) []string {
	var all []string
	for _, v := range vs {
		switch {
		case v.thing == nil:
			all = append(all, strings.TrimSpace(v.text))
		case len(v.thing.props) == 0 && v.thing.id != "":
			all = append(all, v.thing.id)
		case depth < 2: // a picture whose address is a thing
			all = append(all, addressesOf(v.thing.all("contentUrl", "url"), depth+1)...)
		}
	}
	return all
}

// picture finds the bytes of a picture, and what the page says it shows. A
// browser that saves a page keeps the names of its pictures.
func (r *reader) picture(address string) (data []byte, alt string) {
	if data := inAddress(address); data != nil {
		return data, ""
	}
	name := fileOf(address)
	if name == "" {
		return nil, ""
	}
	for _, img := range r.images {
		if img.src == address && alt == "" {
			alt = img.alt
		}
		if img.name != name {
			continue
		}
		if data := r.beside(img.src); data != nil {
			return data, img.alt
		}
	}
	return r.beside(address), alt
}

// fileOf gives the name of the file that an address ends in.
func fileOf(address string) string {
	u, err := url.Parse(address)
	if err != nil || u.Path == "" || strings.HasSuffix(u.Path, "/") {
		return ""
	}
	return path.Base(u.Path)
}

// beside reads a file that was saved with the page; nil if it was not, or lies
// elsewhere.
func (r *reader) beside(src string) []byte {
	u, err := url.Parse(src)
	if err != nil || u.Scheme != "" || u.Host != "" || r.Beside == nil {
		return nil
	}
	name := path.Clean(u.Path)
	if !fs.ValidPath(name) {
		return nil
	}
	info, err := fs.Stat(r.Beside, name)
	if err != nil || !info.Mode().IsRegular() || info.Size() > maxPicture {
		return nil
	}
	data, err := fs.ReadFile(r.Beside, name)
	if err != nil {
		return nil
	}
	return data
}

// inAddress reads a picture that is written into its own address: data: with
// base64, RFC 2397.
func inAddress(address string) []byte {
	head, body, ok := strings.Cut(address, ",")
	if !ok || !strings.HasPrefix(head, "data:image/") || !strings.HasSuffix(head, ";base64") || len(body) > maxPicture {
		return nil
	}
	data, err := base64.StdEncoding.DecodeString(strings.Join(strings.Fields(body), ""))
	if err != nil {
		return nil
	}
	return data
}

// pictureEnding gives the ending that belongs to a picture; empty if the bytes
// are none that a site takes. SVG may hold scripts and is not taken from pages.
func pictureEnding(data []byte) string {
	for _, ext := range []string{".jpg", ".png", ".webp"} {
		if len(data) > 0 {
			if _, err := content.ReadImage("picture"+ext, data); err == nil {
				return ext
			}
		}
	}
	return ""
}
