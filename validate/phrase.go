package validate

import "strings"

// A phrase is a way of saying something, as words that follow one another. It
// is written in a small notation:
//
//	turn~      a word in all its forms: turn, turns, turning, turned
//	turn~|flip~  either
//	@jar       any word of a family
//	slow_cooker  words that belong together as one
//	#          a number
//	a?         that may be missing
//	..         up to 4 words, whatever they are
//	...        up to 9
//
// Words of a phrase stand in one clause: nothing but a comma may part them, or a
// colon in a long gap. A phrase that begins with "maybe " is not certain by itself.
type phrase struct {
	owner    int32
	maybe    bool
	denies   bool     // one of its own words is a denial
	sieves   []uint64 // of each word that must be there, its bits in the sieve of a sentence
	elements []element
}

// An element is one word of a phrase, or one of several.
type element struct {
	families families
	ids      []int32
	runs     [][]int32 // several words that stand for one
	number   bool
	optional bool
	gap      int // how many words may stand before it
}

// A hit is a place where a phrase was found.
type hit struct {
	owner    int32
	maybe    bool
	denies   bool // a word of the phrase itself is a denial
	from, to int  // tokens of the sentence
}

const (
	shortGap = 4
	longGap  = 9
)

// addPhrase compiles a phrase.
func (l *lexicon) addPhrase(text string, owner int32) {
	p := phrase{owner: owner}
	text, p.maybe = strings.CutPrefix(strings.TrimSpace(text), "maybe ")
	gap := 0
	for _, w := range strings.Fields(text) {
		switch w {
		case "..":
			gap = shortGap
			continue
		case "...":
			gap = longGap
			continue
		}
		e := l.element(w)
		e.gap, gap = gap, 0
		p.denies = p.denies || isDenial(w) || strings.Contains(w, "leave~") && strings.Contains(text, " out")
		p.elements = append(p.elements, e)
	}
	if len(p.elements) == 0 {
		return
	}
	if p.elements[0].optional || p.elements[0].number {
		panic("a phrase begins with a word that must be there: " + text)
	}
	for _, e := range p.elements[1:] {
		if !e.optional && !e.number {
			p.sieves = append(p.sieves, l.sieve(e))
		}
	}
	n := int32(len(l.phrases))
	l.phrases = append(l.phrases, p)
	for id := range l.opening(p.elements[0]) {
		l.openers[id] = append(l.openers[id], n)
	}
}

// isDenial reports whether an element of a phrase is a word of denial.
func isDenial(w string) bool {
	for alt := range strings.SplitSeq(strings.TrimSuffix(w, "?"), "|") {
		switch alt {
		case "no", "not", "never", "without", "don't", "can't", "cannot", "doesn't", "won't", "nothing", "rather_than", "instead_of", "do_not", "skip~", "no_need", "need_not", "needn't", "omit~", "forgo", "lacking", "lack":
			return true
		}
	}
	return false
}

func (l *lexicon) element(w string) (e element) {
	w, e.optional = strings.CutSuffix(w, "?")
	for alt := range strings.SplitSeq(w, "|") {
		switch {
		case alt == "#":
			e.number = true
		case alt[0] == '@':
			e.families |= 1 << familyNamed(alt[1:])
		case strings.Contains(alt, "_"):
			e.runs = append(e.runs, l.runs(strings.Split(alt, "_"))...)
		default:
			for _, form := range variants(alt) {
				e.ids = append(e.ids, l.id(form))
			}
		}
	}
	return e
}

// runs gives every way of writing several words: slow cooker, slow cookers.
func (l *lexicon) runs(words []string) [][]int32 {
	all := [][]int32{nil}
	for _, w := range words {
		var longer [][]int32
		for _, run := range all {
			for _, form := range variants(w) {
				longer = append(longer, append(run[:len(run):len(run)], l.id(form)))
			}
		}
		all = longer
	}
	return all
}

// opening gives the words that an element may begin with.
func (l *lexicon) opening(e element) map[int32]bool {
	ids := map[int32]bool{}
	for _, id := range e.ids {
		ids[id] = true
	}
	for _, run := range e.runs {
		ids[run[0]] = true
	}
	for id, f := range l.families {
		if f&e.families != 0 {
			ids[int32(id)] = true
		}
	}
	return ids
}

// sieve gives the bits of the words that an element may begin with.
func (l *lexicon) sieve(e element) (bits uint64) {
	for id := range l.opening(e) {
		bits |= 1 << (id & 63)
	}
	return bits
}

// search finds the phrases of a sentence.
func (l *lexicon) search(s *sentence, found []hit) []hit {
	for i := range s.len() {
		for _, n := range l.openers[s.at(i).id] {
			p := &l.phrases[n]
			if !p.mayStand(s) {
				continue
			}
			if end := l.follow(s, p.elements, i); end > 0 {
				found = append(found, hit{p.owner, p.maybe, p.denies, i, end})
			}
		}
	}
	return found
}

// mayStand reports whether every word of the phrase may be in the sentence.
func (p *phrase) mayStand(s *sentence) bool {
	for _, bits := range p.sieves {
		if s.ids&bits == 0 {
			return false
		}
	}
	return true
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
	if l.families[t.id]&e.families != 0 || e.number && (t.number.set() || l.is(t.id, famNumeral)) {
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
