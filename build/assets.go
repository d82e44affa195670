package build

// Assets are the pictures and the theme's files under the addresses at which
// they are published.
type Assets struct {
	pictures map[string]Image  // by name relative to content/pictures
	urls     map[string]string // by the theme's name for the file: style.css
}

// An Image is a picture as it is published.
type Image struct {
	Src           string // address, from the root: /assets/damson-jam.HASH.jpg
	Width, Height int    // in pixels, as it is to be shown upright
}

// Picture finds a picture by its name relative to content/pictures.
func (a *Assets) Picture(file string) (Image, bool) {
	i, ok := a.pictures[file]
	return i, ok
}

// URL gives the address of one of the theme's files by its name there, or
// nothing if the theme has no such file.
func (a *Assets) URL(name string) string { return a.urls[name] }
