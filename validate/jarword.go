package validate

import (
	"slices"
	"sync"

	"stillroom/content"
)

var notJars = fewOf("pot pan kettle saucepan stockpot of basket box boxes carton freezer bag bags bowl container containers water vinegar measure")

// sizeWords are the words that a size of jar ends with.
var sizeWords = fewOf("pint pints quart quarts liter litre gallon gallons")

// jarAt gives the size of jar that is named at a word: pints, quart jars, each
// half-pint; empty for an amount or a pot, as 2 quarts of water and an 8-quart
// pot.
func (s *sentence) jarAt(i int) string {
	if !s.isOne(i, &sizeWords) {
		return ""
	}
	size := ""
	switch s.word(i) {
	case "pint", "pints":
		size = "pint"
	case "quart", "quarts":
		size = "quart"
	case "liter", "litre":
		if !s.isAny(i+1, "jar jars") || s.at(i).after != 0 || i > 0 && s.at(i-1).number().set() {
			return ""
		}
		return "quart" // as the jars of 1 l are sold in place of quarts
	case "gallon", "gallons":
		size = "gallon"
	}
	if s.isOne(i+1, &notJars) && s.at(i).after == 0 {
		return ""
	}
	before := i - 1
	switch {
	case s.isAny(before, "half"):
		size, before = "half-"+size, before-1
	case size == "quart" && s.isAny(before, "two 2") && s.isAny(i+1, "jar jars"):
		size, before = "half-gallon", before-1
	case s.isAny(before, "quarter"):
		size, before = "quarter-"+size, before-1
	}
	if size == "gallon" || size == "quarter-quart" || size == "half-quart" {
		return ""
	}
	jars := s.isAny(i+1, "jar jars")
	numbered := before >= 0 && (s.at(before).number().set() || s.is(before, famNumeral)) && s.at(before).after == 0
	switch {
	case jars:
		return size
	case numbered && s.is(before-1, famFill):
		return size // "fill three quarts"
	case numbered:
		return "" // an amount, or an 8-quart something
	case s.isAny(i, "pint quart"):
		if s.isAny(before, "each every per a the into") {
			return size
		}
		return ""
	}
	return size
}

// lastJars gives the sizes of jar that are named last before a place.
func (s *sentence) lastJars(before int) []string {
	for k := before - 1; k >= 0 && s.at(k).after != ';'; k-- {
		if size := s.jarAt(k); size != "" {
			return s.listedBefore(k, []string{size})
		}
	}
	return nil
}

// firstJars gives the sizes of jar that are named first in a stretch.
func (s *sentence) firstJars(from, to int) []string {
	for k := from; k < to && (k == from || !parts(s.at(k-1).after) || s.at(k-1).after == '('); k++ {
		if size := s.jarAt(k); size != "" {
			return s.listedBehind(k, []string{size})
		}
	}
	return nil
}

// listedBefore adds the sizes that stand in one list before a size: "pints and
// quarts alike".
func (s *sentence) listedBefore(i int, sizes []string) []string {
	for k := i - 1; k >= max(0, i-4); k-- {
		switch size := s.jarAt(k); {
		case size != "":
			return s.listedBefore(k, append(sizes, size))
		case !s.isAny(k, "and or half quarter both") && !s.is(k, famJar):
			return sizes
		}
	}
	return sizes
}

func (s *sentence) listedBehind(i int, sizes []string) []string {
	for k := i + 1; k < min(s.len(), i+4); k++ {
		switch size := s.jarAt(k); {
		case size != "":
			return append(sizes, size)
		case !s.isAny(k, "and or half quarter") && !s.is(k, famJar):
			return sizes
		}
	}
	return sizes
}

// jarsIn gives the sizes of jar that are named in a stretch.
func (s *sentence) jarsIn(from, to int) []string {
	var sizes []string
	for i := from; i < to; i++ {
		if size := s.jarAt(i); size != "" && !slices.Contains(sizes, size) {
			sizes = append(sizes, size)
		}
	}
	return sizes
}

// segment gives the ends of the part between commas or stronger marks that a
// place lies in.
func (s *sentence) segment(i int) (from, to int) {
	from, to = i, i+1
	for from > 0 && s.at(from-1).after == 0 {
		from--
	}
	for to < s.len() && s.at(to-1).after == 0 {
		to++
	}
	return from, to
}

// jarNamed gives the jar of a size that jarAt finds; the zero Jar for an empty
// name.
func jarNamed(size string) content.Jar { return namedJars()[size] }

var namedJars = sync.OnceValue(func() map[string]content.Jar {
	jars := map[string]content.Jar{}
	for _, size := range []string{"quarter-pint", "half-pint", "pint", "quart", "half-gallon"} {
		jar, err := content.ParseJar(size)
		if err != nil {
			panic(err)
		}
		jars[size] = jar
	}
	return jars
})
