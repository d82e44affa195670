package validate

// steriliseUnsaid reports jars that the front matter calls sterilised, and that
// no step sterilises.
var steriliseUnsaid = &Rule{
	ID:       "sterilise-unsaid",
	Severity: Error,
	Summary:  "jars_sterilised: true, and no step that sterilises them",
	Doc: `A time under 10 minutes stands on jars that were boiled first: 10 minutes, and a minute
longer for each 1,000 ft above the first. "jars_sterilised: true" promises that the
steps say so, before the jars are filled. Otherwise leave the key out and raise every
time by what the lowest is short of 10 minutes.`,
	Source: Source{
		Title:   "Sterilizing empty jars, Michigan State University Extension, after AIB 539",
		Address: "https://cdn.preterhuman.net/texts/survival/survival_library/pfs/01600946.htm",
	},
	CheckText: checkSteriliseUnsaid,
}

func checkSteriliseUnsaid(t *Text) []Finding {
	if t.Recipe == nil {
		return nil
	}
	for i := range t.Recipe.Keeping {
		k := &t.Recipe.Keeping[i]
		if !k.JarsSterilised.V || !k.Way.V.Canned() || t.sterilises() {
			continue
		}
		return []Finding{{
			Pos:     k.JarsSterilised.Pos,
			Message: "no step sterilises the jars",
			Advice:  "Say it before the jars are filled: boil the empty jars for 10 minutes, and 1 minute more for each 1,000 ft above the first.",
		}}
	}
	return nil
}

// sterilises reports whether the steps sterilise the jars: in a word, or by
// boiling them empty for some minutes.
func (t *Text) sterilises() bool {
	for s := range t.sentences(placeStep, placeHeading, placeNotes, placeHead) {
		for i := range s.len() {
			if s.is(i, famSterilise) && !s.negative(hit{from: i, to: i + 1}) && (s.place != placeHead || s.has(famJar)) {
				return true
			}
		}
		if s.place == placeStep && s.anyOf("boil") && s.has(famJar) && s.find(famEmpty, 0, s.len()) >= 0 && len(s.figures()) > 0 {
			return true
		}
	}
	return false
}
