package build

import (
	"fmt"
	"math/big"
	"strings"

	"stillroom/build/amount"
	"stillroom/content"
)

// A Scaled is a recipe for other than one batch, in plain words: to read in a
// terminal, or to paste elsewhere.
type Scaled struct {
	Name   string
	Says   []string // what the amounts are for, and what that means for the work
	Pots   []string // heads of what each Line's Pots are: each batch, the last; empty for one pot
	Groups []ScaledGroup
	Parts  []ScaledPart
	Canner []string // what each jar is given, which no batch changes; empty for ways without a canner
}

// A ScaledGroup is a part of the ingredients.
type ScaledGroup struct {
	For   string // empty for a plain list
	Lines []ScaledLine
}

// A ScaledLine is an ingredient. Its amounts are empty if the recipe gives
// none.
type ScaledLine struct {
	Total string   // in all
	Pots  []string // in each batch, and in the last if that is smaller
	Item  string
}

// A ScaledPart is a part of the method.
type ScaledPart struct {
	Heading string // empty if it has none
	First   int    // number of its first step
	Steps   []string
}

// Scale works a recipe out for a plan, which is for its way of keeping of that
// place in the list.
func Scale(r *content.Recipe, way int, p amount.Plan, s amount.System) Scaled {
	w := scaledWriter{r: r, plan: p, system: s}
	k := &r.Keeping[way]
	made := Scaled{Name: r.Name.V, Says: p.Says(), Pots: w.heads(), Parts: w.parts(), Canner: cannerLines(k)}
	for _, g := range r.Ingredients {
		group := ScaledGroup{For: g.For.V}
		for _, i := range g.Items {
			group.Lines = append(group.Lines, w.line(i))
		}
		made.Groups = append(made.Groups, group)
	}
	return made
}

type scaledWriter struct {
	r      *content.Recipe
	plan   amount.Plan
	system amount.System
}

func (w scaledWriter) heads() []string {
	switch {
	case w.plan.Full == 0:
		return nil
	case w.plan.Rest.Sign() > 0:
		return []string{"each full batch", "the last"}
	}
	return []string{"each batch"}
}

func (w scaledWriter) line(i content.Ingredient) ScaledLine {
	l := ScaledLine{Item: w.item(i)}
	a, ok := amount.Of(w.r, i)
	if !ok {
		if i.Unread != "" {
			l.Item = i.Text + " (for one batch)"
		}
		return l
	}
	before, behind := manner(i)
	l.Total = strings.TrimSpace(before + " " + w.in(a, w.plan.Total()))
	if behind != "" {
		l.Item += ", " + behind
	}
	if w.plan.Full > 0 {
		l.Pots = append(l.Pots, w.in(a, w.plan.Pot()))
		if w.plan.Rest.Sign() > 0 {
			l.Pots = append(l.Pots, w.in(a, w.plan.Last()))
		}
	}
	return l
}

// in writes an amount of so many batches in plain letters: as ½ it would stand
// beside 1 1/8, for which there is no sign.
func (w scaledWriter) in(a amount.Amount, batches *big.Rat) string {
	return strings.TrimSpace(inLetters.Replace(a.In(batches, w.system)))
}

var inLetters = strings.NewReplacer(
	"-½", "-1/2", "-¼", "-1/4", "-¾", "-3/4", "-⅓", "-1/3", "-⅔", "-2/3", "-⅛", "-1/8", "-⅜", "-3/8", "-⅝", "-5/8", "-⅞", "-7/8",
	"½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅓", " 1/3", "⅔", " 2/3", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
)

// manner parts how an amount is meant into the words that stand before it, as
// in about 5 lb, and those that stand between number and unit or behind both, as
// in 12 whole cloves: 24 cloves, whole.
func manner(i content.Ingredient) (before, behind string) {
	words := strings.Fields(i.Manner)
	n := 0
	for n < len(words) && strings.HasPrefix(i.Text, strings.Join(words[:n+1], " ")+" ") {
		n++
	}
	return strings.Join(words[:n], " "), strings.Join(words[n:], " ")
}

// item is what stands behind the amount: tins of tomatoes, 400 g each, drained.
func (w scaledWriter) item(i content.Ingredient) string {
	s := i.Item
	if !i.Each.IsZero() {
		s += ", " + i.Each.Text + " each"
	}
	if i.Note != "" {
		s += ", " + w.replaced(i.Note, amount.InNote(i), func(a amount.Amount) string { return w.in(a, w.plan.Total()) })
	}
	if i.Optional {
		s += " (optional)"
	}
	return s
}

// replaced writes the amounts of a text anew.
func (w scaledWriter) replaced(text string, ms []amount.Mention, write func(amount.Amount) string) string {
	var b strings.Builder
	end := 0
	for _, m := range ms {
		b.WriteString(text[end:m.Start] + write(m.Amount))
		end = m.End
	}
	return b.String() + text[end:]
}

func (w scaledWriter) parts() []ScaledPart {
	var texts []string
	for _, p := range w.r.Body.Method {
		for _, s := range p.Steps {
			texts = append(texts, s.Text)
		}
	}
	mentions := amount.InSteps(w.r, amount.Lines(w.r), texts)
	var parts []ScaledPart
	n := 0
	for i, p := range w.r.Body.Method {
		part := ScaledPart{Heading: heading(p, i), First: n + 1}
		for range p.Steps {
			part.Steps = append(part.Steps, w.replaced(texts[n], mentions[n], w.inPot))
			n++
		}
		parts = append(parts, part)
	}
	return parts
}

// inPot writes what goes into a pot at one time.
func (w scaledWriter) inPot(a amount.Amount) string {
	s := w.in(a, w.plan.Pot())
	if w.plan.Rest.Sign() > 0 {
		s += " (" + w.in(a, w.plan.Last()) + " for the last batch)"
	}
	return s
}

// cannerLines tells headspace, acid, times and pressures as they are written.
func cannerLines(k *content.Keeping) []string {
	if !k.Way.V.Canned() {
		return nil
	}
	lines := []string{fmt.Sprintf("Headspace: %s.", k.Headspace.V)}
	if a := k.Acid.V; a.Source == content.AcidPerJar {
		lines = append(lines, fmt.Sprintf("In each %s jar: %s %s.", a.Per, a.Added.Amount, a.Added.Item))
	}
	for _, p := range k.Processing {
		for _, t := range []struct{ name, times string }{
			{"", bandsInWords(p.Altitude)},
			{"on a dial gauge ", bandsInWords(p.Dial)},
			{"on a weighted gauge ", bandsInWords(p.Weighted)},
		} {
			switch {
			case t.times == "":
			case t.name == "":
				lines = append(lines, capital(p.Jar.V.String())+": "+t.times+".")
			default:
				lines = append(lines, fmt.Sprintf("%s: %s %s%s.", capital(p.Jar.V.String()), p.Time.V, t.name, t.times))
			}
		}
	}
	return lines
}

func bandsInWords[T fmt.Stringer](bands []content.Band[T]) string {
	var all []string
	for _, b := range bands {
		at := b.Text
		if !strings.HasPrefix(at, "above") {
			at = "at " + at
		}
		all = append(all, b.Value.V.String()+" "+at)
	}
	return strings.Join(all, ", ")
}
