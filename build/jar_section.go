package build

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stillroom/content"
)

// A JarSection is a jar cut through, to scale, with its headspace measured from
// the rim. It is drawn in units of which the picture is sectionWide across.
type JarSection struct {
	ID        string
	Name      string // what the picture shows
	Told      string // the same facts in words
	Height    string
	Rim       string // how far down the rim is
	Level     string // and the food
	Left      string // the inside of the neck
	Right     string
	Inside    string // path of the inside, to the rim
	Glass     string // path of the wall, with the inside left out of it
	Surface   string // path of the food's surface
	Shade     string // path of the strokes that round the jar
	Lid       string // paths of lid and band; the band is empty for a box
	Band      string
	Label     Box // a paper label on the body
	Size      string
	SizeAt    string // how far down the two lines of the label stand
	Holds     string
	HoldsAt   string
	Others    []JarOutline // smaller sizes, of which the headspace is the same
	Headspace Figure
	Notes     SectionNotes
	Why       *Why // what the headspace is for; set by who has the other reasons
}

// A Box is a rectangle of a drawing.
type Box struct{ X, Y, Width, Height string }

// A JarOutline is the inside of a smaller jar.
type JarOutline struct {
	Path, Name, Foot string // Foot is how far down its name stands
}

// SectionNotes are the heights of what stands beside the jar.
type SectionNotes struct{ Figure, Also, Word, Fill string }

// The measures of the picture. At 320 px it is drawn at its size, so that its
// smallest words are 12 px high.
const (
	sectionWide = 244.0
	sectionAxis = 72.0 // of the jar, from the left
	sectionRim  = 28.0
	mostHigh    = 230.0 // the jar
	mostWide    = 132.0
)

// jarSection is nil where nothing is said of headspace, or nothing that has a
// shape: a bag.
func jarSection(k *content.Keeping, id string) *JarSection {
	shapes := sectionShapes(k)
	headspace, ok := k.Headspace.V.In(content.Inch)
	if len(shapes) == 0 || !ok {
		return nil
	}
	depth, _ := headspace.Low.Float64()
	largest := shapes[0]
	if depth >= largest.depth/2 {
		return nil // no jar is meant to be half empty: what was written is not drawn
	}
	p := newSectionPen(largest.vesselShape)
	s := &JarSection{
		ID:        id + "-section",
		Height:    px(sectionRim + p.scale*(largest.depth+largest.wall) + 6),
		Rim:       px(sectionRim),
		Level:     px(p.y(depth)),
		Left:      px(p.x(-largest.mouth)),
		Right:     px(p.x(largest.mouth)),
		Inside:    p.outline(largest.vesselShape, 0) + "z",
		Glass:     p.outline(largest.vesselShape, largest.wall) + "z" + p.outline(largest.vesselShape, 0) + "z",
		Surface:   p.surface(largest.vesselShape, depth),
		Size:      capital(largest.name),
		Holds:     largest.holds,
		Headspace: inBothUnits(k.Headspace.V),
		Notes:     sectionNotes(p.y(0), p.y(depth)),
	}
	s.Lid, s.Band = p.lid(largest)
	for _, small := range shapes[1:] {
		s.Others = append(s.Others, JarOutline{p.outline(small.vesselShape, 0), small.name, px(p.y(small.depth) - 6)})
	}
	s.Shade = p.shade(largest.vesselShape)
	s.stick(p, shapes, depth)
	s.tell(k)
	return s
}

// A sizedShape is a shape that has a name.
type sizedShape struct {
	vesselShape
	name, holds string
	box         bool // has a push-on lid in place of lid and band
}

// sectionShapes gives the jars of a way, the largest first.
func sectionShapes(k *content.Keeping) []sizedShape {
	if k.Way.V == content.Freezer {
		return freezerShape(k.Container.V)
	}
	if !k.Way.V.Canned() {
		return nil
	}
	var shapes []sizedShape
	for _, p := range k.Processing {
		if p.Jar.Set() && p.Jar.V.Millilitres() != nil {
			shapes = append(shapes, sizedShape{shapeOf(p.Jar.V), strings.ToLower(jarName(p.Jar.V)), jarVolume(p.Jar.V), false})
		}
	}
	slices.SortStableFunc(shapes, func(a, b sizedShape) int { return int(1000 * (b.volume() - a.volume())) })
	return slices.CompactFunc(shapes, func(a, b sizedShape) bool { return a.name == b.name })
}

