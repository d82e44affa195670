package validate

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"stillroom/content"
)

// saidHeadspace reports a headspace in the text that is not the one of the
// front matter.
var saidHeadspace = &Rule{
	ID:       "said-headspace",
	Severity: Error,
	Summary:  "a headspace in the text other than the recipe's own",
	Doc: `The headspace in the steps is the one that readers measure. It must be that of
the way of keeping: of the canned way in the parts about canning, of the freezer
in the part about freezing. In metric, 6, 13, 25 and 32 mm stand for 1/4, 1/2, 1
and 1 1/4 in.`,
	Source: Source{
		Title: "Copies of a tested salsa with 1/4 in for 1/2 in were seen: " + blogStudy.Title, Address: blogStudy.Address,
	},
	CheckText: checkSaidHeadspace,
}

func checkSaidHeadspace(t *Text) []Finding {
	if t.Recipe == nil {
		return nil
	}
	var fs []Finding
	for s := range t.sentences(placeStep, placeHead, placeNotes, placeCaution, placeLog, placeSummary) {
		fs = append(fs, t.toTheBrim(s)...)
		for _, f := range s.headspaces() {
			right := t.headspacesFor(s)
			if len(right) == 0 || agrees(f, right) || s.stance(hit{from: f.from, to: f.to}) != told {
				continue
			}
			fs = append(fs, Finding{
				Pos:     s.pos(f.from),
				Message: fmt.Sprintf("%s of headspace here, where the front matter has %s", s.words(f.from, f.to), lengths(right)),
				Advice:  "Write the same in both places.",
				Notes:   []Note{{Pos: right[0].Pos, Message: "given here"}},
			})
		}
	}
	return fs
}

// headspaces gives the lengths that a sentence says to leave in a jar.
func (s *sentence) headspaces() (found []mention) {
	for _, f := range s.figures() {
		if f.measures == content.LengthDim && s.isHeadspace(f) {
			found = append(found, f)
		}
	}
	return found
}

var (
	headspaceWords = fewOf(headspaces)
	gapWords       = fewOf(headspaces + " head air rim brim lip top space room free empty clear") // all that tells of it behind a length
	otherLengths   = fewOf("water thick wide long pieces slices chunks lengths cubes across deep below under over diameter")
)

const headspaces = "headspace headroom head-room airspace"

// isHeadspace reports whether a length is that of the gap below the rim: it
// stands near the word, or is counted from the rim.
func (s *sentence) isHeadspace(f mention) bool {
	if s.holdsIn(&otherLengths, f.to, f.to+3) {
		return s.anyIn("below", f.to, f.to+2) && s.anyIn("rim top", f.to, f.to+4)
	}
	for k := f.to; k < min(f.to+6, s.len()); k++ {
		if k > f.to+1 && s.at(k-2).after == ';' {
			break
		}
		if !s.isOne(k, &gapWords) {
			continue
		}
		if s.isOne(k, &headspaceWords) || s.isAny(k, "head air") && s.isAny(k+1, "space room") {
			return true
		}
		if s.isAny(k, "rim brim lip") && s.anyIn("from of below to", f.to, k) || s.isAny(k, "top") && s.anyIn("from at of", f.to, k) && s.near("jar jars bottle") {
			return s.find(famJar, 0, s.len()) >= 0 || !s.near("crock cabbage weight plate")
		}
		if s.isAny(k, "space room free empty clear") && s.anyIn("leave leaving left", f.from-8, f.from) {
			return true
		}
	}
	if s.anyIn("leave leaving", f.from-3, f.from) && s.isAny(f.to, "at") && s.anyIn("top", f.to, f.to+4) {
		return !s.near("crock cabbage weight plate")
	}
	for k := f.from - 1; k >= max(0, f.from-6); k-- {
		if s.isAny(k, "headspace headroom") || s.isAny(k, "space") && s.isAny(k-1, "head") {
			return s.closest(f, k)
		}
	}
	return (s.anyIn("leaving leave", f.from-3, f.from) || s.find(famJar, 0, f.from) >= 0 && s.isAny(f.from-1, "to within")) && s.has(famFill)
}

// closest reports whether no other length stands between a figure and a word
// before it.
func (s *sentence) closest(f mention, word int) bool {
	for _, g := range s.figures() {
		if g.measures == content.LengthDim && word < g.from && g.from < f.from {
			return false
		}
	}
	return true
}

// headspacesFor gives the headspaces of the ways that a sentence is about.
func (t *Text) headspacesFor(s *sentence) (right []content.Field[content.Length]) {
	cold := s.forFreezer()
	for _, k := range t.Recipe.Keeping {
		if k.Headspace.Set() && (k.Way.V == content.Freezer) == cold && k.Way.V != content.Refrigerator {
			right = append(right, k.Headspace)
		}
	}
	if len(right) == 0 && !cold {
		for _, k := range t.Recipe.Keeping {
			if k.Headspace.Set() {
				right = append(right, k.Headspace)
			}
		}
	}
	return right
}

// forFreezer reports whether the sentence, its step or its heading is about
// freezing.
func (s *sentence) forFreezer() bool {
	return s.says(famFreezer) || s.heading != nil && s.heading.says(famFreezer)
}

// agrees reports whether a length is one of several, to the nearest millimetre
// if either is metric. Of a range both ends must be.
func agrees(f mention, right []content.Field[content.Length]) bool {
	same := func(n ratio) bool {
		said := content.Length{Quantity: mention{low: n, high: n, unit: f.unit}.quantity()}
		return slices.ContainsFunc(right, func(r content.Field[content.Length]) bool {
			return sameHeadspace(said, r.V.Inches()) || sameHeadspace(r.V, said.Inches()) ||
				r.V.IsRange() && said.Inches().Cmp(r.V.Inches()) >= 0 && said.Inches().Cmp(highInches(r.V)) <= 0
		})
	}
	return same(f.low) && (f.high == f.low || same(f.high))
}

func highInches(l content.Length) *big.Rat {
	q := l.Quantity
	q.Low = q.High
	return content.Length{Quantity: q}.Inches()
}

func lengths(right []content.Field[content.Length]) string {
	var texts []string
	for _, r := range right {
		if !slices.Contains(texts, r.V.Text) {
			texts = append(texts, r.V.Text)
		}
	}
	return strings.Join(texts, " or ")
}
