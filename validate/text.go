package validate

import (
	"slices"
	"strings"

	"stillroom/content"
)

// A Text is all that a recipe, an episode or a page says in words, read once
// for all rules.
type Text struct {
	Recipe  *content.Recipe  // nil for an episode or a page
	Matches []*Match         // the recipe's ways of keeping
	Episode *content.Episode // nil for a recipe or a page
	Site    *content.Site    // of an episode

	passages []*passage
	*cutter
	times   []timeSaid
	timed   bool        // times are read
	speak   []*sentence // those in which a phrase of a practice was found
	heard   bool        // speak is filled
	counts  []*sentence // those that hold a figure
	counted bool        // counts is filled
	steps   *methodWords
	list    *listing
}

// textOfRecipe reads what a recipe says: the front matter's sentences first,
// then the body.
func textOfRecipe(r *content.Recipe, matches []*Match) *Text {
	t := &Text{Recipe: r, Matches: matches, cutter: cutters.Get().(*cutter)}
	t.line(placeName, r.Name)
	t.line(placeSummary, r.Summary)
	t.lines(placeGear, r.Gear)
	t.lines(placeCaution, r.Cautions)
	if r.Picture != nil {
		t.line(placePicture, r.Picture.Alt)
	}
	for _, p := range r.Pictures {
		t.line(placePicture, p.Alt)
	}
	for _, b := range r.Batches {
		t.line(placeLog, b.Note)
	}
	t.passages = append(t.passages, readBody(r.Body, t.cutter)...)
	return t
}

// textOfPage reads a page that stands by itself.
func textOfPage(p *content.Page) *Text {
	t := &Text{cutter: cutters.Get().(*cutter)}
	t.line(placeSummary, p.Summary)
	if p.Picture != nil {
		t.line(placePicture, p.Picture.Alt)
	}
	t.passages = append(t.passages, readBody(p.Body, t.cutter)...)
	return t
}

func (t *Text) lines(in place, fields []content.Field[string]) {
	for _, f := range fields {
		t.line(in, f)
	}
}

// line takes a value of the front matter.
func (t *Text) line(in place, f content.Field[string]) {
	if !f.Set() || f.V == "" {
		return
	}
	p := passage{place: in, text: strings.ReplaceAll(f.V, apostropheMark, "'"), trace: trace{fixed: f.Pos}}
	t.passages = append(t.passages, t.takeIn(p))
}

// sentences gives every sentence that stands in one of the places, in order;
// without a place, all of them.
func (t *Text) sentences(in ...place) func(yield func(*sentence) bool) {
	return func(yield func(*sentence) bool) {
		for _, p := range t.passages {
			if len(in) > 0 && !slices.Contains(in, p.place) {
				continue
			}
			for i := range p.sentences {
				if !yield(&p.sentences[i]) {
					return
				}
			}
		}
	}
}

// counting gives the sentences that hold a figure, in order.
func (t *Text) counting() []*sentence {
	if !t.counted {
		t.counted = true
		for s := range t.sentences() {
			if len(s.figures()) > 0 {
				t.counts = append(t.counts, s)
			}
		}
	}
	return t.counts
}

// speaking gives the sentences in which a phrase of some practice was found, in
// order.
func (t *Text) speaking() []*sentence {
	if !t.heard {
		t.heard = true
		for s := range t.sentences() {
			if len(s.hits) > 0 {
				t.speak = append(t.speak, s)
			}
		}
	}
	return t.speak
}

// items gives the recipe's ingredients.
func (t *Text) items() []Item {
	if len(t.Matches) > 0 {
		return t.Matches[0].Items
	}
	return itemsOf(t.Recipe)
}

// canned reports whether the recipe is kept in sealed jars; an episode or a
// page speaks of such recipes as well.
func (t *Text) canned() bool {
	return t.Recipe == nil || t.hasWay(content.BoilingWater, content.AtmosphericSteam, content.PressureCanner)
}

// hasWay reports whether the recipe has one of the ways.
func (t *Text) hasWay(ways ...content.Way) bool {
	if t.Recipe == nil {
		return false
	}
	return slices.ContainsFunc(t.Recipe.Keeping, func(k content.Keeping) bool { return slices.Contains(ways, k.Way.V) })
}
