package intake

import (
	"bytes"
	"errors"
	"fmt"
	"strings"

	"golang.org/x/net/html"

	"stillroom/content"
)

// What is read of a file at most. Real pages and feeds hold a tenth of it or
// less, and no file may take the memory or the hours of whoever reads it.
const (
	mostTags     = 1 << 20   // of a page or a feed, each of which becomes some hundred bytes
	mostOfTags   = 1 << 20   // attributes of all tags
	longestTag   = 8 << 20   // bytes of a tag, which may hold a picture, or of what stands between two
	mostData     = 2 << 20   // bytes that a page says in the words of schema.org
	ofScript     = 1 << 10   // bytes of them that a script counts for, however short
	mostText     = 256 << 10 // bytes of a recipe, or of show notes
	mostElements = 5000      // in one text
	mostMarks    = 1000      // of Markdown in one text: each is looked at together with the others
	mostMarked   = 200_000   // such marks in all show notes of a feed
	mostRecipes  = 500
	mostImages   = 5000
	mostTroubles = 100
	longestName  = 1000 // bytes
	longestSlug  = 100
)

// overgrown reports a page or a feed that holds more than may be read.
func overgrown(name string, data []byte, feed bool) error {
	if bytes.Count(data, []byte("<")) > mostTags {
		return fmt.Errorf("%s: it holds more than %d tags, and nothing that is written for people does", name, mostTags)
	}
	z := html.NewTokenizer(bytes.NewReader(data))
	z.SetMaxBuf(longestTag)
	z.AllowCDATA(feed)
	line, attributes := 1, 0
	for z.Next() != html.ErrorToken {
		if feed {
			z.NextIsNotRawText() // the names of HTML mean nothing there
		}
		for _, more := z.TagName(); more; attributes++ {
			_, _, more = z.TagAttr()
		}
		if attributes > mostOfTags {
			return fmt.Errorf("%s: up to line %d its tags have more than %d attributes, and nothing that is written for people does", name, line, mostOfTags)
		}
		line += bytes.Count(z.Raw(), []byte("\n"))
	}
	if errors.Is(z.Err(), html.ErrBufferExceeded) {
		return fmt.Errorf("%s: on line %d begins a tag or a text of more than %d MB, and nobody writes one", name, line, longestTag>>20)
	}
	return nil
}

// isTangled reports whether a text holds more tags or marks than it may. To
// write Markdown takes the square of their number.
func isTangled(text string) bool {
	return len(text) > mostText || strings.Count(text, "<") > mostElements || marksIn(text) > mostMarks
}

// marksIn counts what Markdown might take for a mark.
func marksIn(text string) (n int) {
	for _, mark := range []string{"*", "_", "[", "]", "`", "~"} {
		n += strings.Count(text, mark)
	}
	return n
}

// weigh gives how many bytes a thing and all that lies in it say, without
// pictures; ok is false if that is more than a recipe may, or too tangled.
func weigh(t *thing) (weight int, ok bool) {
	const ofValue = 20
	seen := make(map[*thing]bool)
	var add func(t *thing, depth int) bool
	add = func(t *thing, depth int) bool {
		if t == nil || seen[t] || depth > maxDepth {
			return true
		}
		seen[t] = true
		for _, vs := range t.props {
			for _, v := range vs {
				if strings.HasPrefix(v.text, "data:image/") {
					continue
				}
				if weight += ofValue + len(v.text); weight > mostText || isTangled(v.text) || !add(v.thing, depth+1) {
					return false
				}
			}
		}
		return true
	}
	ok = add(t, 0)
	return weight, ok
}

// slugOf makes an address of a name, which is no longer than a file's name may
// be.
func slugOf(name, otherwise string) string {
	slug := content.Slug(name)
	if len(slug) > longestSlug {
		slug = strings.TrimRight(slug[:longestSlug], "-")
	}
	if slug == "" {
		return otherwise
	}
	return slug
}

// clipped is as much of a text as a message quotes.
func clipped(text string) string {
	const most = 60
	if runes := []rune(text[:min(len(text), 4*most)]); len(runes) > most {
		return string(runes[:most]) + "…"
	}
	return text
}
