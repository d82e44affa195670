package build

import (
	"cmp"
	"encoding/xml"
	"slices"
	"strings"
	"time"

	"stillroom/content"
)

// inFeed is how many recipes a feed holds, the last changed first.
const inFeed = 50

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
	recipes := e.lastChanged()
	feed := atomFeed{
		Language: e.language(),
		ID:       e.absolute("/"),
		Title:    e.settings.Name.V,
		Subtitle: e.settings.Tagline.V,
		Updated:  moment(e.changed(recipes)),
		Author:   &atomPerson{cmp.Or(e.settings.Author.Name.V, e.settings.Name.V)},
		Links: []atomLink{
			{"self", "application/atom+xml", e.absolute("/recipes.atom")},
			{"alternate", "text/html", e.absolute(recipesAddress)},
		},
	}
	for _, r := range recipes {
		feed.Entries = append(feed.Entries, e.atomEntry(r))
	}
	return []File{{Path: "recipes.atom", Data: mustXML(feed)}}
}

func (e *edition) atomEntry(r *content.Recipe) atomEntry {
	entry := atomEntry{
		ID:        e.feedID(r),
		Title:     r.Name.V,
		Published: moment(r.Published.V),
		Updated:   moment(changedOn(r)),
		Links:     []atomLink{{"alternate", "text/html", e.absolute(recipeAddress(r))}},
		Summary:   r.Summary.V,
	}
	for _, term := range feedTags(r) {
		entry.Categories = append(entry.Categories, atomCategory{term})
	}
	return entry
}

// feedTags are the kind of food and the tags, each once.
func feedTags(r *content.Recipe) []string {
	return once(append([]string{string(r.Kind.V)}, texts(r.Tags)...))
}

// feedID is the permanent name of a recipe in feeds: the first address that it
// had on this site. RFC 4287, 4.2.6: it must not change, even when the entry
// moves.
func (e *edition) feedID(r *content.Recipe) string {
	for _, old := range r.Formerly {
		if name, ok := strings.CutPrefix(old.V, recipesAddress); ok && strings.Trim(name, "/") != "" {
			return e.absolute(recipesAddress + strings.Trim(name, "/") + "/")
		}
	}
	return e.absolute(recipeAddress(r))
}

// lastChanged gives the recipes of a feed.
func (e *edition) lastChanged() []*content.Recipe {
	recipes := slices.Clone(e.recipes) // the newest first, which stays so among equals
	slices.SortStableFunc(recipes, func(a, b *content.Recipe) int { return newest(changedOn(a), changedOn(b)) })
	return atMost(recipes, inFeed)
}

// changed is when a feed changed last. The feed of a site without recipes has
// never done so: it is as old as the day.
func (e *edition) changed(recipes []*content.Recipe) content.Date {
	if len(recipes) == 0 {
		return e.day
	}
	return changedOn(recipes[0])
}

// changedOn is the day of a recipe's last change.
func changedOn(r *content.Recipe) content.Date {
	if r.Published.V.Before(r.Updated.V) {
		return r.Updated.V
	}
	return r.Published.V
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
