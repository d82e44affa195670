package validate

import "slices"

// A hit is a place where a phrase was found.
type hit struct {
	owner    int32
	maybe    bool
	denies   bool // a word of the phrase itself is a denial
	from, to int  // tokens of the sentence
}

// search finds the phrases of a sentence, from its end on: of each word it knows
// the anchors that stand behind it.
func (l *lexicon) search(s *sentence, found []hit) []hit {
	var there anchorSet
	there.add(0)
	for i := s.len() - 1; i >= 0; i-- {
		w := &l.words[s.at(i).id]
		openers := l.openers[w.openers.from:w.openers.to]
		for k := len(openers) - 1; k >= 0; k-- {
			o := &openers[k]
			if !there.has(o.anchors[0]) || !there.has(o.anchors[1]) {
				continue
			}
			p := &l.phrases[o.phrase]
			if end := l.follow(s, p.elements, i); end > 0 {
				found = append(found, hit{p.owner, p.maybe, p.denies, i, end})
			}
		}
		for _, n := range l.anchors[w.anchors.from:w.anchors.to] {
			there.add(n)
		}
	}
	slices.Reverse(found)
	return found
}

// follow gives the end of the elements if they stand at i; 0 if they do not.
func (l *lexicon) follow(s *sentence, es []element, i int) int {
	if len(es) == 0 {
		return i
	}
	e, start := &es[0], i
	for skipped := 0; skipped <= e.gap && i < s.len(); skipped++ {
		if n := l.take(s, e, i); n > 0 {
			if len(es) == 1 {
				return i + n
			}
			if joins(s, i+n-1, es[1].gap) {
				if end := l.follow(s, es[1:], i+n); end > 0 {
					return end
				}
			} else if end := l.rest(es[1:], i+n); end > 0 {
				return end
			}
		}
		if mark := s.at(i).after; parts(mark) && !(mark == ':' && e.gap == longGap) {
			break
		}
		i++
	}
	if e.optional {
		return l.follow(s, es[1:], start)
	}
	return 0
}

// rest gives i if all that is left of a phrase may be missing, 0 otherwise.
func (l *lexicon) rest(es []element, i int) int {
	for _, e := range es {
		if !e.optional {
			return 0
		}
	}
	return i
}

// joins reports whether a phrase may go on behind a token.
func joins(s *sentence, i, gap int) bool {
	mark := s.at(i).after
	if mark == ':' {
		return gap == longGap
	}
	return !parts(mark) && (mark == 0 || gap > 0)
}

// take gives how many tokens at i the element stands for; 0 if it does not
// stand there.
func (l *lexicon) take(s *sentence, e *element, i int) int {
	if t := s.at(i); !e.opens.has(uint8(t.id)) && !(e.number && (t.number().set() || l.is(t.id, famNumeral))) {
		return 0
	}
	for _, run := range e.runs {
		if s.isRun(run, i) {
			return len(run)
		}
	}
	t := s.at(i)
	for _, id := range e.ids {
		if id == t.id {
			return 1
		}
	}
	if l.words[t.id].families&e.families != 0 || e.number && (t.number().set() || l.is(t.id, famNumeral)) {
		return 1
	}
	return 0
}

// isRun reports whether the words of a run follow one another from i on.
func (s *sentence) isRun(run []int32, i int) bool {
	if i+len(run) > s.len() {
		return false
	}
	for k, id := range run {
		if s.at(i+k).id != id || k+1 < len(run) && s.at(i+k).after != 0 {
			return false
		}
	}
	return true
}
