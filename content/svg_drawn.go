package content

import (
	"encoding/xml"
	"fmt"
	"slices"
	"strings"
)

// mostDrawn is how many parts a drawing may have once all that it uses again
// stands in its place. Ten lines that use each other ten times are ten thousand
// million parts, and browsers draw them all.
const mostDrawn = 200_000

// Parts are the elements of a drawing, each after the one that it stands in,
// and what its style sheets bring in.
type parts struct {
	all      []part
	open     []int               // that have not ended
	byID     map[string]int      // the first of each, which is the one that counts
	styled   map[string]*brought // by what a rule of a style sheet is about: "path", ".red", "#sky", or "*" for anything
	stylings int                 // how often they bring something in
	points   int                 // the most that a line of the drawing can have
}

type part struct {
	within []int    // what stands right in it
	styles []string // what rules of a style sheet may be about it; none that are about anything
	plain  bool     // it is a run of colours, which is worked out once for all that it fills
	brings brought
	drawn  int // parts when it is drawn; 0 if not counted yet, uncounted while it is
}

const uncounted = -1

// pointing are the elements whose href leads to something without bringing it
// in: SVG 2, 16; SVG Animations Level 2.
var pointing = []string{"a", "set", "animate", "animatemotion", "animatetransform"}

func (p *parts) begin(e xml.StartElement) {
	n := len(p.all)
	if len(p.open) > 0 {
		outer := &p.all[p.open[len(p.open)-1]]
		outer.within = append(outer.within, n)
	}
	p.open = append(p.open, n)
	element := strings.ToLower(e.Name.Local)
	this := part{styles: []string{element}, plain: element == "lineargradient" || element == "radialgradient"}
	for _, a := range e.Attr {
		switch name := strings.ToLower(a.Name.Local); {
		case name == "id" && a.Name.Space == "":
			if p.byID == nil {
				p.byID = make(map[string]int)
			}
			if _, taken := p.byID[a.Value]; !taken {
				p.byID[a.Value] = n
			}
			this.styles = append(this.styles, "#"+a.Value)
		case name == "class":
			classes := strings.Fields(a.Value)
			slices.Sort(classes)
			for _, class := range slices.Compact(classes) {
				this.styles = append(this.styles, "."+class)
			}
		case name == "href":
			if id, ok := strings.CutPrefix(strings.Map(seen, a.Value), "#"); ok && !slices.Contains(pointing, element) {
				this.brings.ids[once] = append(this.brings.ids[once], unescaped(id))
			}
		case name == "d" || name == "points":
			p.points = max(p.points, len(a.Value)/2) // "h1" is the shortest way to the next point
		case name == "style":
			this.brings.declared(a.Value)
		case slices.Contains(pointing, element):
			p.rule("*", "fill:"+a.Value) // a change of whatever it leads to
		default:
			this.brings.value(name, a.Value)
		}
	}
	p.all = append(p.all, this)
}

func (p *parts) end() { p.open = p.open[:max(0, len(p.open)-1)] }

// amiss tells what is wrong with the whole, as a clause; nothing if it may
// stand.
func (p *parts) amiss() string {
	n, ok := p.drawn(0)
	switch {
	case !ok:
		return "is an SVG picture with a part that brings in itself"
	case n > mostDrawn:
		return fmt.Sprintf("is an SVG picture of more than %d parts, with those that it uses again", mostDrawn)
	}
	return ""
}

// drawn counts the parts of one, not far beyond the most. It is not ok if the
// part is among its own parts.
func (p *parts) drawn(i int) (n int, ok bool) {
	this := &p.all[i]
	switch this.drawn {
	case 0:
	case uncounted:
		return 0, false
	default:
		return this.drawn, true
	}
	this.drawn = uncounted
	n = 1
	for _, i := range this.within {
		m, ok := p.drawn(i)
		if !ok {
			return 0, false
		}
		n = most(n + m)
	}
	all := []*brought{&this.brings}
	for _, s := range append(this.styles, "*") {
		if b := p.styled[s]; b != nil {
			all = append(all, b)
		}
	}
	for _, b := range all {
		if !p.count(b) {
			return 0, false
		}
		n = most(n + b.counts[once])
	}
	// What stands in a part inherits how its points are marked and how it is
	// filled, and so may what stands in a mark: SVG 2, 13.2 and 13.7.
	for _, b := range all {
		n = most(n + n*b.counts[ends])
		n = most(n + n*most(b.counts[points]*p.points))
	}
	for _, b := range all {
		n = most(n + n*b.counts[fills])
	}
	this.drawn = n
	return n, true
}

// count adds up the parts that are brought in. It reports whether none was among
// its own parts.
func (p *parts) count(b *brought) bool {
	for how, ids := range b.ids {
		for _, id := range ids {
			i, known := p.byID[id]
			if !known {
				continue
			}
			n, ok := p.drawn(i)
			if !ok {
				return false
			}
			if !p.all[i].plain {
				b.counts[how] = most(b.counts[how] + n)
			}
		}
		b.ids[how] = nil // a style is about many parts, and is counted for the first
	}
	return true
}

// most keeps a count where it can still be multiplied.
func most(n int) int { return min(n, mostDrawn+1) }
