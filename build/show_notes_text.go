package build

import (
	"bytes"
	"fmt"
	"html"
	"net/url"
	"regexp"
	"strings"

	"github.com/yuin/goldmark/ast"

	"stillroom/content"
)

// A Passage is a part of the show notes of an episode, as they are read
// elsewhere: in a player, or pasted into a form.
type Passage struct {
	Name  string // the links
	HTML  string // paragraphs, lists and links alone; every address is whole
	Text  string // the same without marks
	Spare int    // what can be done without: the highest goes first, 0 never
}

// Passages are the show notes of an episode, in order, as of a day: what is
// held back until later is named without a link. The page of the episode need
// not be out. Without an address of the site there are no links to it.
func Passages(site *content.Site, ep *content.Episode, day content.Date) []Passage {
	if day.Before(ep.Published.V) {
		day = ep.Published.V // what comes out with it can be linked to
	}
	summary := Passage{Name: "the summary", HTML: paragraph(html.EscapeString(ep.Summary.V)), Text: ep.Summary.V}
	return append([]Passage{summary}, newEdition(site, day, nil).passages(ep)...)
}

// How soon a passage is left out where there is no room for all.
const (
	spareRecipes = iota + 1
	spareChapters
	spareNotes
	spareNext
	spareLinks
)

// passages are the show notes without the summary.
func (e *edition) passages(ep *content.Episode) []Passage {
	all := e.notePassages(ep)
	add := func(spare int, name, heading string, items []string) {
		if len(items) > 0 {
			all = append(all, passage(spare, name, titled(heading, items)))
		}
	}
	add(spareRecipes, "the recipes", "Recipes", e.recipeItems(ep))
	if len(ep.Chapters) > 0 {
		all = append(all, e.chapterPassage(ep))
	}
	if ep.Next.V != "" {
		all = append(all, passage(spareNext, "what comes next", paragraph("<strong>Next time:</strong> "+html.EscapeString(ep.Next.V))))
	}
	add(spareLinks, "the links", "To read further", linkItems(ep))
	if e.settings.Address.V != "" {
		page, holds := e.absolute(episodeAddress(ep)), "Show notes"
		if ep.Transcript.Set() {
			holds = "Transcript and show notes"
		}
		all = append(all, passage(0, "the address", paragraph(holds+": "+linkTo(page, page))))
	}
	return all
}

func passage(spare int, name, markup string) Passage {
	return Passage{Name: name, HTML: markup, Text: textOf(markup), Spare: spare}
}

// notePassages are the sections of the body. A section stands or falls whole:
// a figure may depend on the sentences around it.
func (e *edition) notePassages(ep *content.Episode) []Passage {
	md := newMarkdown(e.isOut, func(string, string) *Picture { return nil })
	if e.settings.Address.V == "" {
		md.out = func(string) bool { return false }
	}
	md.away, _ = url.Parse(e.absolute(episodeAddress(ep))) // nil if there is none
	var all []Passage
	var b bytes.Buffer
	name := "the show notes"
	end := func() {
		if markup := clean(b.String(), md.away); markup != "" {
			all = append(all, passage(spareNotes, name, markup))
		}
		b.Reset()
	}
	for _, n := range children(ep.Body.Doc) {
		if n.Kind() == ast.KindHeading {
			end()
			name = fmt.Sprintf("the show notes under “%s”", ep.Body.Plain(n))
		}
		if err := md.render(&b, ep.Body.Source, n); err != nil {
			panic(err) // a buffer takes all that is written
		}
	}
	end()
	return all
}

func (e *edition) recipeItems(ep *content.Episode) (items []string) {
	for _, r := range e.spokenOf(ep) {
		items = append(items, e.pageLink(r.Name.V, recipeAddress(r)))
	}
	return items
}

// chapterPassage has the page of the episode play from each chapter. In plain
// text the times stand alone: players make links of them, and long addresses
// would bury them.
func (e *edition) chapterPassage(ep *content.Episode) Passage {
	var linked, bare []string
	for _, c := range ep.Chapters {
		at, title := clockTime(c.At.V), " "+html.EscapeString(c.Title.V)
		if r := e.recipe[c.Recipe.V]; r != nil {
			title += " – " + e.pageLink(r.Name.V, recipeAddress(r))
		}
		linked = append(linked, e.pageLink(at, fmt.Sprintf("%s#t=%d", episodeAddress(ep), c.At.V))+title)
		bare = append(bare, at+title)
	}
	p := passage(spareChapters, "the chapters", titled("Chapters", linked))
	p.Text = textOf(titled("Chapters", bare))
	return p
}

func linkItems(ep *content.Episode) (items []string) {
	for _, l := range ep.Links {
		items = append(items, linkTo(l.Title.V, l.Address.V))
	}
	return items
}

// pageLink leads to a page of the site; without an address it is only a name.
func (e *edition) pageLink(name, address string) string {
	if e.settings.Address.V == "" {
		return html.EscapeString(name)
	}
	return linkTo(name, e.absolute(address))
}

func linkTo(name, address string) string {
	return `<a href="` + html.EscapeString(address) + `">` + html.EscapeString(name) + "</a>"
}

func paragraph(markup string) string { return "<p>" + markup + "</p>" }

func titled(heading string, items []string) string {
	return paragraph("<strong>"+heading+"</strong>") + "\n<ul>\n<li>" + strings.Join(items, "</li>\n<li>") + "</li>\n</ul>"
}

// framing is what our pages put around a text, and others have no use for.
var framing = regexp.MustCompile(` (?:class|scope|tabindex|aria-label|role|id)="[^"]*"|</?section>`)

// quotes are what typography has put in place of typed marks, in fewer bytes.
var quotes = strings.NewReplacer("&ldquo;", "“", "&rdquo;", "”", "&lsquo;", "‘", "&rsquo;", "’",
	"&ndash;", "–", "&mdash;", "—", "&hellip;", "…", "&laquo;", "«", "&raquo;", "»")

// clean takes framing away, and has links within the page lead to it.
func clean(markup string, page *url.URL) string {
	markup = framing.ReplaceAllString(framing.ReplaceAllString(markup, ""), "") // a section is bare only after the first time
	if page != nil {
		markup = strings.ReplaceAll(markup, `href="#`, `href="`+html.EscapeString(page.String())+"#")
	}
	return strings.TrimSpace(quotes.Replace(markup))
}
