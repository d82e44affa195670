package build

import (
	"html"
	"regexp"
	"strconv"
	"strings"
)

// markups finds the tags of our own HTML.
var markups = regexp.MustCompile(`<(/?)([a-z0-9]+)([^>]*)>`)

var hrefs = regexp.MustCompile(`href="([^"]*)"`)

// textOf writes HTML of ours as plain text: paragraphs parted by empty lines,
// an item of a list on a line of its own, and the address of a link behind its
// words.
func textOf(markup string) string {
	var t plainWriter
	last := 0
	for _, m := range markups.FindAllStringSubmatchIndex(markup, -1) {
		t.words(html.UnescapeString(markup[last:m[0]]))
		name, attributes := markup[m[4]:m[5]], markup[m[6]:m[7]]
		if m[3] > m[2] {
			t.shut(name)
		} else {
			t.open(name, attributes)
		}
		last = m[1]
	}
	t.words(html.UnescapeString(markup[last:]))
	return strings.TrimSpace(t.b.String())
}

// A gap parts words; the wider of two counts.
type gap int

const (
	noGap gap = iota
	space
	line
	emptyLine
)

var gaps = [...]string{"", " ", "\n", "\n\n"}

// A plainWriter puts lines together.
type plainWriter struct {
	b     strings.Builder
	due   gap    // before the next words
	lists []int  // of each list around, the number of its last item; below 0 if it has bullets
	fresh int    // where the item just begun has its first words
	cells int    // of the row so far
	link  string // where the words lead to
	began int    // where they began
}

func (t *plainWriter) part(by gap) { t.due = max(t.due, by) }

func (t *plainWriter) put(s string) {
	if t.b.Len() > 0 {
		t.b.WriteString(gaps[t.due])
	}
	t.due = noGap
	t.b.WriteString(s)
}

// words writes what stands between two tags, with single spaces.
func (t *plainWriter) words(s string) {
	rest := strings.TrimLeft(s, " \n\t")
	if len(rest) < len(s) {
		t.part(space)
	}
	for w := range strings.FieldsSeq(rest) {
		t.put(w)
		t.part(space)
	}
	if rest != "" && !strings.ContainsAny(rest[len(rest)-1:], " \n\t") {
		t.due = noGap
	}
}

func (t *plainWriter) open(name, attributes string) {
	switch name {
	case "p", "blockquote", "pre", "table", "hr":
		t.block()
	case "ul", "ol":
		t.block()
		t.lists = append(t.lists, map[string]int{"ul": -1 << 20}[name])
	case "li":
		t.item()
	case "tr":
		t.cells = 0
		t.part(line)
	case "td", "th":
		if t.cells++; t.cells > 1 {
			t.part(space)
			t.put("|")
			t.part(space)
		}
	case "br":
		t.part(line)
	case "a":
		if m := hrefs.FindStringSubmatch(attributes); m != nil {
			t.link, t.began = html.UnescapeString(m[1]), t.b.Len()
		}
	}
}

// block begins or ends a block: within a list it is only a line of its own.
func (t *plainWriter) block() {
	if len(t.lists) > 0 {
		if t.b.Len() > t.fresh {
			t.part(line)
		}
		return
	}
	t.part(emptyLine)
}

func (t *plainWriter) item() {
	depth := len(t.lists) - 1
	if depth < 0 {
		return
	}
	t.lists[depth]++
	mark := "-"
	if n := t.lists[depth]; n > 0 {
		mark = strconv.Itoa(n) + "."
	}
	t.part(line)
	t.put(strings.Repeat("  ", depth) + mark)
	t.part(space)
	t.fresh = t.b.Len()
}

func (t *plainWriter) shut(name string) {
	switch name {
	case "ul", "ol":
		t.lists = t.lists[:max(0, len(t.lists)-1)]
		t.block()
	case "p", "blockquote", "pre", "table":
		t.block()
	case "a":
		if said := strings.TrimSpace(t.b.String()[min(t.began, t.b.Len()):]); t.link != "" && said != t.link {
			t.part(space)
			t.put("(" + t.link + ")")
		}
		t.link = ""
	}
}
