package intake

import (
	"errors"
	"slices"
	"strings"

	"golang.org/x/net/html"
)

// readMicrodata reads the things that the attributes of a page describe, after
// the HTML standard, 5 Microdata.
func readMicrodata(root *html.Node) []*thing {
	m := &microdata{ids: make(map[string]*html.Node), left: mostProps, paper: paper{room: mostData}}
	for n := range root.Descendants() {
		if id := attr(n, "id"); id != "" && m.ids[id] == nil {
			m.ids[id] = n
		}
	}
	var things []*thing
	for n := range root.Descendants() {
		if hasAttr(n, "itemscope") && !hasAttr(n, "itemprop") {
			things = append(things, m.thing(n, nil))
		}
	}
	return things
}

type microdata struct {
	ids  map[string]*html.Node
	left int // how many elements may be looked at yet
	paper
}

// A paper is what texts are written on, until it is full: elements that lie in
// one another can say the same hundreds of times.
type paper struct {
	written strings.Builder
	room    int // bytes
}

var errFull = errors.New("the paper is full")

func (p *paper) Write(b []byte) (int, error) {
	if p.room -= len(b); p.room < 0 {
		return 0, errFull
	}
	return p.written.Write(b)
}

// mostProps is how many elements are looked at: references can make a small
// page say the same without end.
const mostProps = 200_000

// thing reads an element with itemscope; above are the elements that it lies
// in, none of which can be its own part.
func (m *microdata) thing(n *html.Node, above []*html.Node) *thing {
	t := &thing{id: attr(n, "itemid")}
	for _, name := range strings.Fields(attr(n, "itemtype")) {
		t.types = append(t.types, shortType(name))
	}
	above = append(above, n)
	if len(above) > maxDepth {
		return t
	}
	m.below(t, n, above)
	for _, id := range strings.Fields(attr(n, "itemref")) {
		if other := m.ids[id]; other != nil {
			m.prop(t, other, above)
		}
	}
	return t
}

func (m *microdata) below(t *thing, n *html.Node, above []*html.Node) {
	for c := range n.ChildNodes() {
		m.prop(t, c, above)
	}
}

// prop reads the property that an element gives, and those below it that are
// the thing's as well.
func (m *microdata) prop(t *thing, n *html.Node, above []*html.Node) {
	m.left--
	if m.left < 0 || slices.Contains(above, n) {
		return
	}
	names := strings.Fields(attr(n, "itemprop"))
	scope := hasAttr(n, "itemscope")
	if len(names) > 0 {
		v := value{}
		if scope {
			v.thing = m.thing(n, above)
		} else {
			v.text = m.propText(n)
		}
		for _, name := range names {
			t.add(shortType(name), v)
		}
	}
	if !scope {
		m.below(t, n, above)
	}
}

// valueIn says which attribute holds the value of an element.
var valueIn = map[string]string{
	"meta": "content", "audio": "src", "embed": "src", "iframe": "src", "img": "src", "source": "src", "track": "src",
	"video": "src", "a": "href", "area": "href", "link": "href", "object": "data", "data": "value", "meter": "value",
	"time": "datetime",
}

// propText gives the value of an element. A text keeps its elements, since a
// list of steps is told by them.
func (m *microdata) propText(n *html.Node) string {
	if name := valueIn[n.Data]; name != "" && hasAttr(n, name) {
		return attr(n, name)
	}
	if hasAttr(n, "content") { // common on other elements too
		return attr(n, "content")
	}
	m.written.Reset()
	for c := range n.ChildNodes() {
		if err := html.Render(&m.paper, c); err != nil {
			return ""
		}
	}
	return m.written.String()
}

func attr(n *html.Node, name string) string {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val
		}
	}
	return ""
}

func hasAttr(n *html.Node, name string) bool {
	for _, a := range n.Attr {
		if a.Key == name {
			return true
		}
	}
	return false
}
