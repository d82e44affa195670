package build

import (
	"encoding/xml"
	"fmt"
	"net/url"
	"slices"
	"strings"

	"stillroom/content"
)

// inSitemap is how many pages one sitemap lists. The protocol allows 50,000,
// and 52,428,800 bytes; with addresses of up to 2,048 letters, this many stay
// under both. https://www.sitemaps.org/protocol.html
const inSitemap = 20_000

type sitemap struct {
	XMLName xml.Name      `xml:"http://www.sitemaps.org/schemas/sitemap/0.9 urlset"`
	Pages   []sitemapPage `xml:"url"`
}

type sitemapIndex struct {
	XMLName xml.Name      `xml:"http://www.sitemaps.org/schemas/sitemap/0.9 sitemapindex"`
	Maps    []sitemapPage `xml:"sitemap"`
}

type sitemapPage struct {
	Loc     string `xml:"loc"`
	LastMod string `xml:"lastmod,omitempty"`
}

// sitemap lists those pages that a search engine may show: /sitemap.xml. A day
// of change stands only where the content gives one.
func (e *edition) sitemap(pages []File) []File {
	if e.settings.Address.V == "" {
		return nil
	}
	var addresses []string
	for _, f := range pages {
		address, ok := strings.CutSuffix("/"+f.Path, "index.html")
		if ok && !hidden(address) {
			addresses = append(addresses, address)
		}
	}
	return e.sitemapFiles(addresses, inSitemap)
}

// sitemapFiles lists pages in one file, or in several and an index of them.
func (e *edition) sitemapFiles(addresses []string, most int) []File {
	if len(addresses) <= most {
		return []File{e.sitemapFile("sitemap.xml", addresses)}
	}
	var files []File
	var index sitemapIndex
	for part := range slices.Chunk(addresses, most) {
		name := fmt.Sprintf("sitemap-%d.xml", len(files)+1)
		files = append(files, e.sitemapFile(name, part))
		index.Maps = append(index.Maps, sitemapPage{Loc: e.absolute("/" + name)})
	}
	return append(files, NewFile("sitemap.xml", mustXML(index)))
}

func (e *edition) sitemapFile(name string, addresses []string) File {
	return madeLater(name, func() ([]byte, error) {
		var s sitemap
		days := e.changeDays()
		for _, address := range addresses {
			loc := e.absolute((&url.URL{Path: address}).EscapedPath())
			s.Pages = append(s.Pages, sitemapPage{loc, days[address].String()})
		}
		return mustXML(s), nil
	})
}

// hidden reports whether a page asks search engines to leave it out: the print
// card of a recipe does.
func hidden(address string) bool {
	return strings.HasPrefix(address, recipesAddress) && strings.HasSuffix(address, "/card/")
}

// changeDays gives the day of the last change of each page that has one: pages
// of content, and the lists of recipes and of episodes.
func (e *edition) changeDays() map[string]content.Date {
	days := make(map[string]content.Date)
	later := func(address string, d content.Date) {
		if days[address].Before(d) {
			days[address] = d
		}
	}
	for _, r := range slices.Concat(e.recipes, e.withdrawn) {
		for _, address := range []string{recipeAddress(r), recipesAddress, homeAddress} {
			later(address, r.LastChange())
		}
	}
	for _, ep := range e.episodes {
		for _, address := range []string{episodeAddress(ep), showNotesAddress, homeAddress} {
			later(address, ep.Published.V)
		}
	}
	for _, p := range e.pages {
		later(pageAddress(p), p.Published.V)
		later(pageAddress(p), p.Updated.V)
	}
	return days
}

// robots lets crawlers in everywhere: what must not be listed says so itself,
// and has to be read for that. RFC 9309.
func (e *edition) robots() []File {
	text := "User-agent: *\nAllow: /\n"
	if e.settings.Address.V != "" {
		text += "\nSitemap: " + e.absolute("/sitemap.xml") + "\n"
	}
	return []File{NewFile("robots.txt", []byte(text))}
}
