package build

import (
	"math"
	"testing"

	"stillroom/content"
)

// A drawing may not promise less room than the jar has. Jars hold a little more
// to the brim than their size says, and straight ones most.
func TestShapesHoldWhatJarsHold(t *testing.T) {
	for _, name := range []string{"quarter-pint", "half-pint", "12-ounce", "pint", "pint-and-a-half", "quart", "half-gallon", "250 ml", "500 ml", "1 l", "1.5 l", "1 ml", "40 l"} {
		j, err := content.ParseJar(name)
		if err != nil {
			t.Fatal(err)
		}
		s := shapeOf(j)
		ml, _ := j.Millilitres().Float64()
		if drawn := s.volume() * cubicInch; drawn < ml-0.01 || drawn > 1.35*ml {
			t.Errorf("%s: drawn with room for %.0f ml, holds %.0f ml", name, drawn, ml)
		}
		if s.body < s.mouth || s.neck+s.shoulder > s.depth {
			t.Errorf("%s: no jar has this shape: %+v", name, s)
		}
	}
}

// From memory, common practice: a pint jar is about 3 1/8 in wide and a quart
// about 3 3/4.
func TestShapesAreAsWideAsJars(t *testing.T) {
	for name, want := range map[string]float64{"half-pint": 2.6, "pint": 3.125, "quart": 3.75, "half-gallon": 4.5} {
		j, err := content.ParseJar(name)
		if err != nil {
			t.Fatal(err)
		}
		s := shapeOf(j)
		if got := 2 * (s.body + s.wall); math.Abs(got-want) > 0.15 {
			t.Errorf("%s: %.2f in wide, want about %.2f", name, got, want)
		}
	}
}

func TestRadiusAt(t *testing.T) {
	s := vesselShape{mouth: 1, neck: 0.75, shoulder: 0.5, body: 2, depth: 5}
	for depth, want := range map[float64]float64{0: 1, 0.75: 1, 1: 1.5, 1.25: 2, 4: 2} {
		if got := s.radiusAt(depth); math.Abs(got-want) > 1e-9 {
			t.Errorf("radius at %v in = %v, want %v", depth, got, want)
		}
	}
}
