package build

import (
	"cmp"
	"encoding/xml"
	"slices"
	"time"

	"stillroom/content"
)

// An atomFeed is RFC 4287's feed element.
type atomFeed struct {
	XMLName  xml.Name    `xml:"http://www.w3.org/2005/Atom feed"`
	Language string      `xml:"xml:lang,attr"`
	ID       string      `xml:"id"`
	Title    string      `xml:"title"`
	Subtitle string      `xml:"subtitle,omitempty"`
	Updated  string      `xml:"updated"`
	Author   *atomPerson `xml:"author"`
	Links    []atomLink  `xml:"link"`
	Entries  []atomEntry `xml:"entry"`
}

type atomPerson struct {
	Name string `xml:"name"`
}

type atomLink struct {
	Rel  string `xml:"rel,attr"`
	Type string `xml:"type,attr"`
	Href string `xml:"href,attr"`
}

type atomEntry struct {
	ID         string         `xml:"id"`
	Title      string         `xml:"title"`
	Published  string         `xml:"published"`
	Updated    string         `xml:"updated"`
	Links      []atomLink     `xml:"link"`
	Categories []atomCategory `xml:"category"`
	Summary    string         `xml:"summary"`
	Content    atomText       `xml:"content"`
}

// An atomText holds HTML, escaped once: RFC 4287, 3.1.1.2.
type atomText struct {
	Type string `xml:"type,attr"`
	HTML string `xml:",chardata"`
}

type atomCategory struct {
	Term string `xml:"term,attr"`
}

// atom is the feed of recipes: /recipes.atom. It changes with the recipes
// only, so that a reader who asks again is told that nothing is new.
func (e *edition) atom() []File {
	if e.settings.Address.V == "" {
		return nil
	}
	entries := e.feeding()
	feed := atomFeed{
		Language: e.language(),
		ID:       e.site.FirstAddress() + homeAddress,
		Title:    e.settings.Name.V,
		Subtitle: e.settings.Tagline.V,
		Updated:  moment(e.changed(entries)),
		Author:   &atomPerson{cmp.Or(e.settings.Author.Name.V, e.settings.Name.V)},
		Links: []atomLink{
			{"self", "application/atom+xml", e.absolute("/recipes.atom")},
			{"alternate", "text/html", e.absolute(recipesAddress)},
		},
	}
	for _, r := range entries {
		feed.Entries = append(feed.Entries, e.atomEntry(r))
	}
	return []File{NewFile("recipes.atom", mustXML(feed))}
}

func (e *edition) atomEntry(r feedEntry) atomEntry {
	entry := atomEntry{
		ID:        e.feedID(r.Recipe),
		Title:     feedTitle(r.Recipe),
		Published: moment(r.Published.V),
		Updated:   moment(r.LastChange()),
		Links:     []atomLink{{"alternate", "text/html", e.absolute(recipeAddress(r.Recipe))}},
		Summary:   feedSummary(r.Recipe),
		Content:   atomText{"html", r.text},
	}
	for _, term := range feedTags(r.Recipe) {
		entry.Categories = append(entry.Categories, atomCategory{term})
	}
	return entry
}

// moment writes a day as RFC 3339 has it, with a time and a zone.
func moment(d content.Date) string { return d.Time().Format(time.RFC3339) }

// mustXML is for values of our own types, which can always be written. What XML
// cannot hold in a text is replaced.
func mustXML(v any) []byte {
	data, err := xml.Marshal(v)
	if err != nil {
		panic(err)
	}
	return slices.Concat([]byte(xml.Header), data, []byte("\n"))
}
