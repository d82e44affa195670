package build

import (
	"strings"

	"stillroom/validate"
)

// A Refusal lists, on a card, what may not be changed about a jar, and what
// nobody has tested.
type Refusal struct {
	Heading string // of the way of keeping; empty where the recipe has one
	May     string // You may not, Not known
	What    string // a double batch; a larger jar
}

func refusals(a Asked) []Refusal {
	var all []Refusal
	for _, w := range a.Ways {
		for _, v := range []validate.Verdict{validate.MayNot, validate.Unknown} {
			if what := w.asks(v); what != nil {
				all = append(all, Refusal{w.Heading, verdictWords[v], strings.Join(what, "; ")})
			}
		}
	}
	return all
}

// asks gives what of a way has a verdict, in the middle of a sentence.
func (w AskedWay) asks(v validate.Verdict) []string {
	var all []string
	add := func(answers []Answer) {
		for _, a := range answers {
			if a.Verdict == v {
				all = append(all, uncapital(a.Asks))
			}
		}
	}
	add(w.First)
	for _, t := range w.Topics {
		add(t.Answers)
	}
	return all
}
