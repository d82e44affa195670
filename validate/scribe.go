package validate

import (
	"html"
	"strings"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"
)

// A scribe puts the words of inline nodes into one line and keeps their
// places.
type scribe struct {
	source []byte
	scroll *scroll
	from   int // where the text begins on the scroll
	pieces []piece
	links  []string
	end    int // in the source, of what was written last
}

// scribe gives one that writes a text. Until it is taken up no other may write.
func (c *cutter) scribe(source []byte) scribe {
	const aParagraph, lines = 500, 8 // or more
	return scribe{source: source, scroll: &c.texts, from: c.texts.begin(aParagraph), pieces: c.pieces.list(lines)}
}

// written gives the text.
func (w *scribe) written() string { return w.scroll.since(w.from) }

// len is how many bytes were written.
func (w *scribe) len() int { return w.scroll.Len() - w.from }

// inline writes what stands below a node. What is struck out is not said.
func (w *scribe) inline(n ast.Node) {
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		switch c := c.(type) {
		case *ast.Text:
			w.segment(c.Segment.Start, c.Segment.Stop, c.IsRaw() || n.Kind() == ast.KindCodeSpan)
			if c.SoftLineBreak() || c.HardLineBreak() {
				w.space()
			}
		case *ast.String:
			w.piece(straightApostrophe.Replace(html.UnescapeString(string(c.Value))), w.end, 1)
		case *ast.Link:
			w.links = append(w.links, string(c.Destination))
			w.inline(c)
		case *ast.AutoLink, *ast.RawHTML, *extast.Strikethrough, *extast.FootnoteLink, *extast.FootnoteBacklink:
		default:
			w.inline(c)
		}
	}
}

// segment writes a stretch of the source. What stands for another character,
// as &frac14; or \*, becomes that character unless raw.
func (w *scribe) segment(from, to int, raw bool) {
	for start := from; start < to; {
		end, blank := w.plainUntil(start, to, raw)
		w.asWritten(start, end, blank)
		start = end
		if end < to {
			start = w.special(end, to)
		}
	}
	w.end = to
}

// plainUntil gives the first place that is special, and whether something before
// it may be blank.
func (w *scribe) plainUntil(from, to int, raw bool) (end int, blank bool) {
	for i, c := range w.source[from:to] {
		if !notPlain[c] {
			continue
		}
		if w.isSpecial(from+i, to, raw) {
			return from + i, blank
		}
		blank = true
	}
	return to, blank
}

// notPlain holds the bytes that isSpecial or hasBlank looks at.
var notPlain = func() (is [256]bool) {
	for c := range byte(' ') {
		is[c] = true
	}
	is['&'], is['\\'], is[0xc2], is[0xe2] = true, true, true, true
	return is
}()

// isSpecial reports whether something at i is not written as it stands.
func (w *scribe) isSpecial(i, to int, raw bool) bool {
	switch w.source[i] {
	case '&', '\\':
		return !raw
	case apostropheMark[0]:
		return strings.HasPrefix(string(w.source[i:min(i+len(apostropheMark), to)]), apostropheMark)
	}
	return false
}

// apostropheMark is the apostrophe that typesetters use. Texts are read with
// the straight one.
const apostropheMark = "’"

var straightApostrophe = strings.NewReplacer(apostropheMark, "'")

// special writes the character that an entity or a backslash at i stands for,
// and gives its end.
func (w *scribe) special(i, to int) int {
	const longest = 32
	if w.source[i] == apostropheMark[0] {
		w.piece("'", i, len(apostropheMark))
		return i + len(apostropheMark)
	}
	if w.source[i] == '\\' {
		if i+1 < to && strings.IndexByte("!\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~", w.source[i+1]) >= 0 {
			i++
		}
		w.piece(string(w.source[i:i+1]), i, 1)
		return i + 1
	}
	if end := strings.IndexByte(string(w.source[i:min(to, i+longest)]), ';'); end > 0 {
		written := string(w.source[i : i+end+1])
		if c := html.UnescapeString(written); c != written {
			w.piece(c, i, len(written))
			return i + end + 1
		}
	}
	w.piece("&", i, 1)
	return i + 1
}

// asWritten writes a stretch of the source in which nothing stands for anything
// else. Something in it may be blank.
func (w *scribe) asWritten(from, to int, blank bool) {
	if from == to {
		return
	}
	w.pieces = append(w.pieces, piece{w.len(), from, to - from})
	if b := w.source[from:to]; blank && hasBlank(b) {
		w.scroll.WriteString(oneLine.Replace(string(b)))
	} else {
		w.scroll.Write(b)
	}
	w.end = to
}

// piece writes what stands for a stretch of the source.
func (w *scribe) piece(s string, source, length int) {
	if s == "" {
		return
	}
	w.pieces = append(w.pieces, piece{w.len(), source, min(length, len(s))})
	w.scroll.WriteString(oneLine.Replace(s))
	w.end = source + length
}

// hasBlank reports whether b may hold something that oneLine replaces.
func hasBlank(b []byte) bool {
	for i, c := range b {
		if ' ' <= c && c < 0x80 {
			continue
		}
		if c < ' ' || i+1 < len(b) && (c == 0xc2 && b[i+1] == 0xa0 || c == 0xe2 && b[i+1] == 0x80) {
			return true // of U+00A0; of U+2000 to U+203F
		}
	}
	return false
}

// oneLine puts spaces in the place of every character that ends a line or
// moves on it, as many as it has bytes.
var oneLine = strings.NewReplacer("\n", " ", "\r", " ", "\t", " ", "\u00a0", "  ", "\u2002", "   ", "\u2003", "   ", "\u2009", "   ", "\u202f", "   ")

func (w *scribe) space() { w.scroll.WriteByte(' ') }
