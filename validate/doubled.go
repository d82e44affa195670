package validate

import (
	"slices"

	"stillroom/content"
)

// doubled reports a canned recipe doubled in one pot.
var doubled = &Rule{
	ID:       "doubled",
	Severity: Warning,
	Summary:  "a canned recipe doubled in one pot",
	Doc: `Twice the batch takes longer to boil and to fill: jars wait and cool, jam
darkens and does not set. The national centre advises against doubling any
recipe for canning. Make one batch after another. For jelly and for jam with
pectin, which lose their set, it is an error.`,
	Source: Source{
		Title:   "NCHFP newsflash 2025",
		Address: "https://nchfp.uga.edu/newsflash/can-i-double-the-recipe",
	},
	Practice: &Practice{
		Phrases: `double~|triple~|quadruple~ or|and? triple|double|halve? the|this|your|a|any? recipe|batch|quantities|quantity|amounts|ingredients|jam|jelly|it; double~|triple~ or triple|double|halve this|it; double~|triple~ everything|all; recipe|batch|jam|jelly|quantities .. doubles|doubled|triples|tripled .. well|easily|fine|beautifully|up|perfectly|happily
			recipe|batch|it .. can|may|could .. doubled|tripled|scaled_up; make~|cook~|boil~ .. double|triple .. batch|batches|quantity|recipe; scale~ .. recipe|batch|it up
			make~|cook~ .. twice_as_much|two_batches .. in one|a .. pot|pan|go
			this|it doubles|triples well|easily|fine|beautifully|nicely|up|perfectly|happily; make~|cook~|boil~|do~ .. twice|three_times the|this amount|quantity|recipe .. in one|a|at_once; twice|double|triple|three_times the|this amount|quantity|recipe|batch .. in one|a|at_once .. go|pot|pan|kettle|batch; make~|use~|cook~|do~ a double|triple|quadruple batch|recipe|quantity`,
		Where:   inOnePot,
		Grade:   doubledWeighs,
		Message: "a canned recipe is not doubled in one pot",
		Advice:  "Say: make a second batch.",
	},
}

// inOnePot leaves out food that is not canned, and batches made one by one.
func inOnePot(t *Text, s *sentence, h hit) bool {
	if s.anyOf("syrup soup runny") && s.anyOf("got ended became turned") {
		return false // how it went wrong
	}
	return inCanned(t, s, h) && !s.anyOf("separate separately pans pots boiler headspace another shopping") && !s.repeats()
}

// repeats reports whether the recipe is made twice, one batch after the other.
func (s *sentence) repeats() bool {
	for i := range s.len() {
		if s.isAny(i, "twice") && !s.isAny(i+1, "the this as that") {
			return true
		}
	}
	return false
}

// doubledWeighs makes it an error where the set is lost.
func doubledWeighs(t *Text, _ *sentence) Severity {
	if t.Recipe == nil {
		return Warning
	}
	pectin := len(t.Matches) > 0 && slices.ContainsFunc(t.Matches[0].Items, func(in Item) bool { return in.Class.Kind == ItemPectin })
	if t.Recipe.Kind.V == content.Jelly || pectin {
		return Error
	}
	return Warning
}
