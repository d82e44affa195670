package intake

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"net/url"
	"regexp"
	"strings"
	"unicode/utf8"

	"golang.org/x/net/html"
	"golang.org/x/net/html/charset"
	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/unicode"

	"stillroom/content"
)

// MaxPage is the largest page or feed that is read, in bytes: pages that hold
// their pictures are seldom over ten million.
const MaxPage = 64 << 20

// A Page is a web page that was saved.
type Page struct {
	Name   string // as the user calls it; what its data is found at
	Data   []byte
	Beside fs.FS // the folder that it lies in, for its pictures; nil if there is none

	// Produce finds the produce that some words speak of, in the plural; nil
	// if nobody knows.
	Produce func(words string) (plural string, ok bool)
}

// ReadPage gives the recipes that a page carries in the words of schema.org, as
// JSON-LD or else as microdata, and what it could not take over. An error means
// that the page could not be read at all.
func ReadPage(p Page) ([]Arrival, []Trouble, error) {
	if len(p.Data) > MaxPage {
		return nil, nil, fmt.Errorf("%s holds %d MB, and no more than %d are read", p.Name, len(p.Data)>>20, MaxPage>>20)
	}
	r := &reader{Page: p, slugs: make(map[string]int)}
	if err := r.parse(); err != nil {
		return nil, nil, err
	}
	from := "the JSON-LD of"
	found := recipesIn(r.scripts())
	if len(found) == 0 {
		from = "the microdata of"
		found = recipesIn(readMicrodata(r.root))
	}
	r.rest()
	var all []Arrival
	for _, t := range r.readable(distinct(found)) {
		a := r.recipe(t)
		a.From = from
		all = append(all, a)
	}
	if len(all) == 0 && len(found) == 0 {
		r.trouble(0, "holds no recipe that a program could read: neither JSON-LD nor microdata of schema.org")
	}
	return all, r.troubles, nil
}

// readable gives the recipes that may be read, and reports the others.
func (r *reader) readable(found []*thing) []*thing {
	var all []*thing
	left := mostData
	for _, t := range found {
		weight, ok := weigh(t)
		name := t.line("name", "headline")
		ok = ok && len(name) <= longestName
		left -= weight
		if ok && left >= 0 && len(all) < mostRecipes {
			all = append(all, t)
			continue
		}
		at := bytes.Index(r.text, []byte(name[:min(len(name), 20)]))
		why := "is longer or more tangled than any that is written for people"
		if ok {
			why = fmt.Sprintf("comes after %d others, and no more are read of a page", len(all))
		}
		r.trouble(at+1, fmt.Sprintf("the recipe %q %s, and was left out", clipped(name), why))
	}
	return all
}

// A reader reads one page.
type reader struct {
	Page
	text     []byte // in UTF-8, with plain line ends
	root     *html.Node
	address  string // where the page was, if it says so
	images   []image
	slugs    map[string]int // how many recipes went by each
	troubles []Trouble
}

var errDeep = errors.New("its elements are nested too deeply to be a page for people")

// parse reads the page in the writing that it declares, or in the one that its
// bytes suggest.
func (r *reader) parse() error {
	letters, said := encodingOf(r.Data)
	text, err := letters.NewDecoder().Bytes(r.Data)
	if err != nil {
		return fmt.Errorf("%s: its letters could not be read: %w", r.Name, err)
	}
	r.text = bytes.TrimPrefix(text, []byte("\uFEFF"))
	for _, odd := range [][2]string{{"\r\n", "\n"}, {"\r", "\n"}, {"\x00", "\uFFFD"}} { // as html.Parse does it
		r.text = bytes.ReplaceAll(r.text, []byte(odd[0]), []byte(odd[1]))
	}
	if err := overgrown(r.Name, r.text, false); err != nil {
		return err
	}
	if said != "" {
		bad := invalidAt(r.Data)
		pos := content.Pos{File: r.Name, Line: bytes.Count(r.Data[:bad], []byte("\n")) + 1}
		r.troubles = append(r.troubles, Trouble{pos, said})
	}
	r.root, err = html.Parse(bytes.NewReader(r.text))
	if err != nil {
		return fmt.Errorf("%s: %w", r.Name, errDeep)
	}
	return nil
}

// encodingOf finds how letters are written, after the HTML standard: by the mark
// of their order, or by what the first kilobyte declares. Many pages declare it
// later, or not at all. What is said is for the author, where that is not true:
// a half that is read as another letter, or not at all, is another recipe.
func encodingOf(data []byte) (e encoding.Encoding, said string) {
	e, name, certain := charset.DetermineEncoding(data, "")
	switch {
	case certain && name != "utf-8":
		return e, ""
	case utf8.Valid(data):
		return unicode.UTF8, ""
	}
	if m := declared.FindSubmatch(data); m != nil {
		if late, lateName := charset.Lookup(string(m[1])); late != nil {
			e, name = late, lateName
		}
	}
	if name == "utf-8" {
		return insteadOfUTF8(data)
	}
	return e, ""
}

