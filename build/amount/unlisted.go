package amount

import (
	"regexp"
	"slices"

	"stillroom/content"
	"stillroom/validate"
)

// A sentence of a step, and the amounts in it that are of nothing listed: what
// is made on the way ("return 4 cups of juice to the pan"), or was left out of
// the list.
type sentence struct {
	step, start, end int
	measures         int // all volumes and weights in it
	unlisted         []Mention
}

// made are the things that come about while one cooks.
var made = wordSet("juice pulp puree purée mash sauce brine syrup stock broth liquid mixture fruit jam jelly salsa relish slurry whey")

// stays marks a sentence whose amounts are those of something that does not
// grow with the batch: what goes into a jar or a glass, what a pan or a canner
// holds, a proportion, a test.
var stays = regexp.MustCompile(`(?i)\b(jars?|bottles?|containers?|bags?|boxes|trays?|canner|kettle|blanch\w*|glass|plate|serve|serving|drink|thermometer|` +
	`at a time|at one time|at once|(no|never) more than|in batches|as much|(to|for|in|per) (a|an|the|one) (cup|pint|quart|gallon|litre|liter|pound|ounce|kilo(gram)?|kg|lb))\b`)

// unlisted takes an amount that no listed ingredient has. Spoons are left
// alone: they are tasted, tested and skimmed with.
func (f *finder) unlisted(s *sentence, text string, c candidate, words []string) {
	unit := c.amount.Unit
	if !volumeOrWeight(unit) || unit == content.Teaspoon || unit == content.Tablespoon || len(words) == 0 || stays.MatchString(text) {
		return
	}
	last := words[len(words)-1]
	if !made[last] && validate.ClassifyItem(last, "").Kind == "" {
		return
	}
	a := of(f.r, content.Ingredient{Item: last})
	a.Grams, a.Source = nil, validate.Source{} // of what is made on the way nobody knows the weight
	a.Ways = []content.Quantity{c.amount}
	s.unlisted = append(s.unlisted, Mention{c.start, c.end, a})
}

func volumeOrWeight(u content.Unit) bool {
	return u.Dimension() == content.VolumeDim || u.Dimension() == content.WeightDim
}

// settle lets the unlisted amounts of a sentence grow only if all its other
// measures do: in "for 4 cups of juice use 3 cups of sugar" one alone would
// change the proportion.
func (s *sentence) settle(f *finder) {
	grow := len(s.unlisted)
	for _, m := range f.found[s.step] {
		if m.Start >= s.start && m.End <= s.end && volumeOrWeight(m.Amount.Ways[0].Unit) {
			grow++
		}
	}
	if grow == s.measures {
		f.found[s.step] = append(f.found[s.step], s.unlisted...)
	}
}

// outgrown reports whether some words can only mean what is made on the way, and
// not the listed ingredient of that name: there is more of it than is listed.
func (l *listed) outgrown(words []string, q content.Quantity) bool {
	whole, ok := l.in(q.Unit.Dimension())
	n, measured := base(q)
	return len(words) == 1 && made[words[0]] && ok && measured && n.Cmp(whole) > 0 && !slices.Equal(words, l.words)
}
