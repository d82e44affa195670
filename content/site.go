package content

import "io/fs"

// A Site is all that was read of a site's content, each list in order of
// file.
type Site struct {
	FS       fs.FS // the site's folder, which holds content/
	Settings Settings
	Recipes  []*Recipe
	Episodes []*Episode
	Pages    []*Page
	Pictures map[string]File // by path relative to content/pictures
	Media    map[string]File // audio and transcripts, by path relative to the site's folder
	GUIDs    GUIDs           // by which episodes were published
}

// A File is a file that is used as it is.
type File struct {
	Path    string // relative to the site's folder
	Size    int64
	Changed int64 // when it was changed last, in nanoseconds since 1970: what tells two versions apart
	Sound   Sound // of a recording
}

// Settings are those of content/site.yaml.
type Settings struct {
	File        string
	Name        Field[string]
	Tagline     Field[string]
	Language    Field[string] // BCP 47; "en" if not set
	Author      Author
	Address     Field[string] // https, without a stroke at its end
	Programme   *Programme
	Theme       Field[string]
	Units       Field[Units]
	Altitude    Field[Altitude] // of the author's kitchen
	Labels      Field[Labels]
	Destination Field[string]
	Keys        map[string]Pos
}

// An Author is a name, and a page or a sentence about them.
type Author struct {
	Name, About Field[string]
}

// A Programme is the audio programme.
type Programme struct {
	Pos                              Pos
	Name, Summary, Picture, Category Field[string]
	Explicit                         Field[bool]
	Owner                            Owner
	FeedID                           Field[string]
}

// An Owner can be written to about the programme.
type Owner struct {
	Name, Email Field[string]
}

// Units is the system that is shown first.
type Units string

// The systems of units.
const (
	US     Units = "us"
	Metric Units = "metric"
)

// Labels is a sheet of jar labels: the name of a preset, or a grid.
type Labels struct {
	Preset                       string
	Page                         string // a4 or letter
	Columns, Rows                int
	Width, Height                Length
	ColumnGap, RowGap, Side, Top Length
	Round                        bool // labels are circles
}
