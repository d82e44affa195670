package build

import (
	"slices"
	"strings"

	"stillroom/content"
)

// A JarSection is a jar cut through, to scale, with its headspace measured from
// the rim.
type JarSection struct {
	ID        string
	Name      string // what the picture shows
	Told      string // the same facts in words
	Height    string
	Rim       string // how far down the rim is
	Level     string // and the food
	Right     string // where the neck ends within
	Inside    string // path of the inside, to the rim
	Glass     string // path of the wall, with the inside left out of it
	Surface   string // path of the food's surface
	Shade     string // path of the strokes that round the jar
	Lid       string // paths of lid and band; the band is empty for a box
	Band      string
	Label     Box    // a paper label on the body
	LabelRule string // the line within it
	SizeWide  string // into what width the size is pressed; empty if it has room
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
type SectionNotes struct{ Figure, Also, Word, Meaning string }

// The measures of the picture, which is 244 wide. On a screen of 320 px it is
// drawn at its size, so that its smallest words are 12 px high.
const (
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
