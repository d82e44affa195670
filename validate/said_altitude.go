package validate

import (
	"fmt"
	"math/big"
)

// saidAltitude reports an altitude from which the text says to do more, and
// that the table does not know.
var saidAltitude = &Rule{
	ID:       "said-altitude",
	Severity: Error,
	Summary:  "an altitude in the text from which to do more, higher than in the table",
	Doc: `"If you live above 3,000 feet, add time" tells everybody below 3,000 feet to change
nothing. Where the table's first band ends at 1,000 ft, that is where the words must
begin.`,
	Source: Source{
		Title: blogStudy.Title, Address: blogStudy.Address,
	},
	CheckText: checkSaidAltitude,
}

func checkSaidAltitude(t *Text) []Finding {
	if t.Recipe == nil || !t.canned() {
		return nil
	}
	edges := t.edges()
	if len(edges) == 0 {
		return nil
	}
	var fs []Finding
	for s := range t.sentences() {
		fs = append(fs, s.sameBelow(edges)...)
		if !s.asksForMore() || s.forEmptyJars() || len(s.timesOfProcess(nil)) > 0 {
			continue
		}
		for _, h := range s.heights() {
			if h.top || h.span.to != nil || h.span.from.Sign() == 0 || isEdge(edges, h.span.from) || s.stance(hit{from: h.at, to: h.at + 1}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(h.at),
				Message: fmt.Sprintf("more is asked for above %s ft only, where the table changes at %s ft", percent(h.span.from), percent(edges[0])),
				Advice:  "Name the edges of the table, or leave it to the table.",
			})
		}
	}
	return fs
}

var (
	nothingWords = fewOf("nothing no")
	moreWords    = fewOf("adjust adjusted add increase longer raise more extra extend higher")
	aboveWords   = fewOf("above over higher beyond")
)

// sameBelow reports that nothing is said to change up to an altitude beyond the
// first edge of the tables.
func (s *sentence) sameBelow(edges []*big.Rat) []Finding {
	if !s.holds(&nothingWords) || !s.anyOf("change changes changed adjust adjustment adjustments alter") {
		return nil
	}
	for _, h := range s.heights() {
		if h.top || h.span.to == nil || h.span.from.Sign() > 0 || h.span.to.Sign() == 0 || isEdge(edges[:1], h.span.to) {
			continue
		}
		return []Finding{{
			Pos:     s.pos(h.at),
			Message: fmt.Sprintf("nothing is said to change up to %s ft, where the table changes at %s ft", percent(h.span.to), percent(edges[0])),
			Advice:  "Name the edges of the table, or leave it to the table.",
		}}
	}
	return nil
}

// asksForMore reports whether a sentence says to process longer or at a higher
// pressure.
func (s *sentence) asksForMore() bool {
	return s.holds(&aboveWords) && s.holds(&moreWords) && !s.near("blanch gel thermometer sterilise sterilize taste")
}

// edges gives where the bands of the recipe's tables end, lowest first.
func (t *Text) edges() (edges []*big.Rat) {
	for _, m := range t.Matches {
		for _, j := range m.Jars {
			for _, table := range j.tables() {
				for _, b := range table.bands {
					if b.span.to != nil {
						edges = append(edges, b.span.to)
					}
				}
			}
		}
	}
	return edges
}

// isEdge reports whether an altitude is an edge, within the foot or the metre
// by which bands are written apart.
func isEdge(edges []*big.Rat, at *big.Rat) bool {
	for _, e := range edges {
		d := new(big.Rat).Sub(e, at)
		if d.Abs(d).Cmp(big.NewRat(20, 1)) <= 0 {
			return true
		}
	}
	return at.Cmp(edges[0]) < 0
}
