// Package intake turns what lies elsewhere into files of a site: saved pages
// that carry recipes in the words of schema.org into Markdown recipes, and the
// feed of an audio programme into show notes. It also begins recipes and show
// notes of which no more than the name is known.
//
// What it is not sure of it marks with a comment "# check: ..." at its place,
// which the validator reports for as long as it stands there. It never guesses
// how food is kept: no value of canning, and no time of keeping, is taken from a
// page.
package intake

import "stillroom/content"

// A File is to be written into a site.
type File struct {
	Path string // relative to the site's folder, with strokes
	Data []byte
}

// An Arrival is one recipe or episode, ready to be written.
type Arrival struct {
	Name   string
	From   string // where its data stood: the JSON-LD of, the microdata of, the feed
	Text   File
	Extra  []File   // its pictures
	Checks []string // what is marked for the author, in order
}

// A Trouble is something that was not taken over, or only in part.
type Trouble struct {
	Pos  content.Pos // in the page or the feed; only the file if the place is not known
	Says string
}
