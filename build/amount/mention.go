package amount

import (
	"math/big"
	"regexp"
	"slices"
	"strings"

	"stillroom/content"
)

// A Mention is an amount that stands in a text, and grows with the batch.
type Mention struct {
	Start, End int // where its words stand, in bytes
	Amount     Amount
}

// InSteps finds the amounts of the recipe's ingredients in the plain words of
// its steps. An amount counts as an ingredient's if the ingredient is named
// with it, and if it is the listed amount, or part of it: "2 cups of the
// sugar", or several that add up. A volume or a weight of what is not listed
// grows too: "return 4 cups of juice to the pan". What goes into each jar never
// counts, nor does a number that is no amount of any food. The lines are those
// that Lines gives.
func InSteps(r *content.Recipe, lines [][]Line, steps []string) [][]Mention {
	f := finder{r: r, found: make([][]Mention, len(steps))}
	for _, group := range lines {
		for _, l := range group {
			if l.Known {
				f.listed = append(f.listed, &listed{Ingredient: l.Item, amount: l.Amount, words: nameWords(l.Item.Item)})
			}
		}
	}
	for n, text := range steps {
		f.step(n, text)
	}
	for _, l := range f.listed {
		f.settle(l)
	}
	for _, s := range f.sentences {
		s.settle(&f)
	}
	for _, ms := range f.found {
		slices.SortFunc(ms, func(a, b Mention) int { return a.Start - b.Start })
	}
	return f.found
}

// InNote finds the amounts in an ingredient's note that say how much to get:
// from about 2 1/2 lb.
func InNote(i content.Ingredient) []Mention {
	if content.IsPerJar(i.Note) {
		return nil
	}
	var ms []Mention
	for _, at := range numbers(i.Note) {
		in, ok := readAmount(i.Note[at:])
		d := in.Amount.Unit.Dimension()
		if !ok || d != content.VolumeDim && d != content.WeightDim || !gets.MatchString(i.Note[:at]) {
			continue
		}
		a := Amount{Ways: []content.Quantity{in.Amount}, Pours: pours(in.Item, "")}
		ms = append(ms, Mention{at, at + len(in.Amount.Text), a})
	}
	return ms
}

var (
	// gets leads to an amount in a note that grows with the batch.
	gets = regexp.MustCompile(`(?i)(^|\b(from|about|in|or) )$`)
	// partitive begins what is part of something named before: of the sugar.
	partitive = regexp.MustCompile(`(?i)^\s*of the\b`)
)

// A listed ingredient, and where its amounts may stand.
type listed struct {
	content.Ingredient
	amount     Amount
	words      []string
	candidates []candidate
}

// A candidate is an amount beside the name of a listed ingredient.
type candidate struct {
	step, start, end int
	amount           content.Quantity
	part             bool // "of the sugar"
}

type finder struct {
	r      *content.Recipe
	listed []*listed
	found  [][]Mention

	sentences []*sentence
}

// step looks for candidates in a step, sentence by sentence.
func (f *finder) step(n int, text string) {
	for begin, next := 0, 0; begin < len(text); begin = next {
		var end int
		end, next = sentenceEnd(text, begin)
		s := &sentence{step: n, start: begin, end: end}
		f.sentences = append(f.sentences, s)
		said := text[begin:end]
		if places := numbers(said); len(places) > 0 && !content.IsPerJar(said) {
			for _, at := range places {
				f.candidate(s, begin+at, text)
			}
		}
	}
}

// sentenceEnd gives where a sentence ends, and where the next one begins. A
// point within a number ends none.
func sentenceEnd(text string, from int) (end, next int) {
	for i := from; i < len(text); i++ {
		switch text[i] {
		case '.', '!', '?', ':', ';':
		default:
			continue
		}
		rest := strings.TrimLeft(text[i+1:], `"')`)
		after := strings.TrimLeft(rest, " \t\n\f\r")
		if rest == "" || len(after) < len(rest) {
			return i, len(text) - len(after)
		}
	}
	return len(text), len(text)
}