// insteadOfUTF8 finds how a page is written that should be UTF-8 and is not:
// as old programs write, or with letters broken.
func insteadOfUTF8(data []byte) (e encoding.Encoding, said string) {
	broken, sound := 0, 0
	for rest := data; len(rest) > 0; {
		r, size := utf8.DecodeRune(rest)
		switch {
		case r == utf8.RuneError && size == 1:
			broken++
		case size > 1:
			sound++
		}
		rest = rest[size:]
	}
	if sound > broken {
		return unicode.UTF8, "letters are broken from here on, and a question mark stands for each: put them right, amounts above all"
	}
	return charmap.Windows1252, "the page is to be UTF-8, and from here on it is not: it was read as windows-1252, so look at every letter that is not plain, and at ½ and °"
}

// invalidAt gives the offset of the first byte that is no UTF-8.
func invalidAt(data []byte) int {
	at := 0
	for at < len(data) {
		r, size := utf8.DecodeRune(data[at:])
		if r == utf8.RuneError && size == 1 {
			break
		}
		at += size
	}
	return at
}

var declared = regexp.MustCompile(`(?i)<meta[^>]{1,200}charset\s*=\s*["']?([\w-]{3,30})`)

// scripts reads the JSON-LD of the page, and reports what is broken at its
// place.
func (r *reader) scripts() []*thing {
	var things []*thing
	from, left := 0, mostData
	for n := range r.root.Descendants() {
		if n.Type != html.ElementNode || n.Data != "script" || n.FirstChild == nil ||
			!strings.HasPrefix(strings.ToLower(strings.TrimSpace(attr(n, "type"))), "application/ld+json") {
			continue
		}
		script := n.FirstChild.Data
		if left -= len(script) + ofScript; left < 0 {
			r.trouble(r.place(script, &from)+1, "the page holds more JSON-LD than any that is written for people; from here on it was not read")
			break
		}
		found, err := readJSONLD(script)
		var broken *brokenJSON
		if errors.As(err, &broken) && len(r.troubles) < mostTroubles {
			r.trouble(r.place(script, &from)+broken.offset, "this JSON-LD is broken and was not read: "+broken.Error())
		}
		things = append(things, found...)
	}
	return things
}

// place finds where a script stands, behind from, which moves on to its end. A
// script is raw text: it stands there as it is.
func (r *reader) place(script string, from *int) int {
	at := bytes.Index(r.text[*from:], []byte(script))
	if at < 0 {
		return *from
	}
	at += *from
	*from = at + len(script)
	return at
}

// trouble reports something at an offset of the text, from 1; 0 is nowhere.
// Nobody reads hundreds of them.
func (r *reader) trouble(offset int, says string) {
	if len(r.troubles) >= mostTroubles {
		return
	}
	pos := content.Pos{File: r.Name}
	if before := offset - 1; before >= 0 && before <= len(r.text) {
		pos.Line = bytes.Count(r.text[:before], []byte("\n")) + 1
		pos.Col = before - bytes.LastIndexByte(r.text[:before], '\n')
	}
	r.troubles = append(r.troubles, Trouble{pos, says})
}

// rest reads what else of the page helps: where it was, and its pictures.
func (r *reader) rest() {
	for n := range r.root.Descendants() {
		switch n.Data {
		case "link":
			if strings.EqualFold(attr(n, "rel"), "canonical") {
				r.address = addressOf(attr(n, "href"))
			}
		case "img":
			if src := attr(n, "src"); len(r.images) < mostImages {
				r.images = append(r.images, image{src: src, name: fileOf(src), alt: oneLine(attr(n, "alt"))})
			}
		}
	}
}

// addressOf gives an address of a page in full; empty if it is none.
func addressOf(href string) string {
	if strings.HasPrefix(href, "//") {
		href = "https:" + href
	}
	if u, err := url.Parse(href); err != nil || u.Scheme != "https" && u.Scheme != "http" || u.Host == "" || u.User != nil || strings.ContainsAny(href, ` \`) {
		return ""
	}
	return href
}

// distinct gives each recipe once: pages often say the same twice. Of two that
// share a name, one that lists other ingredients is another recipe.
func distinct(found []*thing) []*thing {
	var all []*thing
	seen := make(map[string]bool)
	for _, t := range found {
		name := t.line("name", "headline") + "\n"
		whole := name + listed(t)
		if !seen[whole] {
			seen[name], seen[whole] = true, true
			all = append(all, t)
		}
	}
	return all
}

// listed is what a recipe lists, to tell it from another of its name.
func listed(t *thing) string {
	var words []string
	for _, v := range t.all("recipeIngredient", "ingredients") {
		words = append(words, strings.Fields(v.words())...)
	}
	return strings.Join(words, " ")
}
