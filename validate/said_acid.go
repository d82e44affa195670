package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// saidAcid reports an amount of acid per jar in the text that is not the one
// of the front matter.
var saidAcid = &Rule{
	ID:       "said-acid",
	Severity: Error,
	Summary:  "an amount of acid for each jar in the text that is not the recipe's own",
	Doc: `Where acid goes into each jar, the step that says so must give the dose of the
front matter: 2 tablespoons of bottled lemon juice to a quart are 1 to a pint.
1/4 teaspoon of citric acid and 2 tablespoons of 5 per cent vinegar do as much as
1 tablespoon of bottled juice. More is a warning, less an error.`,
	Source: Source{
		Title:   "Tomatoes, USDA Complete Guide to Home Canning, Guide 3, introduction",
		Address: "https://mail.recipesource.com/misc/canning/tomatoes-introduction1.html",
	},
	CheckText: checkSaidAcid,
}

func checkSaidAcid(t *Text) []Finding {
	var fs []Finding
	for _, m := range t.Matches {
		added, ok := m.added()
		if !ok || !m.Keeping.Way.V.Canned() {
			continue
		}
		want, ok := LemonJuice(added.Class.Kind, added.Amount.Low, added.Amount.Unit)
		if !ok {
			continue
		}
		want = perVolume(want, m.Keeping.Acid.V.Per)
		for _, s := range t.counting() {
			for _, d := range s.dosesPerJar(m.Keeping.Acid.V.Per) {
				if d.perPint == nil || d.perPint.Cmp(want) == 0 || s.stance(hit{from: d.from, to: d.to}) != told {
					continue
				}
				fs = append(fs, d.finding(s, m, want))
			}
		}
	}
	return fs
}

// perVolume spreads an amount over a jar: to the pint.
func perVolume(amount *big.Rat, jar content.Jar) *big.Rat {
	x := new(big.Rat).Mul(amount, jarNamed("pint").Millilitres())
	return x.Quo(x, jar.Millilitres())
}

// A dose is an amount of acid that a sentence gives for each jar.
type dose struct {
	mention
	jar     content.Jar
	perPint *big.Rat // in tablespoons of bottled lemon juice; nil if it cannot be worked out
}

// dosesPerJar reads "2 tablespoons of bottled lemon juice to each quart, or 1
// tablespoon to a pint". What is named "each jar" is the given size.
func (s *sentence) dosesPerJar(usual content.Jar) (doses []dose) {
	kind := ItemOther
	for _, f := range s.figures() {
		if k := s.acidAt(f.to, s.len(), 6); k != ItemOther {
			kind = k
		} else if k := s.acidAt(max(0, f.from-8), f.from, 8); kind == ItemOther {
			kind = k
		}
		if f.measures != content.VolumeDim || kind == ItemOther || s.moreOrLess(f) {
			continue
		}
		jar, ok := s.jarOfDose(f, usual)
		if !ok {
			continue
		}
		d := dose{mention: f, jar: jar}
		if juice, ok := LemonJuice(kind, f.quantity().Low, f.unit); ok {
			d.perPint = perVolume(juice, jar)
		}
		doses = append(doses, d)
	}
	return doses
}

var acidNames = fewOf("lemon lime citric vinegar")

// acidAt finds the acid that is named in a stretch.
func (s *sentence) acidAt(from, to, far int) ItemKind {
	for k := from; k < min(to, from+far); k++ {
		switch {
		case !s.isOne(k, &acidNames):
			continue
		case s.isAny(k, "lemon lime") && (s.is(k+1, famJuice) || s.is(k+3, famJuice)):
			return ItemCitrusJuice
		case s.isAny(k, "citric"):
			return ItemCitricAcid
		case s.isAny(k, "vinegar"):
			return ItemVinegar
		}
	}
	return ItemOther
}

// jarOfDose finds the jar that a dose is for, behind its figure: "into each
// quart", "per pint", "in every jar". Another figure ends the search.
func (s *sentence) jarOfDose(f mention, usual content.Jar) (content.Jar, bool) {
	const far = 10
	for k := f.to; k < min(s.len(), f.to+far); k++ {
		if k > f.to && s.at(k).number().set() || s.at(k-1).after == ';' {
			break
		}
		if s.isAny(k, "jar jars") && s.anyIn("each every per the a", k-3, k) && s.anyIn("each every per", f.to, k+2) {
			return usual, true
		}
		size := s.jarAt(k)
		if size == "" || !s.anyIn("each every per a to the into in for", k-3, k) {
			continue
		}
		return jarNamed(size), true
	}
	for k := f.from - 1; k >= max(0, f.from-3); k-- { // "give each pint a teaspoon"
		if size := s.jarAt(k); size != "" && s.isAny(k-1, "each every") {
			return jarNamed(size), true
		}
	}
	return content.Jar{}, false
}

func (d dose) finding(s *sentence, m *Match, want *big.Rat) Finding {
	f := Finding{
		Pos:     s.pos(d.from),
		Message: fmt.Sprintf("%s to a %s here, where the front matter has %s per %s", s.words(d.from, d.to), d.jar, m.Keeping.Acid.V.Added.Text, m.Keeping.Acid.V.Per),
		Advice:  "Write the same dose in both places.",
		Notes:   []Note{{Pos: m.Keeping.Acid.Pos, Message: "given here"}},
	}
	if d.perPint.Cmp(want) > 0 {
		f.Severity = Warning
	}
	return f
}
