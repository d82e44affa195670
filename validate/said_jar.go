package validate

import (
	"fmt"

	"stillroom/content"
)

// saidJar reports a jar in the text that is larger than any of the recipe's
// table.
var saidJar = &Rule{
	ID:       "said-jar",
	Severity: Error,
	Summary:  "a jar in the text that is larger than those of the table",
	Doc: `A larger jar than the ones in the table has no time: it takes longer to heat
through, and how much longer nobody measured. A smaller one takes the time of the
next size up, and may be named.`,
	Source: Source{
		Title:   "There is no formula for a bigger jar: North Dakota State University Extension, Play it safe",
		Address: safeChanges.Address,
	},
	CheckText: checkSaidJar,
}

func checkSaidJar(t *Text) []Finding {
	largest := t.largestJar()
	if largest.IsZero() {
		return nil
	}
	most := largest.Millilitres()
	var fs []Finding
	for s := range t.sentences(placeStep, placeHead, placeNotes) {
		if !s.has(famJar) || s.forCold() || !s.fillsJars() {
			continue
		}
		for i := range s.len() {
			size := s.jarAt(i)
			if size == "" {
				continue
			}
			jar := jarNamed(size)
			if compare(jar.Millilitres(), most) <= 0 || s.stance(hit{from: i, to: i + 1}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(i),
				Message: fmt.Sprintf("%s jars here, where the table ends with %s jars", jar, largest),
				Advice:  "Name only sizes that have a time, or smaller ones.",
			})
			break
		}
	}
	return fs
}

// largestJar is the largest of the recipe's tables; the zero Jar if it has
// none.
func (t *Text) largestJar() (largest content.Jar) {
	for _, m := range t.Matches {
		if !m.Keeping.Way.V.Canned() {
			continue
		}
		for _, j := range m.Jars {
			jar := j.Entry.Jar.V
			if !jar.IsZero() && (largest.IsZero() || compare(jar.Millilitres(), largest.Millilitres()) > 0) {
				largest = jar
			}
		}
	}
	return largest
}

// fillsJars reports whether the sentence is about jars that are filled or
// processed, and not about amounts.
func (s *sentence) fillsJars() bool {
	return s.has(famFill) || s.has(famProcess) || s.anyOf("jars jar take takes need use") || s.anyOf("put") && s.anyOf("up") || len(s.timesOfProcess(nil)) > 0
}
