package build

import (
	"math"
	"strings"

	"stillroom/content"
)

// freezerShape gives the shape of a container that is named with its size:
// straight-sided pint jars, quart boxes. A bag has none.
func freezerShape(container string) []sizedShape {
	text := strings.ToLower(container)
	if strings.Contains(text, "bag") {
		return nil
	}
	for _, word := range strings.Fields(text) {
		j, err := content.ParseJar(strings.Trim(word, ",.;"))
		if err != nil || j.Millilitres() == nil {
			continue
		}
		ml, _ := j.Millilitres().Float64()
		box := !strings.Contains(text, "jar")
		s := straight(ml/cubicInch, box)
		return []sizedShape{{s, strings.ToLower(jarName(j)), jarVolume(j), box}}
	}
	return nil
}

// straight gives a vessel without a shoulder: a jar one and a half times as
// high as wide, or a box three quarters as high as wide. From memory, common
// practice: makers differ.
func straight(volume float64, box bool) vesselShape {
	high := 1.5
	if box {
		high = 0.75
	}
	r := math.Cbrt(volume / (2 * high * math.Pi))
	s := vesselShape{mouth: r, body: r, depth: 2 * high * r, wall: glassWall}
	s.neck, s.shoulder = s.depth/4, s.depth/8
	return s
}