// candidate takes the amount that begins at a place in a step, if it is that of
// a listed ingredient, or of a food that is not listed.
func (f *finder) candidate(s *sentence, start int, step string) {
	in, ok := readAmount(step[start:s.end])
	if !ok {
		return
	}
	end := start + len(in.Amount.Text)
	rest := step[end:s.end]
	c := candidate{s.step, start, end, in.Amount, partitive.MatchString(rest)}
	if volumeOrWeight(in.Amount.Unit) {
		s.measures++
	}
	words := phraseWords(rest)
	switch l := f.named(words, in.Amount, step); {
	case l != nil && !l.outgrown(words, in.Amount):
		l.candidates = append(l.candidates, c)
	case l != nil || !f.lists(words):
		f.unlisted(s, step[s.start:s.end], c, words)
	}
}

// lists reports whether some words may be about a listed ingredient.
func (f *finder) lists(words []string) bool {
	return len(words) > 0 && slices.ContainsFunc(f.listed, func(l *listed) bool {
		return l.words[len(l.words)-1] == words[len(words)-1] && within(words, l.words)
	})
}

// named finds the one ingredient that some words name, or, where no words
// follow the amount, the one of the step that has just that amount.
func (f *finder) named(words []string, q content.Quantity, step string) *listed {
	var fits []*listed
	for _, l := range f.listed {
		last := l.words[len(l.words)-1]
		switch {
		case len(words) == 0:
			if q.Unit != "" && q.Unit.Dimension() != content.Count && l.is(q) && slices.Contains(nameWords(step), last) {
				fits = append(fits, l)
			}
		case words[len(words)-1] == last && within(words, l.words):
			fits = append(fits, l)
		}
	}
	if len(fits) > 1 {
		fits = slices.DeleteFunc(fits, func(l *listed) bool { return !l.is(q) })
	}
	if len(fits) != 1 {
		return nil
	}
	return fits[0]
}

// settle takes the candidates of an ingredient that are its amount, or parts
// of it.
func (f *finder) settle(l *listed) {
	sum := make(map[content.Dimension]*big.Rat)
	for _, c := range l.candidates {
		if n, ok := base(c.amount); ok {
			d := c.amount.Unit.Dimension()
			if sum[d] == nil {
				sum[d] = new(big.Rat)
			}
			sum[d].Add(sum[d], n)
		}
	}
	for _, c := range l.candidates {
		whole, ok := l.in(c.amount.Unit.Dimension())
		total := sum[c.amount.Unit.Dimension()]
		if l.is(c.amount) || ok && total != nil && total.Cmp(whole) == 0 || ok && c.part && total.Cmp(whole) < 0 {
			f.found[c.step] = append(f.found[c.step], Mention{c.start, c.end, Part(f.r, l.Ingredient, c.amount)})
		}
	}
}

// is reports whether an amount is the listed one.
func (l *listed) is(q content.Quantity) bool {
	return slices.ContainsFunc(l.amount.Ways, func(w content.Quantity) bool {
		c, ok := q.In(w.Unit)
		return ok && c.Low.Cmp(w.Low) == 0 && c.High.Cmp(w.High) == 0
	})
}

// in gives the listed amount in the base unit of a dimension.
func (l *listed) in(d content.Dimension) (*big.Rat, bool) {
	for _, w := range l.amount.Ways {
		if w.Unit.Dimension() == d {
			return base(w)
		}
	}
	return nil, false
}

// base gives a volume or a weight as a number to reckon with.
func base(q content.Quantity) (*big.Rat, bool) {
	unit := content.Gram
	if q.Unit.Dimension() == content.VolumeDim {
		unit = content.Millilitre
	}
	c, ok := q.In(unit)
	return c.Low, ok && !q.IsRange()
}