// A sectionPen draws shapes of inches at a scale.
type sectionPen struct{ scale float64 }

func newSectionPen(s vesselShape) sectionPen {
	return sectionPen{min(mostHigh/(s.depth+s.wall), mostWide/2/(s.body+s.wall))}
}

func (p sectionPen) x(inches float64) float64 { return sectionAxis + p.scale*inches }
func (p sectionPen) y(inches float64) float64 { return sectionRim + p.scale*inches }

// outline gives the path of a shape, grown on all sides but the rim.
func (p sectionPen) outline(s vesselShape, grow float64) string {
	mouth, body := s.mouth+grow, s.body+grow
	neck, shoulder, floor := s.neck, s.neck+s.shoulder, s.depth+grow
	round := min(0.3, body/2)
	bend := s.shoulder * 0.55
	var b strings.Builder
	fmt.Fprintf(&b, "M%s %sV%s", px(p.x(-mouth)), px(p.y(0)), px(p.y(neck)))
	fmt.Fprintf(&b, "C%s %s %s %s %s %s", px(p.x(-mouth)), px(p.y(neck+bend)), px(p.x(-body)), px(p.y(shoulder-bend)), px(p.x(-body)), px(p.y(shoulder)))
	fmt.Fprintf(&b, "V%sQ%s %s %s %s", px(p.y(floor-round)), px(p.x(-body)), px(p.y(floor)), px(p.x(round-body)), px(p.y(floor)))
	fmt.Fprintf(&b, "H%sQ%s %s %s %s", px(p.x(body-round)), px(p.x(body)), px(p.y(floor)), px(p.x(body)), px(p.y(floor-round)))
	fmt.Fprintf(&b, "V%s", px(p.y(shoulder)))
	fmt.Fprintf(&b, "C%s %s %s %s %s %s", px(p.x(body)), px(p.y(shoulder-bend)), px(p.x(mouth)), px(p.y(neck+bend)), px(p.x(mouth)), px(p.y(neck)))
	fmt.Fprintf(&b, "V%s", px(p.y(0)))
	return b.String()
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

// The paper label on the body.
const (
	labelWide = 78.0
	labelHigh = 44.0
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
	s.Label = Box{px(sectionAxis - labelWide/2), px(top), px(labelWide), px(labelHigh)}
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

// inBothUnits gives a headspace as it is written and in the other unit: inches
// in millimetres, and millimetres in hundredths of an inch.
func inBothUnits(h content.Length) Figure {
	f := headspaceFact(h).Figure
	if in := h.Inches(); f.Also == "" && in != nil {
		f.Also = decimal(in.FloatString(2)) + "\u00a0in"
	}
	return f
}

func (s *JarSection) tell(k *content.Keeping) {
	room := s.Headspace.Number + "\u00a0" + s.Headspace.Unit
	if s.Headspace.Also != "" {
		room += " (" + s.Headspace.Also + ")"
	}
	s.Name = "Headspace: " + room
	s.Told = "A " + strings.ToLower(s.Size) + " jar cut through, to scale. From the rim down to the food, " + room + " is left free."
	if k.Way.V == content.Freezer {
		s.Told = "A " + strings.ToLower(s.Size) + " freezer container cut through, to scale. From the rim down to the food, " + room + " is left free."
	}
	for _, o := range s.Others {
		s.Told += " The outline of a " + o.Name + " jar lies within: its headspace is the same."
	}
}

// px writes a length of a drawing, to a tenth.
func px(x float64) string {
	s := strconv.FormatFloat(x, 'f', 1, 64)
	if s == "-0.0" {
		return "0"
	}
	return strings.TrimSuffix(s, ".0")
}
