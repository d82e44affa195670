package build

import (
	"math"

	"stillroom/content"
)

// A vesselShape is the inside of a round vessel, in inches, from the rim down: a
// straight neck, a shoulder, a straight body.
type vesselShape struct {
	mouth    float64 // radius of the neck
	neck     float64 // how far down it goes
	shoulder float64 // height of the shoulder
	body     float64 // radius of the body
	depth    float64 // from the rim to the floor within
	wall     float64 // thickness of wall and floor
}

// The sizes of US canning jars: mouth and height outside, in inches. From
// memory, common practice: regular mouths are 60 mm wide within, wide ones
// 76 mm, and heights differ by an eighth of an inch among makers.
var jarHeights = []struct {
	name          string
	mouth, height float64
}{
	{"quarter-pint", regularMouth, 2.25},
	{"half-pint", regularMouth, 3.5},
	{"12-ounce", regularMouth, 5.25},
	{"pint", regularMouth, 5},
	{"pint-and-a-half", wideMouth, 6.875},
	{"quart", regularMouth, 6.875},
	{"half-gallon", wideMouth, 9},
}

const (
	regularMouth = 1.18 // radius within
	wideMouth    = 1.5
	glassWall    = 0.11
	cubicInch    = 16.387064 // millilitres, exactly
)

// shapeOf gives a jar's shape: its height is that of its size, and its width
// what it takes to hold as much as the jar does. A size given by volume has the
// proportions of the nearest named one, and a mouth no wider.
func shapeOf(j content.Jar) vesselShape {
	ml, _ := j.Millilitres().Float64()
	s := vesselShape{wall: glassWall}
	nearest := math.Inf(1)
	for _, size := range jarHeights {
		named, err := content.ParseJar(size.name)
		if err != nil {
			panic(err) // the table names a size that is none
		}
		holds, _ := named.Millilitres().Float64()
		if off := math.Abs(math.Log(ml / holds)); off < nearest {
			nearest = off
			larger := math.Cbrt(ml / holds)
			s.mouth, s.depth = size.mouth*min(larger, 1), (size.height-glassWall)*larger
		}
	}
	s.neck = min(0.75, s.depth/4)
	s.shoulder = min(0.6, s.depth/8)
	s.body = max(s.bodyFor(ml/cubicInch), s.mouth)
	return s
}

// bodyFor gives the radius at which the shape holds a volume in cubic inches:
// a cylinder, the frustum of a cone, and a cylinder.
func (s vesselShape) bodyFor(volume float64) float64 {
	a := s.depth - s.neck - s.shoulder + s.shoulder/3
	b := s.mouth * s.shoulder / 3
	c := s.mouth*s.mouth*(s.neck+s.shoulder/3) - volume/math.Pi
	return (math.Sqrt(b*b-4*a*c) - b) / (2 * a)
}

// volume gives what the shape holds to the rim, in cubic inches.
func (s vesselShape) volume() float64 {
	frustum := s.shoulder / 3 * (s.mouth*s.mouth + s.mouth*s.body + s.body*s.body)
	return math.Pi * (s.mouth*s.mouth*s.neck + frustum + s.body*s.body*(s.depth-s.neck-s.shoulder))
}

// radiusAt gives the radius within at a depth below the rim.
func (s vesselShape) radiusAt(depth float64) float64 {
	t := min(max((depth-s.neck)/s.shoulder, 0), 1)
	return s.mouth + (s.body-s.mouth)*t*t*(3-2*t)
}
