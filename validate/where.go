package validate

import "stillroom/content"

// inCanned holds in recipes that are kept in sealed jars, outside the parts
// that are for the refrigerator or the freezer; in episodes and pages anywhere.
func inCanned(t *Text, s *sentence, _ hit) bool { return t.canned() && !s.forCold() }

// forCold reports whether the sentence, or the heading that it stands under,
// speaks of the refrigerator or the freezer.
func (s *sentence) forCold() bool {
	if s.has(famFridge) || s.has(famFreezer) {
		return true
	}
	return s.heading != nil && len(s.heading.sentences) > 0 && (s.heading.sentences[0].has(famFridge) || s.heading.sentences[0].has(famFreezer))
}

// underPressure holds in recipes for a pressure canner, and in episodes and
// pages.
func underPressure(t *Text, _ *sentence, _ hit) bool {
	return t.Recipe == nil || t.hasWay(content.PressureCanner)
}

// jarsAreFull reports whether the jars that the hit speaks of hold food by
// then: the sentence says so, or they were filled before.
func (t *Text) jarsAreFull(s *sentence, h hit) bool {
	if i := s.find(famFull, 0, s.len()); i >= 0 && !s.isAny(i, "hot") {
		return true
	}
	for i := range h.to {
		if s.is(i, famJar) && s.isAny(i+1, "of") {
			return true // jars of peaches
		}
	}
	if s.find(famFill, 0, h.from) >= 0 || s.find(famLid, 0, h.from) >= 0 {
		return true
	}
	return s.place == placeStep && t.filledBefore(s)
}

// filledBefore reports whether jars were filled in an earlier step, or earlier
// in this one.
func (t *Text) filledBefore(s *sentence) bool {
	for e := range t.sentences(placeStep) {
		if e.passage == s.passage && e.first == s.first {
			return false
		}
		if e.find(famFill, 0, e.len()) >= 0 && e.has(famJar) {
			return true
		}
	}
	return false
}

// forEmptyJars reports whether the sentence is about jars before they are
// filled: to wash, warm, dry or sterilise them.
func (s *sentence) forEmptyJars() bool {
	return s.has(famSterilise) || s.find(famEmpty, 0, s.len()) >= 0 || s.anyOf("warm ready empty needed wanted")
}

// near reports whether one of a few words stands in the sentence or in the one
// before it.
func (s *sentence) near(few string) bool {
	b := s.before()
	return s.anyOf(few) || b != nil && b.anyOf(few)
}

// reliesOnAcid reports whether the acid that the recipe brings carries its
// safety in some way of keeping.
func (t *Text) reliesOnAcid() bool {
	for _, m := range t.Matches {
		if m.Keeping.Way.V.Canned() && m.reliesOnAcid() {
			return true
		}
	}
	return false
}

// whereAcidCounts holds in recipes whose safety rests on added acid, and in
// episodes and pages.
func whereAcidCounts(t *Text, s *sentence, _ hit) bool {
	return (t.Recipe == nil || t.reliesOnAcid()) && !s.forCold()
}
