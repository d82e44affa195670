package validate

// A stance is how a text means a thing that it speaks of.
type stance int

// The stances.
const (
	told     stance = iota // said, done or advised
	denied                 // advised against, or said not to be so
	reported               // what others do or did, and the text does not take up
	asked                  // asked, and not answered with yes
)

// stance tells how the words of a hit are meant. It looks at the sentence and
// at the ones beside it: what denies, who speaks, whether it is a question.
func (s *sentence) stance(h hit) stance {
	switch {
	case s.denied || s.shortVerdict(s.before()):
		return denied
	case s.asks(h):
		return asked
	}
	negative := s.negative(h)
	if u := s.unless(); u >= 0 {
		negative = s.unlessTurns(u, h, negative)
	}
	switch {
	case negative, s.badEnd(h), s.badSubject(h), s.takenBackAtEnd(h), s.condemnedNext():
		return denied
	case s.speaksOfOthers(h) && !s.endorsed():
		return reported
	}
	return told
}

// asks reports whether the hit is in a question that the text does not answer
// with yes.
func (s *sentence) asks(h hit) bool {
	mark := byte(0)
	for i := h.to - 1; i < s.len(); i++ {
		if m := s.at(i).after; m == '?' || m == ';' || m == '.' {
			mark = m
			break
		}
	}
	if mark != '?' {
		return s.reportsQuestion(h)
	}
	next := s.next()
	return next == nil || !next.is(0, famYes)
}

// reportsQuestion finds the question that is told: people ask whether.
func (s *sentence) reportsQuestion(h hit) bool {
	for _, c := range s.cues {
		if cue(c.owner) == cueOthers && c.to <= h.from && s.isAny(c.to-1, "if whether why") {
			return true
		}
	}
	return false
}

// speaksOfOthers reports whether somebody else, or another time, is told of
// before the hit, or the words are quoted from somebody.
func (s *sentence) speaksOfOthers(h hit) bool {
	if s.at(h.from).quoted && s.at(h.to-1).quoted && s.saysOutside() {
		return true
	}
	for _, c := range s.cues {
		switch cue(c.owner) {
		case cuePast, cueChanged:
			return true
		case cueOthers:
			if c.from < h.to && s.place != placeStep {
				return true
			}
			if c.from < h.to && !s.isAny(c.to-1, "people cooks canners folks who home") {
				return true
			}
		}
	}
	return false
}

// saysOutside reports whether a verb of saying stands outside the quotation.
func (s *sentence) saysOutside() bool {
	for i := range s.len() {
		if !s.at(i).quoted && s.is(i, famSay) {
			return true
		}
	}
	return false
}

// endorsed reports whether the text takes up what it reports, here or in the
// next sentence.
func (s *sentence) endorsed() bool {
	if s.hasCue(cueEndorse) {
		return true
	}
	n := s.next()
	return n != nil && n.hasCue(cueEndorse) && !n.hasCue(cueCondemn)
}

func (s *sentence) hasCue(kind cue) bool {
	for _, c := range s.cues {
		if cue(c.owner) == kind {
			return true
		}
	}
	return false
}

// condemnedNext reports whether the next sentence takes it all back: "That is
// a myth." "Don't."
func (s *sentence) condemnedNext() bool {
	n := s.next()
	if n == nil || n.end == '?' {
		return false
	}
	const short = 3
	if n.len() <= short && n.onlyDenies() {
		return true
	}
	return (n.is(0, famThat) || n.is(1, famThat) && n.at(0).after != 0) && n.condemns()
}

// takenBackAtEnd reports whether the sentence ends with a bare denial: "..., but
// you can't."
func (s *sentence) takenBackAtEnd(h hit) bool {
	for _, c := range s.cues {
		if cue(c.owner) == cueDeny && c.from > h.to && c.to == s.len() && s.anyIn("but and please", c.from-4, c.from) {
			return true
		}
	}
	return false
}

// shortVerdict reports whether the sentence before is a bare heading of what is
// not done: "Myth 3." "Never."
func (s *sentence) shortVerdict(b *sentence) bool {
	const short = 3
	return b != nil && b.len() <= short && b.end != '?' && b.end != '!' && b.hasCue(cueCondemn) && b.condemns()
}

// onlyDenies reports whether nothing but a denial is said: "Never." "Please
// don't."
func (s *sentence) onlyDenies() bool {
	for _, c := range s.cues {
		if k := cue(c.owner); (k == cueDeny || k == cueCondemn) && c.to == s.len() {
			return true
		}
	}
	return false
}

// condemns reports whether the sentence speaks against something, and is not
// denied in turn.
func (s *sentence) condemns() bool {
	odd := false
	for i, c := range s.cues {
		if cue(c.owner) != cueCondemn {
			continue
		}
		odd = true
		if i > 0 && cue(s.cues[i-1].owner) == cueDeny && c.from-s.cues[i-1].to <= 3 {
			odd = false
		}
	}
	return odd
}
