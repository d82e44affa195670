package validate

// A sentence is a stretch of the tokens of a passage.
type sentence struct {
	*passage
	nth         int      // among those of its passage, from 0
	first, last int32    // its tokens
	end         byte     // . ? ! or 0
	families    families // that its words belong to
	marks       sieve    // of its words
	hits, cues  []hit    // in order of place
	figs        []mention
	used        []use
	peaks       []height
	counts      bool // a number may begin somewhere in it
	counted     bool // figs are read
	raised      bool // peaks is read
	searched    bool // used is read
}

// at gives a token by its place in the sentence.
func (s *sentence) at(i int) *token { return &s.tokens[int(s.first)+i] }

// len is how many tokens there are.
func (s *sentence) len() int { return int(s.last - s.first) }

// is reports whether a token is one of a family of words.
func (s *sentence) is(i int, f family) bool {
	return 0 <= i && i < s.len() && s.lex.is(s.at(i).id, f)
}

// find gives the place of the first word of a family from a place on, -1 if
// there is none before another.
func (s *sentence) find(f family, from, to int) int {
	if !s.has(f) {
		return -1
	}
	for i := max(from, 0); i < min(to, s.len()); i++ {
		if s.is(i, f) {
			return i
		}
	}
	return -1
}

// has reports whether a word of the family stands anywhere in it.
func (s *sentence) has(f family) bool { return s.families&(1<<f) != 0 }

// sift makes the sieves.
func (s *sentence) sift() {
	for i := s.first; i < s.last; i++ {
		t := &s.tokens[i]
		w := &s.lex.words[t.id]
		t.counts = w.families&(1<<famNumeral|1<<famArticle) != 0 || t.den != 0
		s.counts = s.counts || t.counts
		s.families |= w.families
		if t.bit = w.bit; !t.simple || t.id == 0 {
			t.bit = sieveBit(s.low[t.start:t.end])
		}
		s.marks.add(t.bit)
	}
}

// clause gives the ends of the part between parting marks that a place lies in.
func (s *sentence) clause(i int) (from, to int) {
	from, to = i, i+1
	for from > 0 && !parts(s.at(from-1).after) {
		from--
	}
	for to < s.len() && !parts(s.at(to-1).after) {
		to++
	}
	return from, to
}

// word gives a word in small letters.
func (s *sentence) word(i int) string {
	if i < 0 || i >= s.len() {
		return ""
	}
	t := s.at(i)
	if t.simple && t.id != 0 {
		return s.lex.words[t.id].word
	}
	return s.low[t.start:t.end]
}

// words gives the text from one token to before another, as it was written.
func (s *sentence) words(from, to int) string {
	if from >= to {
		return ""
	}
	return s.text[s.at(from).start:s.at(to-1).end]
}

// before and next give the sentences around one in its passage; nil at the
// ends.
func (s *sentence) before() *sentence { return s.neighbour(-1) }
func (s *sentence) next() *sentence   { return s.neighbour(+1) }

func (s *sentence) neighbour(step int) *sentence {
	if i := s.nth + step; 0 <= i && i < len(s.sentences) {
		return &s.sentences[i]
	}
	return nil
}
