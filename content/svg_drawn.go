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

// Parts are the elements of a drawing, each after the one that it stands in.
type parts struct {
	all  []part
	open []int          // that have not ended
	byID map[string]int // the first of each, which is the one that counts
}

type part struct {
	within []int    // what stands right in it
	uses   []string // the ids of what it brings in
	drawn  int      // parts when it is drawn; 0 if not counted yet, uncounted while it is
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
	var this part
	for _, a := range e.Attr {
		switch name := strings.ToLower(a.Name.Local); {
		case name == "id" && a.Name.Space == "":
			if p.byID == nil {
				p.byID = make(map[string]int)
			}
			if _, taken := p.byID[a.Value]; !taken {
				p.byID[a.Value] = n
			}
		case name == "href":
			if id, ok := strings.CutPrefix(strings.Map(seen, a.Value), "#"); ok && !slices.Contains(pointing, strings.ToLower(e.Name.Local)) {
				this.uses = append(this.uses, unescaped(id))
			}
		default:
			for _, m := range addressIn.FindAllStringSubmatch(a.Value, -1) {
				if id, ok := strings.CutPrefix(m[1], "#"); ok {
					this.uses = append(this.uses, unescaped(id))
				}
			}
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
	take := func(i int) bool {
		m, ok := p.drawn(i)
		n = min(n+m, mostDrawn+1)
		return ok
	}
	for _, i := range this.within {
		if !take(i) {
			return 0, false
		}
	}
	for _, id := range this.uses {
		if i, known := p.byID[id]; known && !take(i) {
			return 0, false
		}
	}
	this.drawn = n
	return n, true
}
