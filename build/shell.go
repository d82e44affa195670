package build

import (
	"html/template"

	"stillroom/content"
)

// A Shell is what every page has around its own matter.
type Shell struct {
	Language    string
	Site        string // the site's name
	Tagline     string
	Author      string
	Title       string // of the window; names the page, then the site
	Description string
	Policy      string // what the browser may load: a content security policy
	Hidden      bool   // to be left out of search engines
	Canonical   string // absolute; empty if the site has no address
	Share       *Share // for previews elsewhere; nil if the site has no address
	Feeds       []Feed
	Data        template.JS // structured data; empty if there is none
	Icon        string
	Style       string
	Styles      []string // of this page alone
	Fonts       []string
	Scheme      string   // the script that runs before the page is painted
	Scripts     []string // in the order in which they run; none for most pages
	Menu        []Link
	Trail       []Link   // from the home page to this one; empty on the home page
	More        []Link   // plain pages, at the foot
	Vessels     []string // the drawings of jars that the page refers to
}

// A Link leads to a page of the site. It is Here if that is the page itself.
type Link struct {
	Name, Address string
	Here          bool
}

// A Feed can be subscribed to.
type Feed struct {
	Type, Title, Address string
}

// A leaf is what a page says of itself to its shell.
type leaf struct {
	address     string
	name        string // empty for the home page
	description string
	trail       []Link // between the home page and this one
	picture     *content.Picture
	article     bool
	nodes       []node   // structured data, besides the trail
	scripts     []string // names of the theme's files
	styles      []string // the same, of styles for this page alone
	audio       string   // absolute address of a recording elsewhere
}

func (e *edition) shell(l leaf) Shell {
	s := Shell{
		Language:    e.language(),
		Site:        e.settings.Name.V,
		Tagline:     e.settings.Tagline.V,
		Author:      e.settings.Author.Name.V,
		Title:       e.title(l.name),
		Description: l.description,
		Policy:      policy(l.audio),
		Feeds:       e.feeds(),
		Icon:        e.assets.URL("icon.svg"),
		Style:       e.assets.URL("style.css"),
		Fonts:       e.fonts(),
		Scheme:      e.assets.URL("scheme.js"),
		Menu:        e.menu(l.address),
		More:        e.more(l.address),
	}
	for _, name := range l.scripts {
		if u := e.assets.URL(name); u != "" {
			s.Scripts = append(s.Scripts, u)
		}
	}
	for _, name := range l.styles {
		s.Styles = append(s.Styles, e.assets.URL(name))
	}
	if l.address != homeAddress {
		s.Trail = append([]Link{{Name: "Home", Address: homeAddress}}, l.trail...)
		s.Trail = append(s.Trail, Link{Name: l.name, Address: l.address, Here: true})
	}
	s.Data = template.JS(e.graph(append(l.nodes, e.trails(s.Trail)...)...))
	if e.settings.Address.V != "" {
		s.Canonical = e.settings.Address.V + l.address
		s.Share = e.share(l)
	}
	return s
}

// trails is the trail as structured data; the home page has none.
func (e *edition) trails(links []Link) []node {
	if len(links) == 0 {
		return nil
	}
	return []node{e.trail(links)}
}

func (e *edition) language() string {
	if e.settings.Language.V == "" {
		return "en"
	}
	return e.settings.Language.V
}

func (e *edition) title(name string) string {
	switch {
	case name != "":
		return name + " · " + e.settings.Name.V
	case e.settings.Tagline.V != "":
		return e.settings.Name.V + ": " + e.settings.Tagline.V
	}
	return e.settings.Name.V
}

func (e *edition) feeds() []Feed {
	if e.settings.Address.V == "" {
		return nil
	}
	name := e.settings.Name.V
	feeds := []Feed{
		{"application/atom+xml", name + ": recipes", "/recipes.atom"},
		{"application/feed+json", name + ": recipes (JSON)", "/recipes.json"},
	}
	if e.settings.Programme != nil {
		feeds = append(feeds, Feed{"application/rss+xml", e.settings.Programme.Name.V, "/programme.xml"})
	}
	return feeds
}

// fonts are those that every page needs before it can be read.
func (e *edition) fonts() []string {
	var fonts []string
	for _, name := range []string{"besley.woff2", "atkinson.woff2"} {
		if u := e.assets.URL(name); u != "" {
			fonts = append(fonts, u)
		}
	}
	return fonts
}

// fewPages is how many plain pages have room in the menu; when there are more,
// they all stand at the foot.
const fewPages = 3

func (e *edition) menu(here string) []Link {
	menu := []Link{{Name: "Recipes", Address: recipesAddress}}
	if len(e.episodes) > 0 {
		menu = append(menu, Link{Name: "Show notes", Address: showNotesAddress})
	}
	if len(e.pages) <= fewPages {
		menu = append(menu, e.more(here)...)
	}
	menu = append(menu, Link{Name: "Search", Address: searchAddress})
	for i := range menu {
		menu[i].Here = menu[i].Address == here
	}
	return menu
}

func (e *edition) more(here string) []Link {
	var links []Link
	for _, p := range e.pages {
		links = append(links, Link{Name: p.Name.V, Address: pageAddress(p), Here: pageAddress(p) == here})
	}
	return links
}
