package validate

// limeRinse reports pickles soaked in lime whose steps do not rinse it out
// three times.
var limeRinse = &Rule{
	ID:       "lime-rinse",
	Severity: Error,
	Summary:  "pickling lime that is not rinsed and soaked out three times",
	Doc: `Lime that stays on the cucumbers takes up the acid of the pickle. Drain the lime water,
rinse, and soak for an hour in fresh water, three times over; the steps must say how
often.`,
	Source:    Source{Title: "USDA Complete Guide to Home Canning, AIB 539 (2015), Guide 6, firming agents (memory)"},
	CheckText: checkLimeRinse,
}

func checkLimeRinse(t *Text) []Finding {
	if t.Recipe == nil || len(t.Recipe.Body.Method) == 0 {
		return nil
	}
	for _, in := range t.items() {
		if in.Class.Kind != ItemPicklingLime || t.rinsesThrice() {
			continue
		}
		return []Finding{{
			Pos:     in.Pos,
			Message: "no step rinses and soaks the lime out three times",
			Advice:  "Say: drain, rinse and soak in fresh water for an hour, three times over.",
		}}
	}
	return nil
}

// rinsesThrice reports whether the steps rinse something three times, in one
// sentence or in two that follow one another.
func (t *Text) rinsesThrice() bool {
	const thrice = "three thrice 3 third twice two 2"
	rinses := 0
	for s := range t.sentences(placeStep) {
		if !s.anyOf("rinse rinsed rinsing soak") {
			if rinses > 0 && s.anyOf("repeat") && s.anyOf(thrice) {
				return true
			}
			continue
		}
		rinses++
		if rinses > 2 || s.anyOf("three thrice 3") || s.anyOf("repeat more") && s.anyOf(thrice) {
			return true
		}
	}
	return false
}
