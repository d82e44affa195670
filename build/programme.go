package build

import (
	"cmp"
	"encoding/xml"
	"fmt"
	"path"
	"strings"
	"time"

	"stillroom/content"
)

// A programmeFeed is RSS 2.0 with the elements that listeners' programs and
// directories look for. https://www.rssboard.org/rss-specification,
// https://podcastindex.org/namespace/1.0
type programmeFeed struct {
	XMLName xml.Name  `xml:"rss"`
	Version string    `xml:"version,attr"`
	ITunes  string    `xml:"xmlns:itunes,attr"`
	Podcast string    `xml:"xmlns:podcast,attr"`
	Atom    string    `xml:"xmlns:atom,attr"`
	Content string    `xml:"xmlns:content,attr"`
	Channel programme `xml:"channel"`
}

type programme struct {
	Title       string        `xml:"title"`
	Link        string        `xml:"link"`
	Description string        `xml:"description"`
	Language    string        `xml:"language"`
	Pages       []atomLink    `xml:"atom:link"` // itself, and the other pages of a long feed
	Image       *hrefNode     `xml:"itunes:image"`
	Category    *categoryNode `xml:"itunes:category"`
	Explicit    bool          `xml:"itunes:explicit"`
	Author      string        `xml:"itunes:author,omitempty"`
	Owner       *ownerNode    `xml:"itunes:owner"`
	Kind        string        `xml:"itunes:type"`
	GUID        string        `xml:"podcast:guid,omitempty"`
	Medium      string        `xml:"podcast:medium"`
	Locked      string        `xml:"podcast:locked"` // whether other hosts may not take the feed over
	Person      *personTag    `xml:"podcast:person"`
	Items       []heardNode   `xml:"item"`
}

type hrefNode struct {
	Href string `xml:"href,attr"`
}

type categoryNode struct {
	Text string        `xml:"text,attr"`
	Sub  *categoryNode `xml:"itunes:category"`
}

type ownerNode struct {
	Name  string `xml:"itunes:name,omitempty"`
	Email string `xml:"itunes:email"`
}

type heardNode struct {
	Title       string        `xml:"title"`
	Link        string        `xml:"link"`
	GUID        guidNode      `xml:"guid"`
	Published   string        `xml:"pubDate"`
	Description string        `xml:"description"`
	Notes       *cdataNode    `xml:"content:encoded"`
	Enclosure   enclosureNode `xml:"enclosure"`
	Duration    int64         `xml:"itunes:duration,omitempty"`
	Explicit    bool          `xml:"itunes:explicit"`
	Sort        string        `xml:"itunes:episodeType"`
	Number      int           `xml:"itunes:episode,omitempty"`
	Series      int           `xml:"itunes:season,omitempty"`
	OpenNumber  int           `xml:"podcast:episode,omitempty"`
	OpenSeries  *seasonTag    `xml:"podcast:season"`
	Transcript  *typedNode    `xml:"podcast:transcript"`
	Chapters    *typedNode    `xml:"podcast:chapters"`
}

type cdataNode struct {
	Text string `xml:",cdata"`
}

type seasonTag struct {
	Name   string `xml:"name,attr"`
	Number int    `xml:",chardata"`
}

// A personTag is the one who is heard in every episode, unless an episode names
// its own: https://github.com/Podcastindex-org/podcast-namespace/blob/main/docs/tags/person.md
type personTag struct {
	Role string `xml:"role,attr"`
	Href string `xml:"href,attr"`
	Name string `xml:",chardata"`
}

type guidNode struct {
	IsPermaLink bool   `xml:"isPermaLink,attr"`
	Text        string `xml:",chardata"`
}

type enclosureNode struct {
	URL    string `xml:"url,attr"`
	Length int64  `xml:"length,attr"`
	Type   string `xml:"type,attr"`
}

type typedNode struct {
	URL      string `xml:"url,attr"`
	Type     string `xml:"type,attr"`
	Language string `xml:"language,attr,omitempty"`
	Rel      string `xml:"rel,attr,omitempty"`
}

const programmeAddress = "/programme.xml"

