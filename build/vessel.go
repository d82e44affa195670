package build

import (
	"math/big"
	"slices"

	"stillroom/content"
)

// vessel gives the shape in which a recipe stands on a shelf, by the name that
// the theme's drawings have for it: a jar of the size that is filled, or
// the crock, tub, packet or bottle that its main way of keeping calls for.
func vessel(r *content.Recipe) string {
	switch mainWay(r) {
	case content.Fermenting:
		return "crock"
	case content.Freezer:
		return "tub"
	case content.Drying:
		return "packet"
	}
	switch r.Kind.V {
	case content.Syrup, content.Juice, content.Cordial, content.Vinegar, content.Ketchup:
		return "bottle"
	}
	return jarShape(mainJar(r))
}

// vessels gives the shapes of some jars, each once, for the page that draws
// them.
func vessels(rows ...[]Jar) []string {
	var shapes []string
	for _, j := range slices.Concat(rows...) {
		shapes = append(shapes, j.Vessel)
	}
	slices.Sort(shapes)
	return slices.Compact(shapes)
}

func mainWay(r *content.Recipe) content.Way {
	if len(r.Keeping) == 0 {
		return ""
	}
	return r.Keeping[0].Way.V
}

// mainJar is the jar of the first process, or the one that the yield counts.
func mainJar(r *content.Recipe) content.Jar {
	for _, k := range r.Keeping {
		if len(k.Processing) > 0 {
			return k.Processing[0].Jar.V
		}
	}
	return r.Yield.V.Jar
}

// The volumes, in millilitres, above which a jar is drawn as the next shape.
var (
	smallJar = big.NewRat(360, 1) // half-pints and 12-ounce jars are 237 and 355 ml
	pintJar  = big.NewRat(720, 1) // a pint and a half is 710 ml
)

func jarShape(j content.Jar) string {
	if j.IsZero() {
		return "small"
	}
	ml := j.Millilitres()
	switch {
	case ml == nil, ml.Cmp(smallJar) <= 0:
		return "small"
	case ml.Cmp(pintJar) <= 0:
		return "pint"
	}
	return "quart"
}
