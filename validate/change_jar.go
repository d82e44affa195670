package validate

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"stillroom/content"
)

// judged reports whether the tested jar is one that an entry of the recipe is
// judged by.
func (a *asking) judged(t *JarProcess) bool {
	return slices.ContainsFunc(a.Jars, func(j JarMatch) bool { return j.Tested == t })
}

func smallerJar(a *asking) picked {
	if !a.canned() {
		return picked{}
	}
	return pick("any", "jar", a.Process.Jars[0].Jar)
}

// testedJar tells the figures of the tested jars that the recipe does not have.
func testedJar(a *asking) picked {
	if !a.canned() {
		return picked{}
	}
	var names, figures []string
	for i := range a.Process.Jars {
		t := &a.Process.Jars[i]
		if f := a.figures(t); f != "" && !a.judged(t) {
			names = append(names, t.Jar)
			figures = append(figures, f)
		}
	}
	if names == nil {
		return picked{}
	}
	if len(names) > 1 {
		for i, name := range names {
			figures[i] = name + " " + figures[i]
		}
	}
	return pick("any", "jars", capital(andList(names))+" jars", "figures", strings.Join(figures, "; "))
}

// figures tells the times of a tested jar; nothing of one that the way cannot
// have. Pressures are those that the recipe's own jars have.
func (a *asking) figures(t *JarProcess) string {
	var text string
	switch {
	case a.Keeping.Way.V == content.PressureCanner:
		o, ok := a.sameOption(t)
		if !ok {
			return ""
		}
		text = minutesText(o.minutes) + ", at the same pressures"
	case steamTakes(a.times(t)) < len(a.times(t)) && a.Keeping.Way.V == content.AtmosphericSteam:
		return ""
	default:
		var bands []string
		for _, f := range a.times(t) {
			bands = append(bands, f.text()+" "+f.at())
		}
		text = strings.Join(bands, ", ")
	}
	if h := a.Keeping.Headspace; h.Set() && t.Headspace != nil && !sameHeadspace(h.V, t.Headspace) {
		text += fmt.Sprintf(", with %s of headspace", inches(t.Headspace))
	}
	return text
}

// sameOption gives the way to process a jar under the pressures that the
// recipe's first jar has.
func (a *asking) sameOption(t *JarProcess) (option, bool) {
	if len(a.Jars) == 0 || a.Jars[0].Tested == nil {
		return option{}, false
	}
	own, ok := a.Jars[0].option()
	if !ok {
		return option{}, false
	}
	for _, o := range t.options() {
		if samePressures(o.dial, own.dial) && samePressures(o.weighted, own.weighted) {
			return o, true
		}
	}
	return option{}, false
}

func samePressures(s, t *Schedule) bool {
	if s == nil || t == nil {
		return s == t
	}
	return slices.EqualFunc(s.Bands, t.Bands, func(a, b TestedBand) bool { return a.From == b.From && a.To == b.To && a.PSI == b.PSI })
}

func largerJar(a *asking) picked {
	if !a.canned() {
		return picked{}
	}
	return pick("any", "jars", a.Process.Largest()+" jars")
}

func doubleBatch(a *asking) picked {
	switch {
	case a.Keeping.Way.V == content.CoolStore || a.largerElsewhere():
	case a.ferments() && !a.canned():
		return pick("ferment", "salt", a.Keeping.Salt.V.String())
	case a.sets():
		return pick("set")
	case a.canned():
		return pick("canned")
	default:
		return pick("cold")
	}
	return picked{}
}

// largerElsewhere reports whether another way of keeping is made from more.
func (a *asking) largerElsewhere() bool {
	own := factorOf(a.Keeping)
	return slices.ContainsFunc(a.recipe.Keeping, func(k content.Keeping) bool { return factorOf(&k).Cmp(own) > 0 })
}

func factorOf(k *content.Keeping) *big.Rat {
	if k.Factor.Set() {
		return k.Factor.V.Low
	}
	return one
}

func halfBatch(a *asking) picked {
	if a.canned() {
		return pick("any")
	}
	return picked{}
}

// capital writes a text with a capital letter at its start.
func capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