// programme is the feed of the audio programme, the newest episode first. What
// cannot be listened to is not in it.
func (e *edition) programme() []File {
	p := e.settings.Programme
	if p == nil || e.settings.Address.V == "" {
		return nil
	}
	channel := programme{
		Title:       p.Name.V,
		Link:        e.absolute(showNotesAddress),
		Description: p.Summary.V,
		Language:    strings.ToLower(e.language()),
		Category:    category(p.Category.V),
		Explicit:    p.Explicit.V,
		Author:      e.settings.Author.Name.V,
		Kind:        "episodic",
		GUID:        e.feedGUID(),
		Medium:      "podcast",
		Locked:      "no",
	}
	if img, _ := e.assets.Picture(p.Picture.V); img.Cover != nil {
		channel.Image = &hrefNode{e.absolute(img.Cover.Src)}
	}
	if p.Owner.Email.V != "" {
		channel.Owner = &ownerNode{p.Owner.Name.V, p.Owner.Email.V}
	}
	if name := e.settings.Author.Name.V; name != "" {
		channel.Person = &personTag{"host", e.absolute("/"), name}
	}
	for _, ep := range e.episodes {
		rec := e.recording(ep)
		if rec == nil {
			continue
		}
		n := e.heardNode(ep, rec)
		if len(channel.Items) < inFull {
			n.Notes = &cdataNode{inHTML(e.passages(ep))}
		}
		channel.Items = append(channel.Items, n)
	}
	return e.programmePages(channel, inPage)
}

// inFull is of how many episodes, the newest, the feed holds the show notes, so
// that players which ask for it every hour are not sent a book.
const inFull = 100

func (e *edition) heardNode(ep *content.Episode, rec *Recording) heardNode {
	n := heardNode{
		Title:       ep.Name.V,
		Link:        e.absolute(episodeAddress(ep)),
		GUID:        e.guidNode(ep),
		Published:   ep.Published.V.Time().Format(time.RFC1123Z),
		Description: ep.Summary.V,
		Enclosure:   enclosureNode{e.outside(rec.Src), e.audioBytes(ep), cmp.Or(rec.Type, "audio/mpeg")},
		Explicit:    e.settings.Programme.Explicit.V,
		Sort:        "full",
		Number:      ep.Number.V,
		Series:      ep.Series.V,
		OpenNumber:  ep.Number.V,
		Duration:    int64(e.plays(ep).Round(time.Second) / time.Second),
	}
	if ep.Series.Set() {
		n.OpenSeries = &seasonTag{fmt.Sprintf("Series %d", ep.Series.V), ep.Series.V}
	}
	if src, ok := e.assets.Media(mediaPath(ep, ep.Transcript.V)); ok {
		n.Transcript = &typedNode{e.absolute(src), transcriptTypes[strings.ToLower(path.Ext(ep.Transcript.V))], e.language(), "captions"}
	}
	if len(ep.Chapters) > 0 {
		n.Chapters = &typedNode{URL: e.absolute(chaptersAddress(ep)), Type: "application/json+chapters"}
	}
	return n
}

func (e *edition) guidNode(ep *content.Episode) guidNode {
	guid := e.guid(ep)
	return guidNode{IsPermaLink: guid == e.absolute(episodeAddress(ep)), Text: guid}
}

// transcriptTypes are media types by the endings of names.
var transcriptTypes = map[string]string{".vtt": "text/vtt", ".srt": "application/x-subrip"}

// categories are the parts of the directories' categories that a programme on
// food may stand in. Directories want the whole before the part.
// https://podcasters.apple.com/support/1691-apple-podcasts-categories (from
// memory)
var categories = map[string]string{
	"Food":            "Arts",
	"How To":          "Education",
	"Nutrition":       "Health & Fitness",
	"Crafts":          "Leisure",
	"Hobbies":         "Leisure",
	"Home & Garden":   "Leisure",
	"Life Sciences":   "Science",
	"Nature":          "Science",
	"Documentary":     "Society & Culture",
	"Places & Travel": "Society & Culture",
}

func category(name string) *categoryNode {
	if name == "" {
		return nil
	}
	part := &categoryNode{Text: name}
	if whole, ok := categories[name]; ok {
		return &categoryNode{Text: whole, Sub: part}
	}
	return part
}
