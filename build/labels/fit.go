package labels

import (
	"fmt"
	"math"
)

// A line is a line of text on a label, or the rule below the name.
type line struct {
	text   string
	face   *face
	size   float64 // in points
	height float64 // that it takes, in millimetres
	before float64 // that is left free above it, in millimetres
	rule   bool
	apart  bool // whether it begins something else than the line above
}

// A fitted label is one that fits.
type fitted struct {
	lines   []line
	leftOut []string // what there was no room for
}

// The sizes of letters, in points. Labels are read at arm's length: PR-05 of
// the table of standards asks for 7.
const (
	largestName  = 28
	smallestName = 8
	largestText  = 12
	smallestText = 7
	sizeStep     = 0.5
)

const point = inch / 72

// How much of a line's size lies above its feet and below them, and how far
// apart lines are. The highest capital with an accent stays inside.
const (
	above    = 0.96
	below    = 0.28
	ruleRoom = 2.0 // millimetres
)

// spare is what a label can do without, in the order in which it is left out.
// What tells the food, its day, its batch and how to keep it always stands.
var spare = []struct {
	name string
	take func(*Label)
}{
	{"the ingredients", func(l *Label) { l.Ingredients = "" }},
	{"where to read more", func(l *Label) { l.Address = "" }},
	{"the size of the jar", func(l *Label) { l.Jar = "" }},
	{"what to do once it is opened", func(l *Label) { l.Then = "" }},
}

// fit sets a label into a box. It shrinks the letters, then breaks the name,
// then leaves out what can be spared.
func (p pen) fit(l Label, width, height float64) (fitted, error) {
	var out fitted
	for i := 0; ; i++ {
		if lines := p.sized(l, width, height); lines != nil {
			out.lines = lines
			return out, nil
		}
		if i == len(spare) {
			return fitted{}, fmt.Errorf("there is no room for “%s” and its days on a label with %.1f by %.1f mm for text", l.Name, width, height)
		}
		before := l
		spare[i].take(&l)
		if l != before {
			out.leftOut = append(out.leftOut, spare[i].name)
		}
	}
}

// sized sets a label in the largest letters that fit; nil if none do. A name is
// broken rather than set small, as parts of the largest size say.
func (p pen) sized(l Label, width, height float64) []line {
	largest := math.Min(largestName, math.Max(smallestName, math.Round(height/point*0.26)))
	for _, rows := range []struct {
		most int
		part float64
	}{{1, 0.55}, {2, 0.5}, {3, 0.45}, {4, 0}} {
		for size := largest; size >= math.Max(smallestName, rows.part*largest); size -= sizeStep {
			lines, ok := p.set(l, size, textBelow(size), rows.most, width)
			if ok && heightOf(lines) <= height {
				return spread(p.enlarged(lines, l, size, width, height), height)
			}
		}
	}
	return nil
}

// textBelow is the size of the text below a name.
func textBelow(name float64) float64 {
	return math.Max(smallestText, math.Min(largestText, name*0.55))
}

// enlarged sets a label again with larger text below its name, if that breaks
// no line that was whole.
func (p pen) enlarged(lines []line, l Label, size, width, height float64) []line {
	for text := math.Min(largestText, size*0.75); text > textBelow(size); text -= sizeStep {
		larger, ok := p.set(l, size, text, len(lines), width)
		if ok && len(larger) <= len(lines) && heightOf(larger) <= height {
			return larger
		}
	}
	return lines
}

// spread gives part of the height that is left to what stands apart.
func spread(lines []line, height float64) []line {
	const most = 1.5 // millimetres
	gap := math.Min(most, (height-heightOf(lines))/8)
	for i := range lines {
		if lines[i].apart {
			lines[i].before = gap
		}
	}
	return lines
}

func heightOf(lines []line) float64 {
	var h float64
	for _, l := range lines {
		h += l.before + l.height
	}
	return h
}

// set sets a label with its name of a size, in no more than so many lines, and
// the text below of another.
func (p pen) set(l Label, size, small float64, most int, width float64) ([]line, bool) {
	var lines []line
	add := func(f *face, size float64, text string) bool {
		if text == "" {
			return true
		}
		rows, ok := p.evenly(f, size, text, width)
		for _, r := range rows {
			lines = append(lines, line{text: r, face: f, size: size, height: size * (above + below) * point})
		}
		return ok
	}
	if !add(display, size, l.Name) || len(lines) > most {
		return nil, false
	}
	lines = append(lines, line{rule: true, height: ruleRoom})
	for _, group := range []func() bool{
		func() bool { return p.pair(bold, small, l.Made, " · ", l.Best, width, add) },
		func() bool { return p.pair(bold, small, l.Keep, " ", l.Then, width, add) },
		func() bool { return p.pair(plain, small, l.Jar, " · ", l.Batch, width, add) },
		func() bool { return add(plain, small, l.Ingredients) },
		func() bool { return add(plain, smallestText, l.Address) },
	} {
		from := len(lines)
		if !group() {
			return nil, false
		}
		if from < len(lines) {
			lines[from].apart = true
		}
	}
	return lines, true
}

// pair sets two texts beside one another, or below where that is too wide.
func (p pen) pair(f *face, size float64, a, between, b string, width float64, add func(*face, float64, string) bool) bool {
	both := a + between + b
	if a != "" && b != "" && p.width(f, size, both) <= width {
		return add(f, size, both)
	}
	return add(f, size, a) && add(f, size, b)
}
