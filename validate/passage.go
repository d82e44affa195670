package validate

import (
	"sync"

	"stillroom/content"
)

// A place is where in a recipe or an episode a passage stands.
type place string

// The places.
const (
	placeName    place = "name"
	placeSummary place = "summary"
	placeGear    place = "gear"
	placeCaution place = "caution"
	placePicture place = "picture" // what a picture shows
	placeLog     place = "log"     // a note of the kitchen log
	placeHead    place = "head"    // the body before the first step
	placeStep    place = "step"
	placeNotes   place = "notes" // the body after the first step, but for the steps
	placeHeading place = "heading"
	placeChapter place = "chapter"
	placeSpoken  place = "spoken" // the transcript
)

// A passage is a paragraph, a step, a line of the front matter: a stretch of
// running text that hangs together.
type passage struct {
	place     place
	text      string // plain, in one line
	low       string // the same, in small letters where it holds words that the lexicon does not know
	tokens    []token
	sentences []sentence
	lex       *lexicon
	rooms     *cutter // that made it ready, for what is found later
	trace     trace
	heading   *passage // the heading that it stands under; nil if there is none
	part      int      // of a step: its part of the method
	denied    bool     // it stands in a list of what is not to be done
	links     []string // the addresses that it leads to
	second    float64  // of a spoken passage: when it begins
}

// A trace leads from a passage back to the file.
type trace struct {
	fixed  content.Pos // of a value of the front matter
	source []byte      // nil for a value of the front matter
	begin  content.Pos // where source begins
	pieces []piece     // in order
}

// A piece is a stretch of a passage that was written as it stands.
type piece struct {
	at     int // in the passage
	source int // in the file's text
	len    int
}

// pos gives the place of a byte of the passage.
func (t *trace) pos(at int) content.Pos {
	if t.source == nil {
		return t.fixed
	}
	offset := 0
	for _, p := range t.pieces {
		if p.at > at {
			break
		}
		offset = p.source + min(at-p.at, p.len)
	}
	return placeIn(t.source, t.begin, offset)
}

// placeIn gives the place of an offset in a text that begins at a place.
func placeIn(text []byte, begin content.Pos, offset int) content.Pos {
	p := begin
	for _, c := range text[:min(offset, len(text))] {
		if c == '\n' {
			p.Line++
			p.Col = 1
		} else {
			p.Col++
		}
	}
	return p
}

// pos gives the place in the file of a token of the sentence.
func (s *sentence) pos(i int) content.Pos { return s.trace.pos(int(s.at(i).start)) }

// A cutter makes passages of one text ready for the rules.
type cutter struct {
	lex      *lexicon
	texts    scroll
	pieces   room[piece]
	passages room[passage]
	tokens   room[token]
	ends     room[sentence]
	hits     room[hit]
	cues     room[hit]
	figures  room[mention]
	foods    room[use]
}

// cutters are those that no text has at present, with their room.
var cutters = sync.Pool{New: func() any {
	return &cutter{lex: learnt(), tokens: room[token]{size: 300}, ends: room[sentence]{size: 20}}
}}

// putAway lets another text have the room.
func (c *cutter) putAway() {
	c.clear()
	cutters.Put(c)
}

// clear empties the room: what was read before may be used no more.
func (c *cutter) clear() {
	c.pieces.clear()
	c.passages.clear()
	c.tokens.clear()
	c.ends.clear()
	c.hits.clear()
	c.cues.clear()
	c.figures.clear()
	c.foods.clear()
}

// takeUp makes a passage of what a scribe wrote and makes it ready.
func (c *cutter) takeUp(p passage, w *scribe) *passage {
	p.text, p.links = w.written(), w.links
	p.trace.source, p.trace.pieces = w.source, c.pieces.kept(w.pieces)
	return c.takeIn(p)
}

// takeIn gives a passage room and makes it ready.
func (c *cutter) takeIn(p passage) *passage {
	kept := &c.passages.kept(append(c.passages.list(1), p))[0]
	c.cut(kept)
	return kept
}

// cut makes a passage ready: in small letters, in sentences, with what the
// lexicon finds in them.
func (c *cutter) cut(p *passage) {
	l := c.lex
	p.lex, p.rooms = l, c
	z := tokenizer{lex: l, text: p.text, tokens: c.tokens.list(len(p.text)/4 + 4), ends: c.ends.list(len(p.text)/40 + 1)}
	z.run()
	if p.low = p.text; z.capitals {
		p.low = c.texts.small(p.text)
	}
	p.tokens, p.sentences = c.tokens.kept(z.tokens), c.ends.kept(z.ends)
	var hits [64]hit
	for i := range p.sentences {
		s := &p.sentences[i]
		s.passage, s.nth = p, i
		s.sift()
		c.sort(s, l.search(s, hits[:0]))
	}
}

// sort parts the hits of cues from those of practices. Of cues that overlap,
// the first and longest counts.
func (c *cutter) sort(s *sentence, found []hit) {
	if len(found) == 0 {
		return
	}
	hits, cues := c.hits.list(len(found)), c.cues.list(len(found))
	end := -1
	for i, h := range found {
		if int(h.owner) >= len(cuePhrases) {
			if !within(found, h) {
				hits = append(hits, h)
			}
			continue
		}
		if longerFollows(found[i+1:], h) || h.from < end {
			continue
		}
		cues = append(cues, h)
		end = h.to
	}
	s.hits, s.cues = c.hits.kept(hits), c.cues.kept(cues)
}

// within reports whether a longer hit of the same owner covers one.
func within(found []hit, h hit) bool {
	for _, o := range found {
		if o.owner == h.owner && o.from <= h.from && h.to <= o.to && o.to-o.from > h.to-h.from && (!o.maybe || h.maybe) {
			return true
		}
	}
	return false
}

// longerFollows reports whether a longer cue begins at the same place, or one
// as long that denies nothing.
func longerFollows(rest []hit, h hit) bool {
	for _, r := range rest {
		if r.from != h.from {
			return false
		}
		if int(r.owner) < len(cuePhrases) && (r.to > h.to || r.to == h.to && r.owner > h.owner) {
			return true
		}
	}
	return false
}
