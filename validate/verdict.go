package validate

import "strings"

// condemnedAround reports whether the sentence speaks against what the hit
// says, in words that need no grammar: unsafe, a myth, not recommended.
func (s *sentence) condemnedAround(h hit) bool {
	odd := false
	for _, c := range s.cues {
		if cue(c.owner) != cueCondemn || c.from < h.to && c.to > h.from && c.to-c.from == 1 {
			continue
		}
		if s.parted(c, h) {
			continue
		}
		odd = true
		if s.deniedClose(c) {
			return false
		}
	}
	return odd
}

// parted reports whether a semicolon or a "but" keeps a verdict from the hit.
func (s *sentence) parted(c, h hit) bool {
	if c.from >= h.to && c.to-c.from > 2 && s.isAny(c.from, "don't do") {
		return false // "...; don't do it"
	}
	from, to := min(c.to, h.to), max(c.from, h.from)
	for i := from - 1; i < to; i++ {
		if i >= 0 && s.at(i).after == ';' || i >= from && s.isAny(i, "but") {
			return true
		}
	}
	return false
}

// deniedClose reports whether a denial stands just before a verdict: "not
// dangerous", "without any risk".
func (s *sentence) deniedClose(c hit) bool {
	for _, d := range s.cues {
		k := cue(d.owner)
		if (k == cueDeny || k == cueReplace) && d.to <= c.from && c.from-d.to <= 3 && !s.partsBetween(d.to-1, c.from) {
			return true
		}
	}
	return false
}

func (s *sentence) partsBetween(from, to int) bool {
	for i := from; i < to; i++ {
		if s.at(i).after != 0 {
			return true
		}
	}
	return false
}

// isSubject reports whether the hit is what the sentence speaks of, and not an
// order: "Turning jars over ...", "Oven canning ...".
func (s *sentence) isSubject(h hit) bool {
	if s.endsIn(h.from, "ing") || s.endsIn(h.to-1, "ing") {
		return true
	}
	return !s.is(h.from, famOrder) || s.isVerbNoun(h.from) || s.isAny(h.from-1, "to") || s.who(h.from)
}

// who reports whether somebody is named as doing it: "people who turn jars".
func (s *sentence) who(i int) bool { return s.isAny(i-1, "who people that which they") }

func (s *sentence) endsIn(i int, ending string) bool {
	w := s.word(i)
	return len(w) > len(ending)+1 && strings.HasSuffix(w, ending)
}

var clauseWords = fewOf("but because so if when while that which who")

// deniedAfter reports whether a denial is said of the hit before another
// thought begins: "... does not seal them".
func (s *sentence) deniedAfter(h hit) bool {
	const far = 12
	for i := h.to; i < min(s.len(), h.to+far); i++ {
		if parts(s.at(i-1).after) || s.isOne(i, &clauseWords) {
			return false
		}
		if s.isAny(i, "and") && (s.is(i+1, famOrder) || s.is(i+1, famSubject)) {
			return false
		}
		for _, c := range s.cues {
			if c.from == i && (cue(c.owner) == cueDeny || cue(c.owner) == cueReplace && c.to > i) {
				return cue(c.owner) == cueDeny && !s.spent(c, h) && (!s.isAny(i, "no nothing none nobody") || s.is(i-1, famBe) || s.isAny(i-1, "does do did"))
			}
		}
	}
	return false
}

// badEnd reports whether the hit stands in a condition whose outcome is bad:
// "If you turn the jars over, the seal may fail."
func (s *sentence) badEnd(h hit) bool {
	from, to := s.condition(h)
	if from < 0 {
		return false
	}
	for i := range s.len() {
		if i >= from && i < to {
			continue
		}
		if s.is(i, famBad) && !s.deniedNear(i) {
			return true
		}
	}
	for _, c := range s.cues {
		if (c.from < from || c.from >= to) && (cue(c.owner) == cueDeny || cue(c.owner) == cueCondemn) && !s.badNear(c) {
			return true
		}
	}
	return false
}

// badSubject reports whether the sentence tells what harm comes of the hit:
// "The open kettle is how most jam goes mouldy."
func (s *sentence) badSubject(h hit) bool {
	if !s.isSubject(h) || s.is(h.from, famOrder) && !s.endsIn(h.from, "ing") && !s.isVerbNoun(h.from) {
		return false
	}
	i := s.find(famBad, h.to, s.len())
	return i >= 0 && !s.hasCue(cueEndorse) && !s.deniedNear(i) && !s.anyIn("prevent prevents preventing stops keeps against", h.to, i) && (s.finite(h.to, i) || i == h.to && s.at(i-1).after == 0)
}

// condition gives the ends of the if-clause that the hit stands in; -1 if it
// stands in none.
func (s *sentence) condition(h hit) (from, to int) {
	for i := h.from - 1; i >= 0; i-- {
		if parts(s.at(i).after) || s.at(i).after == ',' {
			return -1, 0
		}
		if !s.isAny(i, "if when whenever") {
			continue
		}
		return i, h.to
	}
	return -1, 0
}

func (s *sentence) deniedNear(i int) bool {
	for _, c := range s.cues {
		if cue(c.owner) == cueDeny && c.to <= i && i-c.to <= 2 {
			return true
		}
	}
	return false
}

// badNear reports whether what a denial denies is bad itself: "they won't
// leak".
func (s *sentence) badNear(c hit) bool { return s.find(famBad, c.to, c.to+3) >= 0 }

// unless gives the place of the word; -1 if it is not there.
func (s *sentence) unless() int {
	if !s.marks.has(sieveBit("unless")) {
		return -1
	}
	for i := range s.len() {
		if s.isAny(i, "unless") {
			return i
		}
	}
	return -1
}

// unlessTurns judges a hit in a sentence with "unless". "Never, unless you are
// in a hurry" allows; "unless the tested recipe says so" does not. "They won't
// seal unless you turn them" tells to do it.
func (s *sentence) unlessTurns(u int, h hit, negative bool) bool {
	if h.from > u {
		return !s.mainDenies(u, h)
	}
	order := s.is(h.from, famOrder) || s.endsIn(h.from, "ing")
	return negative && (!order || s.find(famAuthority, u, s.len()) >= 0)
}

// mainDenies reports whether the clause beside an unless-clause is a denial.
func (s *sentence) mainDenies(u int, h hit) bool {
	for _, c := range s.cues {
		if cue(c.owner) == cueDeny && (c.to <= u || c.from >= h.to) {
			return true
		}
	}
	return s.find(famBad, 0, u) >= 0
}
