package validate

// A backward walks left from a hit and knows what lies between.
type backward struct {
	s      *sentence
	hit    hit
	commas int  // how many were passed
	at     int  // how many had been passed when a denial was counted
	verb   bool // "and" with a new order was passed, without a comma
	by     bool // "by" was passed
	opens  int  // the first token behind the last comma that was passed
}

var (
	turningWords = fewOf(turns)
	reasonWords  = fewOf(reasons)
	leavingWords = fewOf(turns + " " + reasons + " and then by") // all that leaves looks for beside famUnder
)

const (
	turns   = "but yet however instead"
	reasons = "because since whereas while though although so"
)

// leaves steps over token i and reports whether the words before its end
// belong to another thought.
func (r *backward) leaves(i int) bool {
	s := r.s
	switch mark := s.at(i).after; {
	case mark == ':':
		return !s.introduces(i)
	case parts(mark):
		return true
	case mark == ',':
		r.commas++
		r.opens = i + 1
	}
	switch {
	case !s.is(i, famUnder) && !s.isOne(i, &leavingWords):
		return false
	case s.isOne(i, &turningWords), s.isOne(i, &reasonWords) && !s.isAny(i+1, "that"):
		return true
	case s.is(i, famUnder) && !s.isAny(i, "as who which whose where"):
		return true
	case s.isAny(i, "and then") && s.is(i+1, famOrder) && !s.isVerbNoun(i+1):
		if s.at(i).after == 0 && i > 0 && s.at(i-1).after == ',' || s.isAny(i, "then") {
			return true
		}
		r.verb = true
	case s.isAny(i, "by"):
		r.by = true
	}
	return false
}

// isVerbNoun reports whether a word that may be an order is more likely a
// thing here.
func (s *sentence) isVerbNoun(i int) bool { return i > 0 && s.is(i-1, famDetermine) }

var listHeads = fewOf("never not don't don'ts nots avoid do following these things methods ways mistakes myths processes recommended advised safe unsafe dangerous list out canning shortcuts practices")

// introduces reports whether the words before a colon announce a list of what
// is not done: "Never do any of these:", "Not recommended:".
func (s *sentence) introduces(colon int) bool {
	from, _ := s.clause(colon)
	if s.isOne(colon, &listHeads) {
		return true
	}
	return colon-from < 2 || s.find(famThat, from, colon) >= 0
}

// governs reports whether a cue denies the hit, from where it stands.
func (r *backward) governs(c hit) bool {
	switch cue(c.owner) {
	case cueDeny:
		return (r.commas == 0 || r.listed(c)) && !r.otherClause(c) && !r.s.isAnswer(c) && !r.s.spent(c, r.hit)
	case cueAway:
		return !r.s.takenBack(c) && !r.verb && !r.by && (r.commas == 0 || r.listed(c)) && !r.s.finite(c.to, r.hit.from)
	case cueReplace:
		return r.commas == 0 && !r.verb
	}
	return false
}

// otherClause reports whether the denial stands in a clause with "if" or its
// like, and the hit in the next: "If they are not bent you can use them."
func (r *backward) otherClause(c hit) bool {
	return r.s.find(famUnder, 0, c.from) >= 0 && r.s.find(famSubject, c.to, r.hit.from) >= 0
}

// isAnswer reports whether a "no" is the answer to something: "No, turn them."
func (s *sentence) isAnswer(c hit) bool {
	return c.from == 0 && c.to == 1 && s.at(0).after != 0 && s.isAny(0, "no")
}

// listed reports whether the commas between a denial and the hit are those of
// a list: "Never shake, tilt or invert the jars", "No wax, no oven".
func (r *backward) listed(c hit) bool {
	s, p := r.s, r.opens
	for p < r.hit.from && s.at(p).after != ',' && p+1 < s.len() && r.commas > 1 && s.nextComma(p) >= 0 && s.nextComma(p) < r.hit.from {
		p = s.nextComma(p) + 1
	}
	if s.find(famUnder, 0, c.from) >= 0 {
		return false // of a clause that the comma closes
	}
	switch {
	case s.isAny(p, "or nor"):
		return true
	case s.isAny(p, "and then so"):
		return !s.is(p+1, famOrder) && !s.is(p+1, famSubject)
	case s.is(p, famSubject):
		return false
	case s.is(p, famOrder):
		return s.orBehind(p)
	case s.finite(p, r.hit.from):
		return false
	}
	return true
}

// nextComma gives the first token from i on that a comma follows; -1 if none.
func (s *sentence) nextComma(i int) int {
	for ; i < s.len(); i++ {
		if s.at(i).after == ',' {
			return i
		}
		if parts(s.at(i).after) {
			break
		}
	}
	return -1
}

// orBehind reports whether "or" follows in the same clause.
func (s *sentence) orBehind(i int) bool {
	for ; i < s.len(); i++ {
		if s.isAny(i, "or nor") {
			return true
		}
		if parts(s.at(i).after) {
			break
		}
	}
	return false
}

// finite reports whether a stretch has a subject and a verb of its own: "the
// oven will".
func (s *sentence) finite(from, to int) bool {
	for i := from; i < to; i++ {
		if s.is(i, famBe) || s.isAny(i, "will would can could should may might must do does did has have had just simply works") {
			return true
		}
	}
	return false
}
