package content

import (
	"bytes"
	"encoding/xml"
	"regexp"
	"slices"
	"strings"
)

// The namespaces whose elements browsers act on. What stands in others, such as
// the notes of drawing programs, is passed over by them.
const (
	svgSpace   = "http://www.w3.org/2000/svg"
	xhtmlSpace = "http://www.w3.org/1999/xhtml"
	mathSpace  = "http://www.w3.org/1998/Math/MathML"
)

// deepestSVG is how deep the elements of a drawing stand in one another.
const deepestSVG = 200

// notDrawn are the elements of SVG 2, and of SVG Tiny 1.2, that bring in code,
// pages or films: a drawing needs none of them.
var notDrawn = []string{"script", "handler", "listener", "foreignobject", "iframe", "embed", "object", "audio", "video", "canvas", "discard"}

// A guard looks through an SVG for what a drawing has no business to do. Opened
// by its own address it is a page of the site, under no policy of ours.
type guard struct {
	depth   int
	within  int    // how deep the style stands in which we are; 0 if in none
	written []byte // of that style; comments may part its words
	parts   parts
}

// amiss tells what is wrong with a part of an SVG, as a clause; nothing if it
// may stand.
func (g *guard) amiss(t xml.Token) string {
	switch t := t.(type) {
	case xml.ProcInst:
		if t.Target != "xml" {
			return "is an SVG picture that brings in a style sheet"
		}
	case xml.Directive:
		if bytes.Contains(bytes.ToUpper(t), []byte("ENTITY")) {
			return "is an SVG picture that defines entities"
		}
	case xml.CharData:
		if g.within > 0 {
			g.written = append(g.written, t...)
		}
	case xml.EndElement:
		g.parts.end()
		ends := g.within == g.depth
		if g.depth--; ends {
			g.within = 0
			if reachesOut(string(g.written)) {
				return loadsMore
			}
			return g.parts.style(string(g.written))
		}
	case xml.StartElement:
		return g.element(t)
	}
	return ""
}

const (
	holdsScript = "is an SVG picture that holds a script"
	loadsMore   = "is an SVG picture that loads something from elsewhere"
)

func (g *guard) element(e xml.StartElement) string {
	g.parts.begin(e)
	name := strings.ToLower(e.Name.Local)
	if g.depth++; g.depth > deepestSVG {
		return "is an SVG picture whose parts stand too deep in one another"
	}
	if name == "style" && g.within == 0 {
		g.within, g.written = g.depth, nil
	}
	switch space := e.Name.Space; {
	case name == "script", name == "handler", name == "listener":
		return holdsScript
	case space == xhtmlSpace, space == mathSpace, slices.Contains(notDrawn, name):
		return "is an SVG picture that holds more than a drawing"
	}
	for _, a := range e.Attr {
		if message := attribute(name, strings.ToLower(a.Name.Local), a); message != "" {
			return message
		}
	}
	return ""
}

func attribute(element, name string, a xml.Attr) string {
	value := strings.ToLower(strings.Map(seen, a.Value))
	switch {
	case a.Name.Space == "" && strings.HasPrefix(name, "on"), strings.Contains(value, "javascript:"):
		return holdsScript
	case name == "attributename" && (strings.HasSuffix(value, "href") || strings.HasPrefix(value, "on")):
		return holdsScript
	case name == "base" && strings.Contains(a.Name.Space, "XML"), name == "base" && a.Name.Space == "xml":
		return loadsMore
	case name == "href" && element == "a":
		if strings.HasPrefix(value, "data:") {
			return loadsMore
		}
	case name == "href" || name == "src":
		if value != "" && value[0] != '#' && !heldWithin.MatchString(value) {
			return loadsMore
		}
	case a.Name.Space == "" && reachesOut(a.Value):
		return loadsMore
	case name == "style" && keptAddress.MatchString(a.Value):
		return keepsAddress
	}
	return ""
}

// seen leaves out what browsers pass over in an address: white space and
// controls.
func seen(r rune) rune {
	if r <= ' ' || isControl(r) || isHidden(r) {
		return -1
	}
	return r
}

var (
	// heldWithin is a picture that stands in the file itself.
	heldWithin = regexp.MustCompile(`^data:image/(png|jpe?g|gif|webp)[;,]`)
	// addressIn is what a style refers to.
	addressIn = regexp.MustCompile(`(?i)url\(\s*["']?\s*([^"')\s]*)`)
	loading   = regexp.MustCompile(`(?i)@import|image-set\(|expression\(|\bsrc\(|-moz-binding`)
)

// reachesOut reports whether a style or a value of one names what lies outside
// of the file. One with backslashes, by which words can be written so that they
// are not found here, is taken to do so if it has an address at all.
func reachesOut(style string) bool {
	if loading.MatchString(style) {
		return true
	}
	if strings.Contains(style, `\`) && strings.Contains(style, "(") {
		return true
	}
	for _, m := range addressIn.FindAllStringSubmatch(style, -1) {
		to := strings.ToLower(m[1])
		if to != "" && to[0] != '#' && !heldWithin.MatchString(to) && !strings.HasPrefix(to, "data:font/") {
			return true
		}
	}
	return false
}
