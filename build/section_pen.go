package build

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
)

// A sectionPen draws shapes of inches at a scale.
type sectionPen struct{ scale float64 }

func newSectionPen(s vesselShape) sectionPen {
	return sectionPen{min(mostHigh/(s.depth+s.wall), mostWide/2/(s.body+s.wall))}
}

func (p sectionPen) x(inches float64) float64 { return sectionAxis + p.scale*inches }
func (p sectionPen) y(inches float64) float64 { return sectionRim + p.scale*inches }

func (p sectionPen) at(x, y float64) string { return px(p.x(x)) + " " + px(p.y(y)) }

// outline gives the path of a shape, grown on all sides but the rim.
func (p sectionPen) outline(s vesselShape, grow float64) string {
	mouth, body := s.mouth+grow, s.body+grow
	neck, shoulder, floor := s.neck, s.neck+s.shoulder, s.depth+grow
	round := min(0.3, body/2)
	bend := s.shoulder * 0.55
	return "M" + p.at(-mouth, 0) + "V" + px(p.y(neck)) +
		"C" + p.at(-mouth, neck+bend) + " " + p.at(-body, shoulder-bend) + " " + p.at(-body, shoulder) +
		"V" + px(p.y(floor-round)) + "Q" + p.at(-body, floor) + " " + p.at(round-body, floor) +
		"H" + px(p.x(body-round)) + "Q" + p.at(body, floor) + " " + p.at(body, floor-round) +
		"V" + px(p.y(shoulder)) +
		"C" + p.at(body, shoulder-bend) + " " + p.at(mouth, neck+bend) + " " + p.at(mouth, neck) +
		"V" + px(p.y(0))
}

// surface is a line from wall to wall that climbs a little at both, as liquid
// does in glass.
func (p sectionPen) surface(s vesselShape, depth float64) string {
	r := s.radiusAt(depth)
	left, right, y := p.x(-r), p.x(r), p.y(depth)
	return fmt.Sprintf("M%s %sQ%s %s %s %sH%sQ%s %s %s %s",
		px(left), px(y-2), px(left+2), px(y), px(left+7), px(y), px(right-7), px(right-2), px(y), px(right), px(y-2))
}

// shade gives four upright strokes along the right wall, each shorter than the
// last, as an engraver rounds a jar.
func (p sectionPen) shade(s vesselShape) string {
	from, to := p.y(s.neck+s.shoulder)+6, p.y(s.depth)-10
	var b strings.Builder
	for i := range 4 {
		short := float64(i) * (to - from) / 11
		fmt.Fprintf(&b, "M%s %sV%s", px(p.x(s.body)-5-4*float64(i)), px(from+short/2), px(to-short))
	}
	return b.String()
}

// The paper label on the body is as wide as the name on it, with some white and
// its rule on both sides.
const (
	labelHigh   = 44.0
	labelWhite  = 11.0 // on each side
	labelLeast  = 78.0
	letterWidth = 8.3 // of Besley 800 at 14 px, on average
)

// stick puts the label where it hides neither the food's surface nor the name
// of a smaller jar: in the middle, or else below one of them.
func (s *JarSection) stick(p sectionPen, shapes []sizedShape, depth float64) {
	floor := p.y(shapes[0].depth)
	tops := []float64{max((p.y(depth)+floor)/2-labelHigh/2, p.y(depth)+10)}
	for _, small := range shapes[1:] {
		tops = append(tops, p.y(small.depth)+5)
	}
	top := tops[0]
	for _, t := range tops {
		if t+labelHigh < floor-4 && !slices.ContainsFunc(shapes[1:], func(o sizedShape) bool {
			name := p.y(o.depth)
			return name > t-4 && name-18 < t+labelHigh
		}) {
			top = t
			break
		}
	}
	letters := letterWidth * float64(len([]rune(s.Size)))
	most := 2*p.scale*shapes[0].body - 6
	wide := min(max(letters+2*labelWhite, labelLeast), most)
	s.Label = Box{px(sectionAxis - wide/2), px(top), px(wide), px(labelHigh)}
	s.LabelRule = fmt.Sprintf("M4 4h%sv%sH4z", px(wide-8), px(labelHigh-8))
	if room := wide - 2*labelWhite; letters > room {
		s.SizeWide = px(room)
	}
	s.SizeAt, s.HoldsAt = px(top+20), px(top+35)
	if s.Holds == "" {
		s.SizeAt = px(top + 27)
	}
}

// lid gives the flat lid that lies on the rim, and the two sides of the band
// that holds it there.
func (p sectionPen) lid(s sizedShape) (lid, band string) {
	r := s.mouth + s.wall
	left, right := p.x(-r), p.x(r)
	if s.box {
		return fmt.Sprintf("M%s %sv-5h%sv5h-7v3h%sv-3z", px(left-5), px(sectionRim+3), px(right-left+10), px(left-right+4)), ""
	}
	lid = fmt.Sprintf("M%s %sv-5h%sv5z", px(left), px(sectionRim), px(right-left))
	side := p.scale * 0.55
	band = fmt.Sprintf("M%s %sh10v-3h-14v%sq-3 2 0 4h4zM%s %sh-10v-3h14v%sq3 2 0 4h-4z",
		px(left), px(sectionRim-5), px(side), px(right), px(sectionRim-5), px(side))
	return lid, band
}

// sectionNotes sets the words beside the jar one below the other, the figure in
// the middle of what it measures, but below the word for the lid.
func sectionNotes(rim, level float64) SectionNotes {
	figure := max((rim+level)/2+7, rim+16)
	return SectionNotes{px(figure), px(figure + 17), px(figure + 33), px(figure + 48)}
}

// px writes a length of a drawing, to a tenth.
func px(x float64) string {
	tenths := math.Round(x * 10)
	if off := math.Abs(x*10 - tenths); math.Abs(tenths) < 1e6 && off < 0.4999 { // else it may be another's turn
		return inTenths(int(tenths))
	}
	s := strconv.FormatFloat(x, 'f', 1, 64)
	if s == "-0.0" {
		return "0"
	}
	return strings.TrimSuffix(s, ".0")
}

// inTenths writes a number of tenths: 12.5, -0.3, 7.
func inTenths(n int) string {
	var b [12]byte
	s := b[:0]
	if n < 0 {
		s, n = append(s, '-'), -n
	}
	s = strconv.AppendInt(s, int64(n/10), 10)
	if n%10 != 0 {
		s = append(s, '.', byte('0'+n%10))
	}
	return string(s)
}
