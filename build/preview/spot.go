package preview

import (
	"cmp"
	"encoding/json"
	"slices"

	"stillroom/content"
)

// A spot is a part of a page, found by going from one step to the next, each
// inside of the one before. Where a step leads nowhere, the spot is the part
// that was found so far; the whole page, if there was none.
type spot []step

// A step is the nth of those parts that a selector of CSS finds, from 0; or of
// those among them whose text begins with some words.
type step struct {
	sel  string
	nth  int
	text string
}

// MarshalJSON writes a step as [selector, n] or [selector, n, text].
func (s step) MarshalJSON() ([]byte, error) {
	parts := []any{s.sel, s.nth}
	if s.text != "" {
		parts = append(parts, s.text)
	}
	return json.Marshal(parts)
}

// at is the nth part that a selector finds.
func at(selector string, nth int) step { return step{sel: selector, nth: nth} }

// named is the first part that a selector finds and that begins with a text.
func named(selector, text string) step { return step{sel: selector, text: text} }

// A map of a file says which part of its page shows what is written at a place.
type chart struct {
	file   string
	places []place
}

type place struct {
	pos  content.Pos
	spot spot
}

// put says that a part of the page shows what is written from a place on.
func (c *chart) put(pos content.Pos, steps ...step) {
	if pos.Line > 0 {
		c.places = append(c.places, place{pos, steps})
	}
}

// find gives the part of the page that shows what is written at a place: that
// of the nearest place before it. It is nil if there is none.
func (c *chart) find(pos content.Pos) spot {
	if pos.Line == 0 || pos.File != c.file {
		return nil
	}
	after, ok := slices.BinarySearchFunc(c.places, pos, func(p place, pos content.Pos) int { return inOrder(p.pos, pos) })
	if !ok {
		after--
	}
	if after < 0 {
		return nil
	}
	return c.places[after].spot
}

// sorted puts the places in order. Of two for one place the later one counts:
// it knows better.
func (c *chart) sorted() *chart {
	slices.SortStableFunc(c.places, func(a, b place) int { return inOrder(a.pos, b.pos) })
	slices.Reverse(c.places)
	c.places = slices.CompactFunc(c.places, func(a, b place) bool { return a.pos == b.pos })
	slices.Reverse(c.places)
	return c
}

func inOrder(a, b content.Pos) int {
	return cmp.Or(cmp.Compare(a.Line, b.Line), cmp.Compare(a.Col, b.Col))
}
