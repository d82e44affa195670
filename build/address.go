package build

import (
	"fmt"
	"net/url"
	"strings"
	"time"
	"unicode"

	"stillroom/content"
)

// The addresses of pages, from the root of the site. They are promised to
// readers and other programs, and never change.
const (
	homeAddress      = "/"
	recipesAddress   = "/recipes/"
	showNotesAddress = "/show-notes/"
	searchAddress    = "/search/"
)

func recipeAddress(r *content.Recipe) string   { return recipesAddress + r.Slug + "/" }
func episodeAddress(e *content.Episode) string { return showNotesAddress + e.Slug + "/" }
func pageAddress(p *content.Page) string       { return "/" + p.Slug + "/" }
func produceAddress(name string) string        { return "/produce/" + portable(slug(name)) + "/" }
func monthAddress(m time.Month) string         { return "/season/" + strings.ToLower(m.String()) + "/" }
func wayAddress(w content.Way) string          { return "/keeping/" + string(w) + "/" }

// pagePath is where the page of an address lies on disk.
func pagePath(address string) string { return strings.TrimPrefix(address, "/") + "index.html" }

// slug makes a name fit for an address: lower-case ASCII letters, digits and
// hyphens, and never empty unless the name is.
func slug(name string) string {
	b := make([]byte, 0, 64)
	gap := false
	for _, c := range name {
		c = unicode.ToLower(c)
		ascii := plain(c)
		if ascii == "" {
			gap = len(b) > 0
			continue
		}
		if gap {
			b = append(b, '-')
			gap = false
		}
		b = append(b, ascii...)
	}
	return string(b)
}

// portable gives a number to what Windows would take for a device: the site may
// be made or kept there.
func portable(slug string) string {
	if content.IsDevice(slug) {
		return slug + "-1"
	}
	return slug
}

// plain gives the ASCII letters for a lower-case letter or a digit, a number
// for a letter of another script, and nothing for what parts two words.
func plain(c rune) string {
	switch {
	case c >= 'a' && c <= 'z', c >= '0' && c <= '9':
		return digitsAndLetters[strings.IndexByte(digitsAndLetters, byte(c)):][:1]
	case !unicode.IsLetter(c) && !unicode.IsDigit(c):
		return ""
	}
	if i := strings.IndexRune(accented, c); i >= 0 {
		return unaccented[len([]rune(accented[:i]))]
	}
	return fmt.Sprintf("u%x", c)
}

const digitsAndLetters = "0123456789abcdefghijklmnopqrstuvwxyz"

const accented = "àáâãäåāæçčèéêëēìíîïīłñńòóôõöøōœřśšßùúûüūýÿžźż"

var unaccented = strings.Fields(
	"a a a a ae a a ae c c e e e e e i i i i i l n n o o o o oe o o oe r s s ss u u u ue u y y z z z")

// addresses gives all that a link within the site may lead to, without what
// follows a # or a ?.
func (e *edition) addresses() map[string]bool {
	out := map[string]bool{homeAddress: true, recipesAddress: true, searchAddress: true}
	for _, r := range e.withdrawn {
		out[recipeAddress(r)] = true
		out[cardAddress(r)] = true
	}
	for _, ep := range e.episodes {
		out[episodeAddress(ep)] = true
		out[showNotesAddress] = true
	}
	for _, p := range e.pages {
		out[pageAddress(p)] = true
	}
	for _, h := range e.harvests {
		out[h.address] = true
	}
	for m := time.January; m <= time.December; m++ {
		out[monthAddress(m)] = true
	}
	for _, w := range wayNames {
		out[wayAddress(w.way)] = len(e.kept[w.way]) > 0
	}
	for _, f := range e.feeds() {
		out[f.Address] = true
	}
	return out
}

// internal reports whether an address is one of the site's own, and not a mark
// on the same page.
func internal(address string) bool {
	u, err := url.Parse(address)
	return err == nil && u.Scheme == "" && u.Host == "" && u.Path != ""
}

// isOut reports whether the page of an address within the site can be read.
func (e *edition) isOut(address string) bool {
	u, err := url.Parse(address)
	return err == nil && (e.hasRecipe(u.Path) || e.out()[u.Path])
}

// hasRecipe reports whether an address is that of a recipe, or of its card.
func (e *edition) hasRecipe(address string) bool {
	slug, _, _ := strings.Cut(strings.TrimPrefix(address, recipesAddress), "/")
	r, ok := e.recipe[slug]
	return ok && (address == recipeAddress(r) || address == cardAddress(r))
}
