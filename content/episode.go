package content

// An Episode is one file of content/episodes: an episode's show notes.
type Episode struct {
	File       string
	Slug       string
	Name       Field[string]
	Number     Field[int]
	Series     Field[int]
	Published  Field[Date]
	Status     Field[Status]
	Summary    Field[string]
	Audio      Audio
	Recipes    []Field[string] // slugs
	Chapters   []Chapter
	Transcript Field[string] // file, relative to the episode's own folder
	Links      []Link
	Next       Field[string]
	GUID       Field[string]
	Marks      []Field[string] // what is still to be checked, from comments that begin with "check:"
	Keys       map[string]Pos
	Body       Body
}

// Audio is the recording: a local file or an address.
type Audio struct {
	Pos      Pos
	File     Field[string] // relative to the episode's own folder
	Address  Field[string]
	Bytes    Field[int]
	Duration Field[Duration]
	Type     Field[string] // media type
}

// A Chapter is a mark in the recording.
type Chapter struct {
	Pos    Pos
	At     Field[int] // seconds from the start
	Title  Field[string]
	Recipe Field[string] // slug; empty if it speaks of none
}

// A Link leads out of the site.
type Link struct {
	Title, Address Field[string]
}

// A Page is one file of content/pages.
type Page struct {
	File      string
	Slug      string
	Name      Field[string]
	Summary   Field[string]
	Published Field[Date]
	Updated   Field[Date]
	Status    Field[Status]
	Picture   *Picture
	Keys      map[string]Pos
	Body      Body
}
