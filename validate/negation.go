package validate

// negative reports whether the words of a hit are denied in their sentence:
// by what governs them from the left, or by what is said of them on the right.
// Two denials make an assertion: "never forget to".
func (s *sentence) negative(h hit) bool {
	odd := s.governed(h)
	if s.condemnedAround(h) {
		odd = !odd
	} else if !odd && s.isSubject(h) && s.deniedAfter(h) {
		odd = true
	}
	return odd
}

// governed counts the denials before the hit that reach it.
func (s *sentence) governed(h hit) bool {
	odd := false
	counted := -1 // where the last one that was counted begins
	r := backward{s: s, hit: h}
	for i := h.from - 1; i >= 0; i-- {
		if r.leaves(i) || counted >= 0 && r.commas > r.at {
			break
		}
		c, ok := s.cueEndingAt(i + 1)
		if !ok {
			continue
		}
		if r.governs(c) && !s.coordinated(c, counted) {
			odd = !odd
			counted, r.at = c.from, r.commas
		} else if counted >= 0 {
			counted = c.from
		}
		i = c.from
	}
	if h.denies || !s.deniesWithin(h) {
		return odd
	}
	return !odd || counted >= 0 && s.isAny(counted, "no not never nor neither don't") // "no powder, no aspirin"
}

// deniesWithin reports whether a denial stands among the words of a hit: "jars
// should never be turned".
func (s *sentence) deniesWithin(h hit) bool {
	odd := false
	for _, c := range s.cues {
		k := cue(c.owner)
		if c.from < h.to && c.to > h.from && (k == cueDeny || k == cueReplace && !s.isAny(c.from, "instead in") || k == cueAway) && !s.spent(c, h) {
			odd = !odd
		}
	}
	return odd
}

// coordinated reports whether two denials stand side by side and are one:
// "should not and must never".
func (s *sentence) coordinated(c hit, next int) bool {
	if next < 0 || cue(c.owner) != cueDeny {
		return false
	}
	if s.isAny(c.from, "neither") {
		return true
	}
	if next-c.to > 3 {
		return false
	}
	for i := c.to; i < next; i++ {
		if s.isAny(i, "and or nor") {
			return true
		}
	}
	return false
}

func (s *sentence) cueEndingAt(end int) (hit, bool) {
	for _, c := range s.cues {
		if c.to == end {
			return c, true
		}
	}
	return hit{}, false
}

// spent reports whether a denial only takes back what follows it: "it isn't
// dangerous to", "don't forget to".
func (s *sentence) spent(c, h hit) bool {
	for _, d := range s.cues {
		if (cue(d.owner) == cueCondemn || cue(d.owner) == cueAway && (d.to <= h.from || d.from >= h.to)) && d.from >= c.to && d.from-c.to <= 3 && !s.partsBetween(c.to-1, d.from) {
			return true
		}
	}
	return false
}

// takenBack reports whether a denial stands just before: "never skip".
func (s *sentence) takenBack(c hit) bool {
	for _, d := range s.cues {
		if cue(d.owner) == cueDeny && d.to <= c.from && c.from-d.to <= 3 && !s.partsBetween(d.to-1, c.from) {
			return true
		}
	}
	return false
}
